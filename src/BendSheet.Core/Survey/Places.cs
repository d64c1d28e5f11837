using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>
/// A line's shape as far as it can be measured, seen from end A: A at the origin, its straight along +X, the first bend turning to +Y. In
/// millimetres.
/// </summary>
/// <param name="Points">End A, each corner, end B; null where a bend has no corner that a tape could be held to.</param>
/// <param name="LastDirection">Of the straight at end B, length 1.</param>
/// <param name="Start">How it lies on the car; of a line measured by its corners this changes with them.</param>
internal sealed record Places(Vector3D?[] Points, Vector3D LastDirection, Frame Start)
{
    /// <summary>End B.</summary>
    public Vector3D EndB => Points[^1]!.Value;

    /// <summary>The way along which a point comes to lie further ahead.</summary>
    public static Vector3D AheadWay { get; } = new(1, 0, 0);

    /// <summary>How far a point lies off the line through A's straight.</summary>
    public static double AsideOf(Vector3D point) => Math.Sqrt((point.Y * point.Y) + (point.Z * point.Z));

    /// <summary>The way along which it comes to lie further off that line; none on the line itself.</summary>
    public static Vector3D AsideWay(Vector3D point) =>
        AsideOf(point) is var aside && aside > 0 ? new(0, point.Y / aside, point.Z / aside) : default;

    /// <summary>Whether a tape can be held to both points.</summary>
    public bool Has(TapedQuantity quantity) => Points[quantity.From] is not null && Points[quantity.To] is not null;

    /// <summary>What would be measured, in millimetres. Its points must exist.</summary>
    /// <param name="quantity">Which.</param>
    public double ValueOf(TapedQuantity quantity)
    {
        var (from, to) = (PointOf(quantity.From, quantity.Back), PointOf(quantity.To, quantity.Back));
        return quantity.Kind switch
        {
            TapedKind.Ahead => to.X,
            TapedKind.Aside => AsideOf(to),
            TapedKind.Part => quantity.Axis.Dot(OnCar(Start, to - from)),
            _ => from.DistanceTo(to),
        };
    }

    /// <summary>An end, a corner, or the back of the bend there, which needs a point on either side.</summary>
    private Vector3D PointOf(int place, Wire? back)
    {
        var point = Points[place]!.Value;
        if (back is null || place == 0 || place == Points.Length - 1)
        {
            return point;
        }

        var (before, after) = (point - Points[place - 1]!.Value, Points[place + 1]!.Value - point);
        return BackOfBend.Of(point, 1 / before.Norm * before, 1 / after.Norm * after, back.Radius!.Value, back.Diameter!.Value);
    }

    /// <summary>A way in the axes of the car.</summary>
    public static Vector3D OnCar(Frame start, Vector3D way) => (way.X * start.Direction) + (way.Y * start.Side) + (way.Z * start.Axis);
}
