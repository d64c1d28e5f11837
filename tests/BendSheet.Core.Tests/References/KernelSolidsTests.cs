using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// Random straights and arcs beside boxes and cylinders against a general-purpose geometry kernel, which looked for the least distance to
/// their faces with its own algorithms; `tests/references/kernel/solids.cpp` made the table.
/// </summary>
public class KernelSolidsTests
{
    private const int Fewest = 60;

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Read("kernel/solids.csv");

    public static TheoryData<int> Pairs { get; } = [.. Enumerable.Range(0, Rows.Count)];

    [Fact]
    public void There_are_enough_pairs_of_every_kind()
    {
        var kinds = Rows.CountBy(row => (row["radius_mm"] is "0", row["solid_radius_mm"] is "0")).ToList();
        Assert.Equal(4, kinds.Count);
        Assert.All(kinds, kind => Assert.True(kind.Value >= Fewest, $"{kind}"));
        Assert.Contains(Rows, row => AssertGeometry.Number(row["distance_mm"]) < 1e-9);
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void They_are_as_far_apart_as_the_kernel_says(int index)
    {
        var row = Rows[index];
        var stretch = Stretch(row);
        var (from, to) = (Point(row["solid_from_mm"]), Point(row["solid_to_mm"]));
        var radius = AssertGeometry.Number(row["solid_radius_mm"]);
        Solid solid = radius == 0 ? new SolidBox(from, to) : new SolidCylinder(from, to, Lines.Mm(radius));
        var (distance, along) = NearPlaces.Nearer(stretch, solid, double.PositiveInfinity, new SearchEffort())!.Value;
        var point = stretch.PointAt(along);
        Assert.Equal(distance, point.DistanceTo(solid.NearestTo(point)), 9);
        Assert.Equal(AssertGeometry.Number(row["distance_mm"]), distance, Core.Units.Tolerances.SamePoint.Millimetres);
    }

    /// <summary>A box that leaves out a part of its stretch would hide what comes too near.</summary>
    [Theory]
    [MemberData(nameof(Pairs))]
    public void Stretch_and_solid_lie_in_their_boxes(int index)
    {
        var stretch = Stretch(Rows[index]);
        for (var i = 0; i <= 50; i++)
        {
            var point = stretch.PointAt(i / 50.0 * stretch.Length);
            Assert.Equal(0, stretch.Bounds.GapTo(Bounds.Around(point, point)), 9);
        }

        var (from, to) = (Point(Rows[index]["solid_from_mm"]), Point(Rows[index]["solid_to_mm"]));
        var cylinder = new SolidCylinder(from, to, Lines.Mm(20));
        Vector3D[] away = [new(1e4, 3, 5), new(-1e4, 0, 0), new(1, 1e4, 2), new(0, -1e4, 0), new(4, 0, 1e4), new(0, 0, -1e4)];
        foreach (var far in away)
        {
            var reached = cylinder.NearestTo(far);
            Assert.Equal(0, cylinder.Bounds.GapTo(Bounds.Around(reached, reached)), 9);
        }
    }

    private static Stretch Stretch(IReadOnlyDictionary<string, string> row)
    {
        var frame = new Frame(Point(row["start_mm"]), Point(row["direction"]), Point(row["side"]));
        var (radius, size) = (AssertGeometry.Number(row["radius_mm"]), AssertGeometry.Number(row["size"]));
        return radius == 0
            ? Core.Geometry.Stretch.Of(new Straight(frame, Lines.Mm(size)))
            : Core.Geometry.Stretch.Of(new Arc(frame, Lines.Mm(radius), Lines.Deg(size)));
    }

    private static Vector3D Point(string figures) =>
        figures.Split(' ').Select(AssertGeometry.Number).ToArray() is [var x, var y, var z]
            ? new(x, y, z)
            : throw new FormatException(figures);
}
