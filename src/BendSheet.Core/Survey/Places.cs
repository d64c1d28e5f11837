using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>
/// A line's shape as far as it can be measured, seen from end A: A at the origin, its straight along +X, the first bend turning to +Y. In
/// millimetres.
/// </summary>
/// <param name="Points">End A, each corner, end B; null where a bend has no corner that a tape could be held to.</param>
/// <param name="LastDirection">Of the straight at end B, length 1.</param>
/// <param name="Start">How it lies on the car; measured by its corners it lies otherwise where they do.</param>
internal sealed record Places(Vector3D?[] Points, Vector3D LastDirection, Frame Start)
{
    /// <summary>End B.</summary>
    public Vector3D EndB => Points[^1]!.Value;

    /// <summary>How far a point lies off the line through A's straight.</summary>
    public static double AsideOf(Vector3D point) => Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z));

    /// <summary>Whether a tape can be held to both points, and they are not one.</summary>
    public bool Has(TapedQuantity quantity) => Points[quantity.From] is not null && Points[quantity.To] is not null;

    /// <summary>What would be measured, in millimetres. Its points are there.</summary>
    /// <param name="quantity">Which.</param>
    public double ValueOf(TapedQuantity quantity)
    {
        var (from, to) = (Points[quantity.From]!.Value, Points[quantity.To]!.Value);
        return quantity.Kind switch
        {
            TapedKind.Ahead => to.X,
            TapedKind.Aside => AsideOf(to),
            TapedKind.Part => quantity.Axis.Dot(OnCar(to - from)),
            _ => from.DistanceTo(to),
        };
    }

    private Vector3D OnCar(Vector3D way) => (way.X * Start.Direction) + (way.Y * Start.Side) + (way.Z * Start.Axis);
}
