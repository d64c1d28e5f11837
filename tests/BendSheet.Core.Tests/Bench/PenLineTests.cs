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
            var (layout, centreline, plan) = AnyPlan(random, most, (least, largest));
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
        var (layout, centreline, plan) = AnyPlan(new Random(4), 4, (30, 90));
        var shape = Corners(centreline);
        var wrong = BentAtTheBench(layout, plan, bend => 360 - bend.LineAt.Degrees);
        Assert.Contains(Volumes(shape).Zip(Volumes(wrong)), pair => Math.Abs(pair.First - pair.Second) > 1);
    }

    [Fact]
    public void The_bend_made_first_has_the_line_at_12_and_the_next_ones_where_it_is_seen_from_the_held_end()
    {
        var (layout, _, plan) = Planned(
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
        var (layout, centreline, plan) = Planned(template, [new(0, TubeEnd.A, Length.Zero), new(1, TubeEnd.A, Length.Zero)]);
        var later = BenchPlan.Of(
            template, layout, centreline, StraightTube.Of(template, layout), [.. plan.Bends.Select(bend => bend.Pull)], plan.Order,
            penned: Lines.Deg(30));
        Assert.Equal([30.0, 300], later.Bends.Select(bend => bend.LineAt.Degrees));
    }

    private static (RouteLayout Layout, TubeCentreline Centreline, BenchPlan Plan) AnyPlan(
        Random random, int most, (double Least, double Most) turns)
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

        return Planned(template, steps.ToImmutable());
    }

    private static (RouteLayout Layout, TubeCentreline Centreline, BenchPlan Plan) Planned(
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
            new(steps, FlareAFirst: false, FlareBFirst: false)));
    }

    /// <summary>End A, start and end of each bend, end B, after every bend is made.</summary>
    private static Vector3D[] BentAtTheBench(RouteLayout layout, BenchPlan plan, Func<BenchBend, double> lineAt)
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
