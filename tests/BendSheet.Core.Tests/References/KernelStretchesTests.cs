using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// Random pairs of straights and arcs against a general-purpose geometry kernel, which looked for the least distance with its own
/// algorithms; `tests/references/kernel/stretches.cpp` made the table.
/// </summary>
public class KernelStretchesTests
{
    private const int Fewest = 200;

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Read("kernel/stretches.csv");

    public static TheoryData<int> Pairs { get; } = [.. Enumerable.Range(0, Rows.Count)];

    [Fact]
    public void There_are_enough_pairs_of_every_kind()
    {
        var kinds = Rows.GroupBy(row => (row["radius_1_mm"] is "0") && (row["radius_2_mm"] is "0") ? 0 : row["radius_1_mm"] is "0" ? 1 : 2)
            .ToDictionary(kind => kind.Key, kind => kind.Count());
        Assert.True(kinds[1] + kinds[2] >= Fewest, $"{kinds[1]} of straight and arc, {kinds[2]} of arcs");
        Assert.All(kinds.Values, count => Assert.True(count >= 30));
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void They_are_as_far_apart_as_the_kernel_says(int index)
    {
        var row = Rows[index];
        var first = Stretch(row, "_1");
        var second = Stretch(row, "_2");
        var nearest = NearPlaces.Nearer(first, second, double.PositiveInfinity, new SearchEffort())!;
        var found = nearest.Distance.Millimetres;
        Assert.Equal(found, first.PointAt(nearest.OnFirst).DistanceTo(second.PointAt(nearest.OnSecond)), 9);
        Assert.Equal(AssertGeometry.Number(row["distance_mm"]), found, Core.Units.Tolerances.SamePoint.Millimetres);
    }

    internal static Stretch Stretch(IReadOnlyDictionary<string, string> row, string which)
    {
        var frame = new Frame(Point(row["start" + which + "_mm"]), Point(row["direction" + which]), Point(row["side" + which]));
        var radius = AssertGeometry.Number(row["radius" + which + "_mm"]);
        var size = AssertGeometry.Number(row["size" + which]);
        return radius == 0
            ? Core.Geometry.Stretch.Of(new Straight(frame, Lines.Mm(size)))
            : Core.Geometry.Stretch.Of(new Arc(frame, Lines.Mm(radius), Lines.Deg(size)));
    }

    private static Vector3D Point(string figures) =>
        figures.Split(' ').Select(AssertGeometry.Number).ToArray() is [var x, var y, var z]
            ? new(x, y, z)
            : throw new FormatException(figures);
}
