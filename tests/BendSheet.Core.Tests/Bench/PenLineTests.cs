using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench;

/// <summary>
/// The tube is bent here once more as hands bend it: a straight tube with a line along it, from one bend to the next in the order of work,
/// turned in the tool until the line stands where the sheet says. Rotations of points about the former's axis (Rodrigues), no frame of the
/// program's own.
/// </summary>
public class PenLineTests
{
    private const double SameMm = 1e-6;

    [Theory]
    [InlineData(3, 5, 120)]
    [InlineData(6, 5, 350)]
    public void A_tube_bent_with_its_line_where_the_sheet_says_is_the_finished_shape(int most, double least, double largest)
    {
        var random = new Random(1789);
        var mirrored = 0;
        for (var i = 0; i < 500; i++)
        {
            var (layout, centreline, plan, _) = AnyPlan(random, most, (least, largest));
            var bent = BentAtTheBench(layout, plan, bend => bend.LineAt.Degrees);
            var shape = Corners(centreline);
            Assert.All(Pairs(shape), pair => Assert.Equal(
                shape[pair.First].DistanceTo(shape[pair.Second]), bent[pair.First].DistanceTo(bent[pair.Second]), SameMm));

            // Distances alone do not tell a shape from its mirror image.
            var (own, made) = (Volumes(shape), Volumes(bent));
            Assert.All(own.Zip(made), pair => Assert.Equal(pair.First, pair.Second, 1e-6 * Math.Max(1, Math.Abs(pair.First))));
            mirrored += own.Any(volume => Math.Abs(volume) > 1) ? 1 : 0;
        }

        Assert.InRange(mirrored, 250, 500);
    }

    [Fact]
    public void Read_from_the_wrong_end_it_would_be_another_shape()
    {
        var (layout, centreline, plan, _) = AnyPlan(new Random(4), 4, (30, 90));
        var shape = Corners(centreline);
        var wrong = BentAtTheBench(layout, plan, bend => 360 - bend.LineAt.Degrees);
        Assert.Contains(Volumes(shape).Zip(Volumes(wrong)), pair => Math.Abs(pair.First - pair.Second) > 1);
    }

    [Fact]
    public void The_bend_made_first_has_the_line_at_12_and_the_next_ones_where_it_is_seen_from_the_held_end()
    {
        var (layout, _, plan, _) = Planned(
            Lines.Of(Lines.Bender(10), [100, 100, 100, 100], (0, 45), (90, 45), (-45, 45)),
            [new(1, TubeEnd.A, Length.Zero), new(2, TubeEnd.A, Length.Zero), new(0, TubeEnd.B, Length.Zero)]);
        Assert.Equal(3, layout.Bends.Length);

        // Bend 3 is rolled 45° ccw from bend 2, looking from A: with its inside up, the line of bend 2 lies 45° clockwise. Bend 1 lies 90°
        // ccw of bend 2 seen from A, 90° cw seen from B: with its inside up, the line lies 90° the other way.
        Assert.Equal([270.0, 0, 45], plan.Bends.Select(bend => bend.LineAt.Degrees));
    }

    [Fact]
    public void The_line_stays_on_a_tube_that_is_half_made()
    {
        var template = Lines.Of(Lines.Bender(10), [100, 100, 100], (0, 45), (90, 45));
        var (layout, centreline, plan, _) = Planned(template, [new(0, TubeEnd.A, Length.Zero), new(1, TubeEnd.A, Length.Zero)]);
        var later = BenchPlan.Of(
            template, layout, centreline, StraightTube.Of(template, layout), [.. plan.Bends.Select(bend => bend.Pull)], plan.Order,
            penned: Lines.Deg(30));
        Assert.Equal([30.0, 300], later.Bends.Select(bend => bend.LineAt.Degrees));
    }

    /// <summary>A coil is many bends, each rolled a little: held from either end it winds the same way.</summary>
    [Theory]
    [InlineData(TubeEnd.A)]
    [InlineData(TubeEnd.B)]
    public void A_coil_between_bends_is_wound_with_its_line_where_the_sheet_says(TubeEnd held)
    {
        foreach (var rightHanded in new[] { true, false })
        {
            var coil = new Coil(2.5, Lines.Mm(25), Lines.Mm(9), rightHanded);
            var (at, former) = (Lines.StraightAt(1), Lines.Bender(coil.CurveRadius.Millimetres, "mandrel"));
            var template = Lines.OfRows(
                Lines.Bender(10),
                [
                    new(Lines.Mm(100), Lines.StraightAt(0), new(Lines.Deg(60), Lines.Deg(0), Lines.Bender(10), null, Lines.TurnAt(0))),
                    .. coil.Rows(new(Lines.Mm(80), at, null), Lines.Deg(70), former, at, null),
                    new(Lines.Mm(90), Lines.StraightAt(2), new(Lines.Deg(45), Lines.Deg(-30), Lines.Bender(10), null, Lines.TurnAt(2))),
                    new(Lines.Mm(100), Lines.StraightAt(3), null),
                ]);
            var count = template.Route.Bends.Length;
            var order = Enumerable.Range(0, count).Select(i => new BendStep(held == TubeEnd.A ? count - 1 - i : i, held, Length.Zero));
            var (layout, centreline, plan, _) = Planned(template, [.. order]);
            var (shape, bent) = (Corners(centreline), BentAtTheBench(layout, plan, bend => bend.LineAt.Degrees));
            Assert.True(count > 10);
            Assert.All(Pairs(shape), pair => Assert.Equal(
                shape[pair.First].DistanceTo(shape[pair.Second]), bent[pair.First].DistanceTo(bent[pair.Second]), SameMm));
            Assert.All(Volumes(shape).Zip(Volumes(bent)), pair => Assert.Equal(pair.First, pair.Second, 1e-3));
        }
    }

    /// <summary>Turned about the way to the former, whose place at the tube stays: what was on top comes to lie below.</summary>
    [Fact]
    public void Flipped_with_its_top_to_the_bottom_the_tube_has_its_line_where_it_is_seen_from_the_other_end()
    {
        var (hold, inside) = (new Vector3D(1, 0, 0), new Vector3D(0, 1, 0));
        for (var dial = 0; dial < 360; dial += 7)
        {
            Vector3D SeenFrom(TubeEnd held) => Turned(inside, hold, PenLine.At(Lines.Deg(dial), Angle.Zero, held).Degrees);
            var flipped = Turned(SeenFrom(TubeEnd.A), inside, 180);
            var spun = Turned(SeenFrom(TubeEnd.A), hold.Cross(inside), 180);
            Assert.Equal(0, flipped.DistanceTo(SeenFrom(TubeEnd.B)), 1e-9);
            Assert.Equal(2, spun.DistanceTo(SeenFrom(TubeEnd.B)), 1e-9);
        }
    }

    [Theory]
    [InlineData(3, 5, 120)]
    [InlineData(7, 5, 350)]
    public void What_is_measured_after_each_step_is_the_distance_on_the_tube_bent_so_far(int most, double least, double largest)
    {
        var random = new Random(1815);
        var (checks, steps) = (0, 0);
        for (var i = 0; i < 500; i++)
        {
            var (layout, centreline, plan, template) = AnyPlan(random, most, (least, largest), scattered: i % 2 == 0);
            var line = new SolvedLine(template, layout, centreline, plan, []);
            var half = template.Tube.OutsideDiameter.Millimetres / 2;
            var made = new HashSet<int>();
            BentAtTheBench(layout, plan, bend => bend.LineAt.Degrees, (bend, at, along) =>
            {
                made.Add(bend.Number - 1);
                steps++;
                if (StepCheck.Of(line, (bend.Number - 1, bend.Number - 1), made.Contains) is { } check)
                {
                    checks++;
                    var (from, to) = (Touched(check.From, at, along), Touched(check.To, at, along));
                    Assert.True(check.From == 0 || made.Contains(check.From - 1));
                    Assert.True(check.To == layout.Bends.Length + 1 || made.Contains(check.To - 1));
                    Assert.Equal(from.DistanceTo(to), check.Distance.Millimetres, SameMm);
                }
            });

            // The back of a bend: from the middle of its chord outwards by what the arc stands over it, and half the tube.
            Vector3D Touched(int place, Vector3D[] at, Vector3D[] along)
            {
                if (place == 0 || place == layout.Bends.Length + 1)
                {
                    return place == 0 ? at[0] : at[^1];
                }

                var (start, end, bend) = ((2 * place) - 1, 2 * place, layout.Bends[place - 1]);
                var inwards = along[end] - along[start];
                var over = (bend.Radius.Millimetres * (1 - Math.Cos(bend.Bend.Turn.Radians / 2))) + half;
                return (0.5 * (at[start] + at[end])) - (over / inwards.Norm * inwards);
            }
        }

        Assert.InRange(checks, 0.9 * steps, steps);
    }

    [Fact]
    public void In_the_picture_the_held_side_stays_and_the_swept_side_comes_up_to_the_former()
    {
        var random = new Random(1848);
        for (var i = 0; i < 300; i++)
        {
            var (layout, centreline, plan, template) = AnyPlan(random, 6, (5, 120), scattered: i % 2 == 0);
            var line = new SolvedLine(template, layout, centreline, plan, []);
            var made = new HashSet<int>();
            foreach (var bend in plan.InWorkingOrder)
            {
                var (bends, heldA) = ((bend.Number - 1, bend.Number - 1), bend.Held == TubeEnd.A);
                var before = PartBent.Of(line, bends, made.Contains);
                made.Add(bend.Number - 1);
                var after = PartBent.Of(line, bends, made.Contains);
                var (was, isNow) = (OnPaper(before, heldA), OnPaper(after, heldA));
                var held = heldA ? before.First + 1 : was.Count - before.Last;
                var stays = heldA ? was.Take(held).Zip(isNow) : was.TakeLast(held).Zip(isNow.TakeLast(held));
                Assert.All(stays, pair => Assert.Equal(0, pair.First.DistanceTo(pair.Second), SameMm));

                // A lies on the left, and the former stands above the tube.
                var (swept, sweptThen) = heldA ? (was[before.Last], isNow[after.Last]) : (was[before.First], isNow[after.First]);
                Assert.Equal(heldA ? 1 : -1, Math.Sign(swept.X));
                Assert.Equal(0, swept.Y, SameMm);
                Assert.True(sweptThen.Y > 0.01);
                Assert.Equal(layout.Bends[bend.Number - 1].Radius.Millimetres, sweptThen.DistanceTo(new(0, 10, 0)), SameMm);
            }
        }

        static List<Vector3D> OnPaper(PartBent tube, bool heldA)
        {
            var frame = heldA ? tube.Start : tube.End;
            return [.. tube.Points.Select(point => point - frame.Position)
                .Select(point => new Vector3D(point.Dot(frame.Direction), point.Dot(frame.Side), point.Dot(frame.Axis)))];
        }
    }

    private static (RouteLayout Layout, TubeCentreline Centreline, BenchPlan Plan, LineTemplate Template) AnyPlan(
        Random random, int most, (double Least, double Most) turns, bool scattered = false)
    {
        var count = random.Next(1, most + 1);
        double[] legs = [.. Enumerable.Range(0, count + 1).Select(_ => 5 + (200 * random.NextDouble()))];
        var bends = Enumerable.Range(0, count).Select(_ => (
            (random.NextDouble() * 360) - 180, turns.Least + ((turns.Most - turns.Least) * random.NextDouble()))).ToArray();
        var template = Lines.Of(Lines.Bender(10), legs, bends) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(10)),
        };

        // The made stretch grows from any bend, each held from either end.
        var first = random.Next(count);
        var (low, high) = (first, first);
        var steps = ImmutableArray.CreateBuilder<BendStep>(count);
        steps.Add(new(first, (TubeEnd)random.Next(2), Length.Zero));
        while (steps.Count < count)
        {
            var next = low == 0 || (high < count - 1 && random.Next(2) == 0) ? ++high : --low;
            steps.Add(new(next, (TubeEnd)random.Next(2), Length.Zero));
        }

        var order = steps.ToArray();
        if (scattered)
        {
            random.Shuffle(order);
        }

        return Planned(template, [.. order]);
    }

    private static (RouteLayout Layout, TubeCentreline Centreline, BenchPlan Plan, LineTemplate Template) Planned(
        LineTemplate template, ImmutableArray<BendStep> steps)
    {
        var layout = RouteLayout.Of(template).Layout!;
        var centreline = layout.Centreline(template.Start);
        return (layout, centreline, BenchPlan.Of(
            template,
            layout,
            centreline,
            StraightTube.Of(template, layout),
            [.. layout.Bends.Select(bend => bend.Bend.Turn)],
            new(steps, FlareAFirst: false, FlareBFirst: false)), template);
    }

    /// <summary>End A, start and end of each bend, end B, after every bend is made.</summary>
    private static Vector3D[] BentAtTheBench(
        RouteLayout layout, BenchPlan plan, Func<BenchBend, double> lineAt, Action<BenchBend, Vector3D[], Vector3D[]>? after = null)
    {
        var places = Places(plan);

        // The tube lies along x from A; the line is penned on top. Each place knows the way along the tube and towards the line.
        Vector3D[] at = [.. places.Select(place => new Vector3D(place, 0, 0))];
        var along = Enumerable.Repeat(new Vector3D(1, 0, 0), places.Length).ToArray();
        var line = Enumerable.Repeat(new Vector3D(0, 0, 1), places.Length).ToArray();
        foreach (var bend in plan.InWorkingOrder)
        {
            var (start, end) = ((2 * bend.Number) - 1, 2 * bend.Number);
            var (held, swept) = bend.Held == TubeEnd.A ? (start, end) : (end, start);

            // Looking from the held end to the tool; the line stands clockwise of the inside, so the inside the other way of the line.
            // Clockwise for who looks along a direction is right-handed about it.
            var look = bend.Held == TubeEnd.A ? along[held] : -1 * along[held];
            var inside = Turned(line[held], look, -lineAt(bend));
            var (axis, radius) = (look.Cross(inside), layout.Bends[bend.Number - 1].Radius.Millimetres);
            var centre = at[held] + (radius * inside);

            // What is beyond the bend comes up to where the bend begins, and goes round the former with it.
            var length = at[swept].DistanceTo(at[held]);
            for (var i = bend.Held == TubeEnd.A ? end : 0; bend.Held == TubeEnd.A ? i < at.Length : i <= start; i++)
            {
                var turn = bend.Bend.Turn.Degrees;
                at[i] = centre + Turned(at[i] - (length * look) - centre, axis, turn);
                along[i] = Turned(along[i], axis, turn);
                line[i] = Turned(line[i], axis, turn);
            }

            after?.Invoke(bend, at, along);
        }

        return at;
    }

    private static double[] Places(BenchPlan plan) =>
    [
        0,
        .. plan.Bends.SelectMany(bend => new[] { bend.Start.Millimetres, bend.End.Millimetres }),
        plan.DevelopedLength.Millimetres,
    ];

    /// <summary>The formula of Rodrigues: a right-handed turn about an axis of length 1.</summary>
    private static Vector3D Turned(Vector3D vector, Vector3D axis, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return (cos * vector) + (sin * axis.Cross(vector)) + ((1 - cos) * axis.Dot(vector) * axis);
    }

    private static Vector3D[] Corners(TubeCentreline centreline) =>
        [centreline.EndA, .. centreline.Arcs.SelectMany(arc => new[] { arc.Start.Position, arc.End.Position }), centreline.EndB];

    private static IEnumerable<(int First, int Second)> Pairs(Vector3D[] points) =>
        Enumerable.Range(0, points.Length).SelectMany(i => Enumerable.Range(i + 1, points.Length - i - 1).Select(j => (i, j)));

    /// <summary>Of the tetrahedron of each four neighbours, with the sign that its mirror image has the other way.</summary>
    private static IEnumerable<double> Volumes(Vector3D[] points) => Enumerable.Range(0, points.Length - 3).Select(
        i => (points[i + 1] - points[i]).Cross(points[i + 2] - points[i]).Dot(points[i + 3] - points[i]) / 6);
}
