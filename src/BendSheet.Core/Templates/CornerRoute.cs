using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>A corner or an end that was measured as a point.</summary>
/// <param name="Position">In millimetres: forward, left, up.</param>
/// <param name="At">Where it was typed.</param>
public readonly record struct CornerPoint(Vector3D Position, SourcePosition At)
{
    /// <summary>What its forward, left and up follow from; null where it is not measured but known.</summary>
    public ImmutableArray<Term>? From { get; init; }

    /// <summary>The same point if the observations were these.</summary>
    public CornerPoint With(Func<Observation, double> values) => From is [var x, var y, var z]
        ? this with { Position = new(x.ValueWith(values), y.ValueWith(values), z.ValueWith(values)) }
        : this;

    /// <summary>The mirror image in the car's middle plane.</summary>
    public CornerPoint Mirrored() => this with
    {
        Position = Position with { Y = 0 - Position.Y },
        From = From is [var x, var y, var z] ? [x, Term.Negative(y), z] : null,
    };
}

/// <summary>A line that was measured by its corners.</summary>
/// <param name="Route">Legs and bends.</param>
/// <param name="Start">End A, with the direction of the first leg and the side of the first bend.</param>
/// <param name="Corners">End A, every corner with a bend, end B.</param>
public sealed record CornerLine(Route Route, Frame Start, ImmutableArray<CornerPoint> Corners);

/// <summary>
/// Reads a route from its corner points: a leg is the distance of two neighbours, a bend the angle between successive directions, a
/// rotation the angle between successive bending planes. Angles by atan2, never acos, which is blunt near 0° and 180°.
/// </summary>
public static class CornerRoute
{
    /// <summary>Two neighbouring corners are one point.</summary>
    public static Rule SamePoint { get; } = new("same-point", RuleSubject.File, "Two corners in one place give no direction between them.");

    /// <summary>The route turns straight back.</summary>
    public static Rule TurnsBack { get; } = new(
        "turns-back", RuleSubject.File, "A line cannot double straight back; a U-bend has a width.");

    /// <summary>The route of a list of points.</summary>
    /// <param name="points">At least two: end A, the corners, end B.</param>
    /// <param name="bender">The tool of every bend.</param>
    /// <returns>No line after findings. A corner where the straights are in line within <see cref="Tolerances.InLine"/> is no bend: its
    /// legs become one.</returns>
    public static (CornerLine? Line, ImmutableArray<Finding> Findings) Read(IReadOnlyList<CornerPoint> points, Bender bender)
    {
        var same = points.Skip(1)
            .Where((point, i) => point.Position.DistanceTo(points[i].Position) <= Tolerances.SamePoint.Millimetres).ToList();
        if (same.Count > 0)
        {
            return (null,
            [
                .. same.Select(point => SamePoint.Error(
                    point.At, "this corner lies where the one before it does: measure it again, or take one of the two out")),
            ]);
        }

        var corners = WithoutStraightOnes(points);
        var ways = Ways(corners);
        var back = ways.Skip(1).Select((way, i) => (Turn: Between(ways[i], way), corners[i + 1].At))
            .Where(corner => corner.Turn > Angle.FromDegrees(180 - Tolerances.InLine.Degrees))
            .Select(
                corner => TurnsBack.Error(
                    corner.At, "here the route goes straight back: a U-bend needs two corners, as far apart as its legs"))
            .ToImmutableArray();
        return back.IsEmpty ? (Of([.. corners], bender), []) : (null, back);
    }

    /// <summary>The route of corners that all turn, as they do after a small change.</summary>
    internal static CornerLine Of(ImmutableArray<CornerPoint> corners, Bender bender)
    {
        var ways = Ways(corners);
        return new(Route(corners, ways, bender), StartOf(corners, ways), corners);
    }

    private static List<Vector3D> Ways(IReadOnlyList<CornerPoint> corners) =>
        [.. corners.Skip(1).Select((point, i) => Direction(corners[i].Position, point.Position))];

    private static Route Route(ImmutableArray<CornerPoint> corners, List<Vector3D> ways, Bender bender)
    {
        var legs = ways.Select((_, i) => new Leg(
            Length.FromMillimetres(corners[i].Position.DistanceTo(corners[i + 1].Position)), corners[i + 1].At, MeasuredTo.Corner));
        var bends = ImmutableArray.CreateBuilder<Bend>();
        Vector3D? planeBefore = null;
        for (var i = 1; i < ways.Count; i++)
        {
            var plane = ways[i - 1].Cross(ways[i]);
            var rotation = planeBefore is { } before ? Rotation(ways[i - 1], before, plane) : Angle.Zero;
            bends.Add(new(Between(ways[i - 1], ways[i]), rotation, bender, null, corners[i].At));
            planeBefore = plane;
        }

        return Templates.Route.Of([.. legs], bends.ToImmutable());
    }

    private static Frame StartOf(ImmutableArray<CornerPoint> corners, List<Vector3D> ways)
    {
        var way = ways[0];
        var side = ways.Count > 1 ? ways[1] - (ways[1].Dot(way) * way) : AnySide(way);
        return new(corners[0].Position, way, 1 / side.Norm * side);
    }

    /// <summary>A straight tube turns to no side; some direction square to it still makes a frame.</summary>
    private static Vector3D AnySide(Vector3D way)
    {
        var up = Math.Abs(way.Z) < 0.9 ? new Vector3D(0, 0, 1) : new Vector3D(1, 0, 0);
        return up.Cross(way);
    }

    private static List<CornerPoint> WithoutStraightOnes(IReadOnlyList<CornerPoint> points)
    {
        var corners = new List<CornerPoint> { points[0] };
        for (var i = 1; i + 1 < points.Count; i++)
        {
            var before = Direction(corners[^1].Position, points[i].Position);
            var after = Direction(points[i].Position, points[i + 1].Position);
            if (Between(before, after) >= Tolerances.InLine)
            {
                corners.Add(points[i]);
            }
        }

        corners.Add(points[^1]);
        return corners;
    }

    private static Vector3D Direction(Vector3D from, Vector3D to) => 1 / from.DistanceTo(to) * (to - from);

    private static Angle Between(Vector3D a, Vector3D b) => Angle.FromRadians(Math.Atan2(a.Cross(b).Norm, a.Dot(b)));

    /// <summary>From one bending plane to the next about the leg between them, clockwise positive seen along it.</summary>
    private static Angle Rotation(Vector3D along, Vector3D before, Vector3D after) =>
        Angle.FromRadians(Math.Atan2(along.Dot(before.Cross(after)), before.Dot(after)));
}
