using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>Corner points one after the other. A rotation at a bend is that against the bend before, clockwise positive.</summary>
internal static class CornerChain
{
    /// <summary>
    /// End A and the next two points: the first leg along +X, the first bend towards +Y. Lengths in millimetres, radians.
    /// </summary>
    public static void Begin(Span<Vector3D> points, double first, double turn, double second)
    {
        points[0] = default;
        points[1] = new(first, 0, 0);
        if (points.Length > 2)
        {
            points[2] = points[1] + (second * new Vector3D(Math.Cos(turn), Math.Sin(turn), 0));
        }
    }

    /// <summary>
    /// Points that least squares may have carried over an axis, turned back: the first leg along +X, the first bend towards +Y.
    /// </summary>
    public static Vector3D[] InFrame(Vector3D[] points)
    {
        var along = points[1].X < 0 ? -1 : 1;
        var across = points.Length > 2 && along * points[2].Y < 0 ? -along : along;
        return [.. points.Select(point => new Vector3D(along * point.X, across * point.Y, along * across * point.Z))];
    }

    /// <summary>The point after a bend, seen from the three points before it.</summary>
    /// <param name="points">The three points before it; the last of them is the bend's corner.</param>
    /// <param name="rotation">In radians.</param>
    /// <param name="turn">In radians.</param>
    /// <param name="leg">In millimetres.</param>
    public static Vector3D Next(ReadOnlySpan<Vector3D> points, double rotation, double turn, double leg)
    {
        var way = points[2] - points[1];
        var direction = (1 / way.Norm) * way;

        // Seen along the leg after the bend before, the point before that bend lies on the side it turned to.
        var back = points[0] - points[1];
        var across = back - (back.Dot(direction) * direction);
        return new Frame(points[2], direction, (1 / across.Norm) * across)
            .Rolled(Angle.FromRadians(rotation))
            .Bent(Length.Zero, Angle.FromRadians(turn))
            .Advanced(Length.FromMillimetres(leg))
            .Position;
    }

    /// <summary>+1 where the bend turns to the right of the bend before, −1 to the left, 0 where both lie in one plane.</summary>
    public static int SideOf(ReadOnlySpan<Vector3D> points, int bend)
    {
        var along = points[bend] - points[bend - 1];
        return Math.Sign((points[bend - 1] - points[bend - 2]).Dot(along.Cross(points[bend + 1] - points[bend])));
    }

    /// <summary>
    /// The rotation at one bend the other way, everything else kept: the rest of the line turns about the leg before the bend.
    /// </summary>
    public static void Flip(Span<Vector3D> points, int bend)
    {
        Mirror(points[(bend + 1)..], points.Slice(bend - 2, 3));
        Mirror(points[Math.Min(bend + 2, points.Length)..], points.Slice(bend - 1, 3));
    }

    private static void Mirror(Span<Vector3D> points, ReadOnlySpan<Vector3D> plane)
    {
        var on = plane[1];
        var normal = (on - plane[0]).Cross(plane[2] - on);
        var square = normal.Dot(normal);
        if (square == 0)
        {
            return;
        }

        foreach (ref var point in points)
        {
            point -= (2 * normal.Dot(point - on) / square) * normal;
        }
    }
}
