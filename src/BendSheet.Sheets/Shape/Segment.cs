using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A straight piece of a drawing.</summary>
internal readonly record struct Segment(PagePoint From, PagePoint To)
{
    /// <summary>Between their nearest points; nothing where they cross or touch.</summary>
    public double DistanceTo(Segment other)
    {
        if (Crosses(other))
        {
            return 0;
        }

        return Math.Min(
            Math.Min(DistanceTo(other.From), DistanceTo(other.To)),
            Math.Min(other.DistanceTo(From), other.DistanceTo(To)));
    }

    /// <summary>To its nearest point.</summary>
    public double DistanceTo(PagePoint point)
    {
        var along = To - From;
        var arm = point - From;
        var squared = (along.X * along.X) + (along.Y * along.Y);
        var part = squared == 0 ? 0 : Math.Clamp(((arm.X * along.X) + (arm.Y * along.Y)) / squared, 0, 1);
        return (arm - (part * along)).Norm;
    }

    /// <summary>Whether one passes through the other, not only along it or up to it.</summary>
    public bool Crosses(Segment other) =>
        SideOf(other.From) * SideOf(other.To) < 0 && other.SideOf(From) * other.SideOf(To) < 0;

    /// <summary>Whether another piece is nearer than a distance.</summary>
    public bool IsNear(Segment other, double distance) => !IsClearOf(other, distance) && DistanceTo(other) < distance;

    /// <summary>Whether any of other pieces is nearer than a distance.</summary>
    public bool IsNearAny(IReadOnlyList<Segment> others, double distance)
    {
        for (var i = 0; i < others.Count; i++)
        {
            if (IsNear(others[i], distance))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Whether all of the other piece is further away than a distance, at a glance: a false answer does not say that it is near.
    /// </summary>
    private bool IsClearOf(Segment other, double distance) =>
        Math.Min(From.X, To.X) - distance > Math.Max(other.From.X, other.To.X)
            || Math.Max(From.X, To.X) + distance < Math.Min(other.From.X, other.To.X)
        || Math.Min(From.Y, To.Y) - distance > Math.Max(other.From.Y, other.To.Y)
        || Math.Max(From.Y, To.Y) + distance < Math.Min(other.From.Y, other.To.Y);

    private double SideOf(PagePoint point) => ((To.X - From.X) * (point.Y - From.Y)) - ((To.Y - From.Y) * (point.X - From.X));
}
