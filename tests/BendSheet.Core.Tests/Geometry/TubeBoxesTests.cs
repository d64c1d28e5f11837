using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Geometry;

/// <summary>Whole lines against each other, held against the same lines walked in small steps.</summary>
public class TubeBoxesTests
{
    private const int Steps = 400;

    [Fact]
    public void Walked_in_small_steps_no_two_places_of_two_lines_are_nearer()
    {
        var random = new Random(20240309);
        for (var pair = 0; pair < 150; pair++)
        {
            var (one, other) = (Any(random), Any(random));
            var found = Nearest(one, other);
            var (stepped, step) = Stepped(one, other);
            Assert.True(found.Distance.Millimetres <= stepped + Tolerances.SamePoint.Millimetres, $"pair {pair}: {found} and {stepped}");
            Assert.True(found.Distance.Millimetres >= stepped - step, $"pair {pair}: {found} and {stepped}");
            Assert.Equal(
                found.Distance.Millimetres,
                PointAt(one, found.First.AlongTube.Millimetres).DistanceTo(PointAt(other, found.Second!.Value.AlongTube.Millimetres)),
                6);
        }
    }

    [Fact]
    public void Walked_in_small_steps_no_place_of_a_line_is_nearer_to_a_solid()
    {
        var random = new Random(20240310);
        for (var pair = 0; pair < 150; pair++)
        {
            var line = Any(random);
            var (from, to) = (100 * Vector(random), 100 * Vector(random));
            Solid solid = pair % 2 == 0 ? new SolidBox(from, to) : new SolidCylinder(from, to, Lines.Mm(30));
            var work = 0L;
            var found = TubeBoxes.Of(line, Length.Zero, Length.Zero)!.Nearer(solid, Lines.Mm(1e6), ref work)!.Distance.Millimetres;
            var points = Points(line);
            var stepped = points.Min(point => point.DistanceTo(solid.NearestTo(point)));
            Assert.InRange(found, stepped - (line.Length.Millimetres / (2 * Steps)), stepped + Tolerances.SamePoint.Millimetres);
        }
    }

    [Fact]
    public void Without_its_ends_a_line_is_shorter_by_what_was_left_out()
    {
        var line = Any(new Random(5));
        var work = 0L;
        var end = line.EndA;
        var whole = TubeBoxes.Of(line, Length.Zero, Length.Zero)!.Nearer(new SolidBox(end, end), Lines.Mm(10), ref work);
        Assert.Equal(0, whole!.Distance.Millimetres, 9);
        var without = TubeBoxes.Of(line, Lines.Mm(12), Length.Zero)!.Nearer(new SolidBox(end, end), Lines.Mm(100), ref work);
        Assert.True(without!.First.AlongTube.Millimetres >= 12 - 1e-9);
        Assert.Null(TubeBoxes.Of(line, line.Length, Length.Zero));
    }

    [Fact]
    public void Lines_that_are_further_apart_than_asked_are_no_approach()
    {
        var (one, other) = (Any(new Random(5)), Any(new Random(6)));
        var found = Nearest(one, other).Distance;
        var (boxes, others) = (TubeBoxes.Of(one, Length.Zero, Length.Zero)!, TubeBoxes.Of(other, Length.Zero, Length.Zero)!);
        var work = 0L;
        Assert.Null(boxes.Nearer(others, found - Lines.Mm(0.001), ref work));
        Assert.NotNull(boxes.Nearer(others, found + Lines.Mm(0.001), ref work));
    }

    private static TubeApproach Nearest(TubeCentreline one, TubeCentreline other)
    {
        var work = 0L;
        return TubeBoxes.Of(one, Length.Zero, Length.Zero)!
            .Nearer(TubeBoxes.Of(other, Length.Zero, Length.Zero)!, Lines.Mm(1e6), ref work)!;
    }

    private static (double Distance, double Step) Stepped(TubeCentreline one, TubeCentreline other)
    {
        var (points, others) = (Points(one), Points(other));
        return (points.Min(point => others.Min(point.DistanceTo)), (one.Length + other.Length).Millimetres / (2 * Steps));
    }

    private static List<Vector3D> Points(TubeCentreline line) =>
        [.. Enumerable.Range(0, Steps + 1).Select(i => PointAt(line, i * line.Length.Millimetres / Steps))];

    /// <summary>By walking straights and arcs one after the other.</summary>
    private static Vector3D PointAt(TubeCentreline line, double along)
    {
        for (var i = 0; i < line.Straights.Length; i++)
        {
            var straight = line.Straights[i];
            if (along <= straight.Length.Millimetres || i == line.Arcs.Length)
            {
                return straight.Start.Position + (along * straight.Start.Direction);
            }

            along -= straight.Length.Millimetres;
            var arc = line.Arcs[i];
            if (along <= arc.Length.Millimetres)
            {
                return arc.PointAt(Angle.FromRadians(along / arc.Radius.Millimetres));
            }

            along -= arc.Length.Millimetres;
        }

        throw new ArgumentOutOfRangeException(nameof(along));
    }

    private static TubeCentreline Any(Random random)
    {
        var bends = random.Next(1, 8);
        var direction = Unit(Vector(random));
        return TubeCentreline.Walk(
            new(80 * Vector(random), direction, Unit(direction.Cross(Vector(random)))),
            [.. Enumerable.Range(0, bends + 1).Select(_ => Lines.Mm(120 * random.NextDouble()))],
            [
                .. Enumerable.Range(0, bends).Select(_ => new ArcAhead(
                    Lines.Deg(360 * random.NextDouble()),
                    Lines.Mm(8 + (20 * random.NextDouble())),
                    Lines.Deg(5 + (170 * random.NextDouble())))),
            ]);
    }

    private static Vector3D Vector(Random random) =>
        new((2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1, (2 * random.NextDouble()) - 1);

    private static Vector3D Unit(Vector3D vector) => 1 / vector.Norm * vector;
}
