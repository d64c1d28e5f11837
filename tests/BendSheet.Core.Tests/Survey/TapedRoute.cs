using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

/// <summary>A route to be taped, with its corners known: millimetres and degrees, one rotation for each bend, the first 0.</summary>
public sealed record TapedRoute(double[] Legs, double[] Bends, double[] Rotations)
{
    /// <summary>
    /// Rotations are flat to the last digit or half a degree off: nearer than that, the last digit of a distance in doubles is worth more
    /// than a billionth of the line.
    /// </summary>
    internal static Gen<TapedRoute> Any { get; } = Of(
        0,
        8,
        Gen.Double[20, 500],
        Gen.Double[10, 150],
        Gen.OneOf(Gen.Double[0.5, 179.5], Gen.Int[0, 2].Select(quarters => 90.0 * quarters)));

    /// <summary>Every rotation, however near to flat.</summary>
    internal static Gen<TapedRoute> OfAnyRotation { get; } = Of(0, 8, Gen.Double[20, 500], Gen.Double[10, 150], Gen.Double[0, 180]);

    /// <summary>Far enough from straight and flat that a tape tells left from right over several bends.</summary>
    internal static Gen<TapedRoute> Clear { get; } = ClearOf(0, 8);

    public static SourcePosition At { get; } = new("test.yaml", 8, 5);

    public Vector3D[] Points => CornerPoints.Build(Legs, Bends, Rotations);

    /// <summary>What is seen at every bend that turns out of the plane of the one before.</summary>
    public TapedSide[] Sides => [.. Enumerable.Range(2, Math.Max(0, Bends.Length - 1))
        .Where(bend => Math.Abs(Rotations[bend - 1]) is > 0 and < 180)
        .Select(bend => Seen(bend, Rotations[bend - 1] < 0 ? Side.Left : Side.Right))];

    /// <summary>Every distance has a place of its own in the file.</summary>
    public static SourcePosition DistanceAt(int from, int to) => new("test.yaml", 10 + from, 1 + to);

    public static SourcePosition SideAt(int bend) => new("test.yaml", 200, bend);

    public static TapedDistance Taped(int from, int to, double millimetres) => new(from, to, Lines.Mm(millimetres), DistanceAt(from, to));

    public static TapedSide Seen(int bend, Side side) => new(bend, side, SideAt(bend));

    /// <summary>The distances between all corners up to so many apart.</summary>
    public static TapedDistance[] Distances(Vector3D[] points, int apart = int.MaxValue) =>
    [
        .. from i in Enumerable.Range(0, points.Length)
           from j in Enumerable.Range(0, points.Length)
           where i < j && j - i <= apart
           select Taped(i, j, points[i].DistanceTo(points[j])),
    ];

    /// <summary>What is needed and no more: to the next corner, the next but one, the next but two.</summary>
    public TapedDistance[] Needed() => Distances(Points, 3);

    /// <summary>Between every two corners.</summary>
    public TapedDistance[] All() => Distances(Points);

    /// <summary>For the message of a failed sample, with every figure to its last digit.</summary>
    public override string ToString() => $"legs [{Text(Legs)}], bends [{Text(Bends)}], rotations [{Text(Rotations)}]";

    internal static Gen<TapedRoute> ClearOf(int fewest, int most) =>
        Of(fewest, most, Gen.Double[100, 400], Gen.Double[40, 120], Gen.Double[30, 150]);

    private static string Text(double[] figures) =>
        string.Join(", ", figures.Select(figure => figure.ToString("R", CultureInfo.InvariantCulture)));

    private static Gen<TapedRoute> Of(int fewest, int most, Gen<double> leg, Gen<double> bend, Gen<double> rotation) =>
        from count in Gen.Int[fewest, most]
        from legs in leg.Array[count + 1]
        from bends in bend.Array[count]
        from rotations in Gen.Select(rotation, Gen.Bool, (size, left) => left ? -size : size).Array[count]
        select new TapedRoute(legs, bends, [.. rotations.Select((one, i) => i == 0 ? 0 : one)]);
}
