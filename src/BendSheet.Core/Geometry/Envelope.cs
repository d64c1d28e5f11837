using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>The box along the axes that the finished tube just fits into, over its outside.</summary>
/// <param name="X">Size along the first axis: the way end A heads, where the template does not say how the line lies.</param>
/// <param name="Y">Size along the second axis: the side that the first bend turns to.</param>
/// <param name="Z">Size along the third axis.</param>
public sealed record Envelope(Length X, Length Y, Length Z)
{
    /// <summary>The exact box, ends cut square.</summary>
    /// <param name="centreline">Of the tube.</param>
    /// <param name="outsideDiameter">Of the tube; every bend radius is above half of it.</param>
    public static Envelope Of(TubeCentreline centreline, Length outsideDiameter)
    {
        var tubeRadius = outsideDiameter.Millimetres / 2;
        return new(
            Along(centreline, new(1, 0, 0), tubeRadius),
            Along(centreline, new(0, 1, 0), tubeRadius),
            Along(centreline, new(0, 0, 1), tubeRadius));
    }

    private static Length Along(TubeCentreline centreline, Vector3D axis, double tubeRadius) =>
        Length.FromMillimetres(Reach(centreline, axis, tubeRadius) + Reach(centreline, -1 * axis, tubeRadius));

    /// <summary>How far the tube's outside reaches in one direction, from the origin.</summary>
    private static double Reach(TubeCentreline centreline, Vector3D axis, double tubeRadius)
    {
        var reach = double.NegativeInfinity;
        foreach (var straight in centreline.Straights)
        {
            var outside = tubeRadius * SineToAxis(straight.Start.Direction, axis);
            reach = Math.Max(reach, Math.Max(straight.Start.Position.Dot(axis), straight.End.Dot(axis)) + outside);
        }

        foreach (var arc in centreline.Arcs)
        {
            reach = Math.Max(reach, ReachOfTop(arc, axis, tubeRadius));
        }

        return reach;
    }

    /// <summary>
    /// Between its ends, which the straights beside it cover, an arc's outside reaches furthest where the tube runs square to the axis:
    /// the only place where the reach is stationary as long as the bend radius is above the tube's.
    /// </summary>
    private static double ReachOfTop(Arc arc, Vector3D axis, double tubeRadius)
    {
        var out0 = -arc.Start.Side.Dot(axis);
        var along0 = arc.Start.Direction.Dot(axis);
        var turned = Math.Atan2(along0, out0);
        if (turned < 0)
        {
            turned += 2 * Math.PI;
        }

        return turned <= arc.Turn.Radians
            ? arc.Centre.Dot(axis) + (arc.Radius.Millimetres * Math.Sqrt((out0 * out0) + (along0 * along0))) + tubeRadius
            : double.NegativeInfinity;
    }

    private static double SineToAxis(Vector3D direction, Vector3D axis) => direction.Cross(axis).Norm;
}
