using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Bench.Order;

public class OrderSearchTests
{
    private static Gen<Fitting?> AnyFitting { get; } =
        from flared in Gen.Bool
        from takes in Gen.Double[0, 3]
        from nut in Gen.Double[5, 25]
        from straight in Gen.Double[0, 60]
        select flared ? new Fitting("an3", Flare.Single37, Lines.Mm(takes), [new("nut", Lines.Mm(nut))], Lines.Mm(straight)) : null;

    private static Gen<Bender> AnyTool { get; } =
        from grip in Gen.Double[0, 35]
        from follow in Gen.Double[0, 35]
        from middle in Gen.Bool
        from offset in Gen.OneOf(Gen.Const(0.0), Gen.Double[-20, 30])
        from room in Gen.OneOf(Gen.Const(0.0), Gen.Double[100, 900])
        select Lines.Bender(10) with
        {
            Grip = Lines.Mm(grip),
            Follow = Lines.Mm(follow),
            Mark = middle ? MarkPlace.Middle : MarkPlace.Start,
            Offset = Lines.Mm(offset),
            ClearAround = room > 0 ? Lines.Mm(room) : null,
        };

    private static Gen<LineTemplate> Any { get; } =
        from bends in Gen.Int[1, 5]
        from straights in Gen.OneOf(Gen.Double[0, 60], Gen.Double[20, 500]).Array[bends + 1]
        from turns in Gen.Double[5, 150].Array[bends]
        from rotations in Gen.Double[-180, 180].Array[bends]
        from tools in AnyTool.Array[2]
        from second in Gen.Bool.Array[bends]
        from atA in AnyFitting
        from atB in AnyFitting
        from trim in Gen.OneOf(Gen.Const(0.0), Gen.Double[1, 40])
        select Template(new Shape(10, straights, turns, rotations), tools, second, atA, atB, trim);

    [Fact]
    public void No_order_of_all_that_there_are_is_better_than_the_one_found()
    {
        var (made, none, scattered) = (0, 0, 0);
        Any.Sample(
            template =>
            {
                var oracle = new EveryOrder(template);
                var solved = CarPlan.Line(template);
                var order = solved.Plan!.Order;
                var working = oracle.Working().ToList();
                if (working.Count == 0)
                {
                    Interlocked.Increment(ref none);
                    Assert.Contains(solved.Findings, finding => finding.Rule == NoOrder.Rule || finding.Rule == EndTooShort.Rule);
                    return;
                }

                Interlocked.Increment(ref made);
                var steps = order.Steps.Select(step => (step.Bend, step.Held)).ToList();
                Assert.DoesNotContain(solved.Findings, finding => finding.Rule == NoOrder.Rule);
                Assert.True(oracle.Works(steps, order.FlareAFirst, order.FlareBFirst), "the order found does not work");

                // Fewest bends without room, then long swings, then turn-rounds; the swing within 100 mm of the smallest with them; of
                // those A flared before the bends and B after them, as far as can be; of those the best start.
                var (found, start) = oracle.Cost(steps);
                var fewest = working.Min(other => other.Cost.Figures);
                var smallest = working.Where(other => other.Cost.Figures == fewest).Min(other => other.Cost.Swing);
                var equal = working.Where(other => other.Cost.Figures == fewest && other.Cost.Swing <= smallest + 100)
                    .Select(other => (B: other.FlareBFirst, A: !other.FlareAFirst, other.Start)).ToList();
                Assert.Equal((fewest, equal.Min()), (found.Figures, (order.FlareBFirst, !order.FlareAFirst, start)));
                Assert.True(found.Swing <= smallest + 100, "a larger swing than need be");
                Assert.Equal(fewest.TurnRounds, order.TurnRounds());
                if (!Grows(order.Steps.Select(step => step.Bend)))
                {
                    Interlocked.Increment(ref scattered);
                }
            },
            iter: 4000);
        Assert.True(made > 400 && none > 400, $"both kinds of lines must be among the samples: {made} can be made, {none} cannot");
        Assert.True(scattered > 0, "no sample needs an order that starts at several bends");
    }

    [Fact]
    public void An_order_that_was_begun_goes_on_as_it_was_where_nothing_changed()
    {
        var scattered = 0;
        Any.Sample(
            template =>
            {
                var solved = CarPlan.Line(template);
                if (solved.Plan is not { } plan || solved.Findings.Any(finding => finding.Severity == Severity.Error))
                {
                    return;
                }

                var layout = RouteLayout.Of(template).Layout!;
                var tube = StraightTube.Of(template, layout);
                var swings = new SweepReach(layout, tube, [.. layout.Bends.Select(bend => bend.Bend.Turn)]);
                var (order, stopped) = OrderPlanner.GoOn(plan.Order, template, layout, tube, swings);
                Assert.Null(stopped);
                Assert.Equal(plan.Order.Steps, order.Steps, (one, other) => one.Bend == other.Bend && one.Held == other.Held
                    && Math.Abs((one.Swing - other.Swing).Millimetres) < 1e-9);
                Interlocked.Add(ref scattered, Grows(order.Steps.Select(step => step.Bend)) ? 0 : 1);
            },
            iter: 4000);
        Assert.True(scattered > 0, "no sample needs an order that starts at several bends");
    }

    [Fact]
    public void End_A_is_flared_first_also_where_that_is_not_the_order_that_starts_at_A()
    {
        // With the nut on 7.5 is left beside bend 1, whose tool needs 10 when B is held. Held at A, bend 1 first would swing 180 mm of
        // tube round, bend 2 first 110.
        var fitting = new Fitting("an3", Flare.Single37, Lines.Mm(1), [new("nut", Lines.Mm(21))], Length.Zero);
        var line = Lines.Of(Lines.Bender(10) with { Follow = Lines.Mm(10) }, [41, 66, 119], (0, 98), (119, 91));
        line = line with { From = line.From with { Fitting = fitting } };
        var order = line.Plan().Order;
        Assert.True(order.FlareAFirst);
        Assert.Equal([(1, TubeEnd.A), (0, TubeEnd.A)], order.Steps.Select(step => (step.Bend, step.Held)));
        Assert.Contains(new EveryOrder(line).Working(), other => !other.FlareAFirst && other.Start == 0 && other.Cost.TurnRounds == 0);
    }

    [Fact]
    public void With_room_everywhere_tube_too_short_for_a_long_swing_is_never_turned_round() => Shape.Roomy.Sample(
        shape =>
        {
            var plan = shape.Template().Plan();
            Assert.True(plan.CutLength >= Lines.Mm(450) || plan.Order.TurnRounds() == 0, "short tube is turned round");
        },
        iter: 600);

    [Fact]
    public void The_tube_is_rather_turned_round_than_a_long_bent_tail_swept()
    {
        // Two bends near each end of two metres of tube: swept from one end only, the other end's bends would come round with the tail.
        var order = Lines.Of(Lines.Bender(10), [100, 150, 1700, 150, 100], (0, 60), (120, 75), (90, 45), (180, 45)).Plan().Order;
        Assert.Equal(1, order.TurnRounds());
        Assert.All(order.Steps, step => Assert.True(step.Swing < Lines.Mm(300), $"bend {step.Bend} swings {step.Swing}"));
    }

    [Fact]
    public void A_bend_that_leaves_no_room_beside_it_is_made_last_between_two_that_are_made()
    {
        // Bends 1 and 3 need 30 of straight on each side and have 20 up to bend 2, whose own tool needs 5.
        var (wide, narrow) = (Lines.Bender(10) with { Grip = Lines.Mm(30), Follow = Lines.Mm(30) }, Lines.Bender(10) with
        {
            Name = "narrow",
            Grip = Lines.Mm(5),
            Follow = Lines.Mm(5),
        });
        var line = Lines.Of(wide, [200, 40, 40, 200], (0, 90), (90, 90), (90, 90));
        var order =
            (line with { Route = Route.Of(line.Route.Legs, line.Route.Bends.SetItem(1, line.Route.Bends[1] with { Bender = narrow })) })
                .Plan().Order;
        Assert.Equal(1, order.Steps[2].Bend);
    }

    [Fact]
    public void A_bend_near_its_neighbours_is_made_before_them()
    {
        // 8 of straight on both sides of bend 2, whose tool needs 12: made first it finds them, because the others are still straight.
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(12), Follow = Lines.Mm(12) };
        var line = Lines.Of(Lines.Bender(10), [200, 28, 28, 200], (0, 90), (90, 90), (90, 90));
        var order =
            (line with { Route = Route.Of(line.Route.Legs, line.Route.Bends.SetItem(1, line.Route.Bends[1] with { Bender = tool })) })
                .Plan().Order;
        Assert.Equal(1, order.Steps[0].Bend);
    }

    [Fact]
    public void Where_each_end_needs_the_other_side_held_the_tube_is_turned_round_once()
    {
        // The end straights of 6 take the follow of 5 but not the grip of 20: bend 1 is held from B and bend 2 from A.
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(20), Follow = Lines.Mm(5) };
        var plan = Lines.Of(tool, [16, 300, 16], (0, 90), (90, 90)).Plan();
        Assert.Equal([(0, TubeEnd.B), (1, TubeEnd.A)], plan.Order.Steps.Select(step => (step.Bend, step.Held)));
        Assert.Equal(1, plan.Order.TurnRounds());
    }

    [Fact]
    public void The_tube_is_rather_turned_round_than_swung_against_a_wall()
    {
        // Held at one end for both bends, one of them swings the 8 m between them.
        var steps = Lines.Of(Lines.Bender(10) with { ClearAround = Lines.Mm(900) }, [300, 8000, 700], (0, 90), (180, 45))
            .Plan().Order.Steps;
        Assert.Equal(2, steps.Select(step => step.Held).Distinct().Count());
        Assert.All(steps, step => Assert.True(step.Swing < Lines.Mm(900)));
    }

    [Fact]
    public void The_long_piece_is_held_and_the_short_one_swept()
    {
        var steps = Lines.Of(Lines.Bender(10), [1500, 60], (0, 90)).Plan().Order.Steps;
        Assert.Equal(TubeEnd.A, Assert.Single(steps).Held);
        Assert.Equal(TubeEnd.B, Assert.Single(Lines.Of(Lines.Bender(10), [60, 1500], (0, 90)).Plan().Order.Steps).Held);
    }

    [Fact]
    public void An_end_too_short_for_the_flaring_bar_is_flared_before_the_bends()
    {
        var fitting = new Fitting(
            "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));
        var line = Lines.Of(Lines.Bender(10), [200, 42], (0, 90));
        Assert.Equal([TubeEnd.B], (line with { To = line.To with { Fitting = fitting } }).Plan().Order.FlaredFirst);
        var roomy = Lines.Of(Lines.Bender(10), [200, 52], (0, 90));
        Assert.Empty((roomy with { To = roomy.To with { Fitting = fitting } }).Plan().Order.FlaredFirst);
    }

    [Fact]
    public void End_A_is_flared_after_the_bends_where_its_hardware_would_be_in_the_tools_way()
    {
        // 40 of straight takes the flaring bar (35); with nut and sleeve on it only 14 would be left for a tool that needs 20.
        var fitting = new Fitting(
            "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(20), Follow = Lines.Mm(20) };
        var line = Lines.Of(tool, [50, 200], (0, 90));
        Assert.Empty((line with { From = line.From with { Fitting = fitting } }).Plan().Order.FlaredFirst);
        var free = line.OnTool(Lines.Bender(10));
        Assert.Equal([TubeEnd.A], (free with { From = free.From with { Fitting = fitting } }).Plan().Order.FlaredFirst);
    }

    [Fact]
    public void Every_bend_is_made_once_and_the_bent_stretch_grows_outwards() => Shape.Any.Sample(
        shape =>
        {
            var bends = shape.Template().Plan().Order.Steps.Select(step => step.Bend).ToList();
            Assert.Equal(Enumerable.Range(0, shape.Turns.Length), bends.Order());
            Assert.True(Grows(bends));
        },
        iter: 300);

    [Theory]
    [InlineData(40)]
    [InlineData(120)]
    [InlineData(121)]
    [InlineData(400)]
    public void Many_bends_are_planned_too(int count)
    {
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(20), Follow = Lines.Mm(15) };
        var order = Lines.Of(
            tool, [.. Enumerable.Repeat(100.0, count + 1)], [.. Enumerable.Range(0, count).Select(i => (i * 37.0 % 360, 20.0 + (i % 60)))])
                .Plan().Order;
        Assert.Equal(count, order.Steps.Length);
        Assert.InRange(order.TurnRounds(), 0, 1);
    }

    /// <summary>Whether what is bent is one stretch at every time.</summary>
    private static bool Grows(IEnumerable<int> order)
    {
        var bends = order.ToList();
        return Enumerable.Range(1, Math.Max(0, bends.Count - 1))
            .All(i => bends[i] == bends.Take(i).Min() - 1 || bends[i] == bends.Take(i).Max() + 1);
    }

    private static LineTemplate Template(Shape shape, Bender[] tools, bool[] second, Fitting? atA, Fitting? atB, double trim)
    {
        var line = shape.Template();
        return line with
        {
            Route = Route.Of(line.Route.Legs, [.. line.Route.Bends.Select((bend, i) => bend with { Bender = tools[second[i] ? 1 : 0] })]),
            From = new(null, atA, Length.Zero),
            To = new(null, atB, Lines.Mm(trim)),
        };
    }
}
