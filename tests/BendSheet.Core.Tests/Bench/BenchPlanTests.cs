using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Bench;

public class BenchPlanTests
{
    private static Gen<(Shape Shape, double TakesA, double TakesB, double Trim, double ArcFactor)> Any { get; } =
        Gen.Select(Shape.Roomy, Gen.Double[0, 5], Gen.Double[0, 5], Gen.Double[0, 50], Gen.Double[0.95, 1.05]);

    [Fact]
    public void Developed_length_is_legs_less_gains_and_what_the_flares_take() => Any.Sample(
        input =>
        {
            var template = Template(input.Shape, input.TakesA, input.TakesB, input.Trim, arcFactor: 1);
            var plan = template.Plan();
            var gains = plan.Bends.Sum(bend => bend.Layout.Gain!.Value.Millimetres);
            AssertGeometry.Equal(input.Shape.Legs.Sum() - gains + input.TakesA + input.TakesB, plan.DevelopedLength.Millimetres);
            AssertGeometry.Equal(input.Shape.Legs.Sum() - gains, plan.CentrelineLength.Millimetres);
        },
        iter: 1000);

    [Fact]
    public void Straights_and_calibrated_arcs_and_flares_are_the_developed_length_and_trim_comes_on_top() => Any.Sample(
        input =>
        {
            var plan = Template(input.Shape, input.TakesA, input.TakesB, input.Trim, input.ArcFactor).Plan();
            var straights = plan.FirstStraight.Millimetres + plan.Bends.Sum(bend => bend.StraightAfter.Millimetres);
            var arcs = input.Shape.Turns.Sum(turn => turn * Math.PI / 180 * input.Shape.Radius);
            AssertGeometry.Equal(straights + arcs, plan.CentrelineLength.Millimetres, "centreline");
            AssertGeometry.Equal(
                straights + (input.ArcFactor * arcs) + input.TakesA + input.TakesB, plan.DevelopedLength.Millimetres, "developed");
            AssertGeometry.Equal(plan.DevelopedLength.Millimetres + input.Trim, plan.CutLength.Millimetres, "cut");
            Assert.Equal(input.TakesA, plan.FlareFaceA.Millimetres);
        },
        iter: 1000);

    [Fact]
    public void Places_rise_from_A_to_the_cut_end_of_B() => Any.Sample(
        input =>
        {
            var plan = Template(input.Shape, input.TakesA, input.TakesB, input.Trim, input.ArcFactor).Plan();
            var places = plan.Bends.SelectMany(bend => new[] { bend.Start, bend.Middle, bend.End }).Append(plan.CutLength)
                .Select(place => place.Millimetres).Prepend(0).ToList();
            Assert.All(places.Skip(1).Select((place, i) => place - places[i]), step => Assert.True(step > 0));
            foreach (var bend in plan.Bends)
            {
                AssertGeometry.Equal(input.ArcFactor * bend.Layout.Arc, bend.End - bend.Start, "tube in the bend");
                AssertGeometry.Equal(bend.End - bend.Middle, bend.Middle - bend.Start, "halves of the bend");
            }
        },
        iter: 1000);

    [Fact]
    public void In_inches_and_in_millimetres_a_route_gives_the_same_figures() => Shape.Roomy.Sample(
        shape =>
        {
            var metric = shape.Template().Plan();
            var bender = new Bender("hand", Length.FromInches(shape.Radius / 25.4), Lines.RadiusAt);
            var imperial = shape.Template(bender, millimetres => Length.FromInches(millimetres / 25.4)).Plan();
            AssertGeometry.Equal(metric.CutLength, imperial.CutLength, "cut length");
            Assert.Equal(metric.Bends.Length, imperial.Bends.Length);
            foreach (var (first, second) in metric.Bends.Zip(imperial.Bends))
            {
                AssertGeometry.Equal(first.Start, second.Start, "start");
                AssertGeometry.Equal(first.End, second.End, "end");
                AssertGeometry.Equal(first.Mark, second.Mark, "mark");
                AssertGeometry.Equal(first.StraightAfter, second.StraightAfter, "straight after");
                AssertGeometry.Equal(first.Lever, second.Lever, "lever");
                Assert.Equal(first.Dial, second.Dial);
            }
        },
        iter: 500);

    [Fact]
    public void Two_bends_in_one_plane_lose_one_gain_each()
    {
        // The gain of a square corner is (2 − π/2)·R.
        var plan = Lines.Of(Lines.Bender(10), [50, 60, 70], (0, 90), (180, 90)).Plan();
        AssertGeometry.Equal(180 - (2 * (2 - (Math.PI / 2)) * 10), plan.DevelopedLength.Millimetres);
    }

    [Fact]
    public void Without_springback_the_pull_is_the_bend() =>
        Assert.Equal(
            [45.0, 30.0], Lines.Of(Lines.Bender(10), [50, 60, 70], (0, 45), (90, 30)).Plan().Bends.Select(bend => bend.Pull.Degrees));

    [Fact]
    public void A_straight_tube_is_cut_to_its_leg_and_what_its_ends_take()
    {
        var plan = Template(new Shape(10, [321], [], []), 0.5, 1.5, 25, 1).Plan();
        Assert.Empty(plan.Bends);
        Assert.Equal(321, plan.FirstStraight.Millimetres);
        Assert.Equal(323, plan.DevelopedLength.Millimetres);
        Assert.Equal(348, plan.CutLength.Millimetres);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(270)]
    [InlineData(360)]
    public void Flat_parts_beside_a_U_bend_are_carried_over_unchanged(double turn)
    {
        var template = Lines.Of(Lines.Bender(15), [100, 80], (0, turn)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(4)),
        };
        var bend = Assert.Single(template.Plan().Bends);
        Assert.Null(bend.Layout.Setback);
        Assert.Null(bend.Layout.Gain);
        AssertGeometry.Equal(100, bend.Start.Millimetres);
        AssertGeometry.Equal(100 + (turn * Math.PI / 180 * 15), bend.End.Millimetres);
        AssertGeometry.Equal(180 + (turn * Math.PI / 180 * 15), template.Plan().DevelopedLength.Millimetres);
    }

    [Fact]
    public void A_leg_of_no_length_between_flat_parts_is_a_line_all_the_same()
    {
        var template = Lines.Of(Lines.Bender(15), [0, 0, 0], (0, 180), (0, 180)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(15)),
        };
        AssertGeometry.Equal(30 * Math.PI, template.Plan().DevelopedLength.Millimetres);
        AssertGeometry.Equal(default, template.Centreline().EndB);
    }

    [Fact]
    public void Sixty_bends_are_planned_like_one()
    {
        var bends = Enumerable.Range(0, 60).Select(i => (Rotate: i * 37.0 % 360, Turn: 20.0 + i)).ToArray();
        var template = Lines.Of(Lines.Bender(10), [.. Enumerable.Repeat(100.0, 61)], bends);
        var plan = template.Plan();
        Assert.Equal(60, plan.Bends.Length);
        var gains = bends.Sum(bend => 10 * ((2 * Math.Tan(bend.Turn * Math.PI / 360)) - (bend.Turn * Math.PI / 180)));
        AssertGeometry.Equal(6100 - gains, plan.DevelopedLength.Millimetres);
        AssertGeometry.Equal(
            CornerPoints.Build(
                [.. Enumerable.Repeat(100.0, 61)], [.. bends.Select(bend => bend.Turn)], [.. bends.Select(bend => bend.Rotate)]),
            template.Centreline().CornerPoints());
    }

    [Fact]
    public void Each_bend_uses_the_radius_of_its_own_tool()
    {
        var template = Lines.OfRows(
            Lines.Bender(10),
            new Row(Lines.Mm(50), Lines.StraightAt(0), new(Lines.Deg(90), Lines.Deg(0), Lines.Bender(10), null, Lines.TurnAt(0))),
            new Row(Lines.Mm(60), Lines.StraightAt(1), new(Lines.Deg(90), Lines.Deg(0), Lines.Bender(20, "big"), null, Lines.TurnAt(1))),
            new Row(Lines.Mm(70), Lines.StraightAt(2), null));
        var plan = template.Plan();
        AssertGeometry.Equal(40, plan.FirstStraight.Millimetres);
        AssertGeometry.Equal(30, plan.Bends[0].StraightAfter.Millimetres);
        AssertGeometry.Equal(50, plan.Bends[1].StraightAfter.Millimetres);
        AssertGeometry.Equal(new Core.Geometry.Vector3D(-20, 60, 0), template.Centreline().EndB);
    }

    private static LineTemplate Template(Shape shape, double takesA, double takesB, double trim, double arcFactor) =>
        shape.Template(Lines.Bender(shape.Radius) with { ArcFactor = arcFactor }, Length.FromMillimetres) with
        {
            From = LineEnd.Unknown with { Fitting = Taking(takesA) },
            To = LineEnd.Unknown with { Fitting = Taking(takesB), Trim = Lines.Mm(trim) },
        };

    private static Fitting Taking(double takes) => new("an3", Flare.Single37, Lines.Mm(takes), [], Length.Zero);
}
