using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A straight or an arc of the centreline, walked by its length.</summary>
public sealed class Stretch
{
    /// <summary>
    /// Below this the directions of two straights differ only by what doubles lose: along 100 m that is 1e-9 mm.
    /// </summary>
    private const double SquaredSineOfParallel = 1e-28;

    private readonly Vector3D _origin;
    private readonly Vector3D _direction;
    private readonly Vector3D _out;

    /// <param name="origin">A straight's first point; an arc's centre.</param>
    /// <param name="direction">The way it starts.</param>
    /// <param name="outward">From an arc's centre to its first point, length 1.</param>
    /// <param name="radius">Of an arc, in millimetres; zero for a straight.</param>
    /// <param name="length">In millimetres.</param>
    private Stretch(Vector3D origin, Vector3D direction, Vector3D outward, double radius, double length)
    {
        _origin = origin;
        _direction = direction;
        _out = outward;
        RadiusMm = radius;
        LengthMm = length;
        Middle = PointAt(length / 2);
    }

    /// <summary>Along the centreline.</summary>
    public Length Length => Length.FromMillimetres(LengthMm);

    internal double LengthMm { get; }

    internal bool IsStraight => RadiusMm == 0;

    internal double RadiusMm { get; }

    /// <summary>How far it turns, in radians.</summary>
    internal double Turn => IsStraight ? 0 : LengthMm / RadiusMm;

    /// <summary>The point halfway along: no point of the stretch is further from it than half its length.</summary>
    internal Vector3D Middle { get; }

    /// <summary>A box that it lies in.</summary>
    internal Bounds Bounds => IsStraight
        ? Bounds.Around(PointAt(0.0), PointAt(LengthMm))
        : Bounds.Around(Middle, Middle).Grown(Math.Min(LengthMm / 2, 2 * RadiusMm));

    /// <summary>A straight.</summary>
    public static Stretch Of(Straight straight) =>
        new(straight.Start.Position, straight.Start.Direction, default, 0, straight.Length.Millimetres);

    /// <summary>An arc.</summary>
    public static Stretch Of(Arc arc) =>
        new(arc.Centre, arc.Start.Direction, -1 * arc.Start.Side, arc.Radius.Millimetres, arc.Length.Millimetres);

    /// <summary>The point that lies so far along.</summary>
    /// <param name="along">From zero to <see cref="Length"/>.</param>
    public Vector3D PointAt(Length along) => PointAt(along.Millimetres);

    internal Vector3D PointAt(double along)
    {
        if (IsStraight)
        {
            return _origin + (along * _direction);
        }

        var (sin, cos) = Math.SinCos(along / RadiusMm);
        return _origin + (RadiusMm * cos * _out) + (RadiusMm * sin * _direction);
    }

    /// <summary>The way a straight goes, or an arc at its start; length 1.</summary>
    internal Vector3D Direction => _direction;

    /// <summary>How far along its nearest point to another one lies, in millimetres.</summary>
    internal double NearestTo(Vector3D point)
    {
        var away = point - _origin;
        if (IsStraight)
        {
            return Math.Clamp(away.Dot(_direction), 0, LengthMm);
        }

        // On the whole circle the nearest point lies in the direction of the point; off the arc it is the end fewer degrees away.
        var turned = Math.Atan2(away.Dot(_direction), away.Dot(_out));
        if (turned < 0)
        {
            turned += 2 * Math.PI;
        }

        return turned <= Turn ? turned * RadiusMm : turned - Turn < (2 * Math.PI) - turned ? LengthMm : 0;
    }

    /// <summary>
    /// Where the lines through two straights come nearest, kept between their ends: millimetres along each; null where they are parallel.
    /// </summary>
    internal static (double First, double Second)? BetweenLines(Stretch first, Stretch second)
    {
        var normal = first._direction.Cross(second._direction);
        var squared = normal.Dot(normal);
        if (squared < SquaredSineOfParallel)
        {
            return null;
        }

        var between = second._origin - first._origin;
        return (
            Math.Clamp(between.Cross(second._direction).Dot(normal) / squared, 0, first.LengthMm),
            Math.Clamp(between.Cross(first._direction).Dot(normal) / squared, 0, second.LengthMm));
    }

    /// <summary>A part of it, in millimetres along it.</summary>
    internal Stretch Part(double from, double to)
    {
        if (IsStraight)
        {
            return new(PointAt(from), _direction, default, 0, to - from);
        }

        var (sin, cos) = Math.SinCos(from / RadiusMm);
        return new(_origin, (cos * _direction) - (sin * _out), (cos * _out) + (sin * _direction), RadiusMm, to - from);
    }
}
