using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// From what the ruler touched to the centreline leg, corner to corner. The corners are what wire and tube have in common: the wire's
/// bends are tighter than the tool's, so only the tangent points move.
/// </summary>
/// <remarks>
/// Plane geometry of a fillet: the tangent point of a bend of angle b and radius r lies r·tan(b/2) from the corner (setback, in
/// FAA AC 43.13-1B Table 4-7 as K = tan(b/2)); an outside or inside face is the same corner at a radius larger or smaller by w/2.
/// </remarks>
public static class LegConversion
{
    /// <summary>The centreline leg between two corners.</summary>
    /// <param name="measured">What was read from the ruler.</param>
    /// <param name="habit">What the ruler touched.</param>
    /// <param name="wire">Must have the figure that the habit needs.</param>
    /// <param name="before">The bend at the leg's start; null at a free end. Below 180°.</param>
    /// <param name="after">The bend at its end; null at a free end. Below 180°.</param>
    /// <exception cref="InvalidOperationException">The wire's figure that the habit needs is not known.</exception>
    public static Length CornerToCorner(Length measured, MeasuredTo habit, Wire wire, Angle? before, Angle? after) => habit switch
    {
        MeasuredTo.Straight => measured + ((HalfTangent(before) + HalfTangent(after)) * Known(wire.Radius)),
        MeasuredTo.Outside => measured - ((HalfTangent(before) + HalfTangent(after)) / 2 * Known(wire.Diameter)),
        MeasuredTo.Inside => measured + ((HalfTangent(before) + HalfTangent(after)) / 2 * Known(wire.Diameter)),
        MeasuredTo.Along => measured + ((CornerCut(before) + CornerCut(after)) / 2 * Known(wire.Radius)),
        _ => measured,
    };

    /// <summary>How much the leg between two corners changes with the bend at one of them, in millimetres for each radian.</summary>
    /// <param name="habit">What the ruler touched.</param>
    /// <param name="wire">Must have the figure that the habit needs.</param>
    /// <param name="bend">Below 180°.</param>
    /// <exception cref="InvalidOperationException">The wire's figure that the habit needs is not known.</exception>
    public static double SlopeWith(MeasuredTo habit, Wire wire, Angle bend) => habit switch
    {
        MeasuredTo.Straight => HalfTangentSlope(bend) * Known(wire.Radius).Millimetres,
        MeasuredTo.Outside => -HalfTangentSlope(bend) / 2 * Known(wire.Diameter).Millimetres,
        MeasuredTo.Inside => HalfTangentSlope(bend) / 2 * Known(wire.Diameter).Millimetres,
        MeasuredTo.Along => ((2 * HalfTangentSlope(bend)) - 1) / 2 * Known(wire.Radius).Millimetres,
        _ => 0,
    };

    /// <summary>The slope of tan(bend/2), for each radian.</summary>
    internal static double HalfTangentSlope(Angle bend)
    {
        var tangent = HalfTangent(bend);
        return (1 + (tangent * tangent)) / 2;
    }

    private static double HalfTangent(Angle? bend) => bend is { } angle ? Math.Tan(angle.Radians / 2) : 0;

    /// <summary>How much shorter the way round a bend of radius 1 is than the way over its corner.</summary>
    private static double CornerCut(Angle? bend) => bend is { } angle ? (2 * HalfTangent(angle)) - angle.Radians : 0;

    private static Length Known(Length? figure) =>
        figure ?? throw new InvalidOperationException("The wire's figure must be known before a leg is converted.");
}
