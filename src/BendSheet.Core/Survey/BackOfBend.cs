using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>The outermost point of a bend, its back, which a tape held across a wire or a tube touches.</summary>
public static class BackOfBend
{
    /// <summary>
    /// How far the back lies inwards of the corner along the bisector, r·(1/cos(bend/2) − 1) − w/2; below zero where it lies outwards, as
    /// at a slight bend of a thick wire.
    /// </summary>
    /// <param name="turn">Below 180°: from there on a bend has no corner.</param>
    /// <param name="radius">Of the bend, to the centreline.</param>
    /// <param name="diameter">Of the wire or the tube.</param>
    public static Length Depth(Angle turn, Length radius, Length diameter) =>
        (((1 / Math.Cos(turn.Radians / 2)) - 1) * radius) - (0.5 * diameter);

    /// <summary>The back of a bend in space, in millimetres.</summary>
    /// <param name="corner">Where the straights would meet.</param>
    /// <param name="before">The way into the corner, length 1.</param>
    /// <param name="after">The way out of it, length 1.</param>
    /// <param name="radius">Of the bend, to the centreline.</param>
    /// <param name="diameter">Of the wire or the tube.</param>
    /// <returns>The corner itself where nothing is bent.</returns>
    public static Vector3D Of(Vector3D corner, Vector3D before, Vector3D after, Length radius, Length diameter)
    {
        var inwards = after - before;
        if (inwards.Norm < 1e-9)
        {
            return corner;
        }

        var turn = Angle.FromRadians(Math.Atan2(before.Cross(after).Norm, before.Dot(after)));
        return corner + (Depth(turn, radius, diameter).Millimetres / inwards.Norm * inwards);
    }
}
