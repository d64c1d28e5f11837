using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A body without hollows, that nothing may come too near to. In millimetres, in the axes of the car.</summary>
public abstract record Solid
{
    /// <summary>More halvings of a straight than doubles can tell apart.</summary>
    private const int MostHalves = 100;

    /// <summary>The box that it just fits into.</summary>
    internal abstract Bounds Bounds { get; }

    /// <summary>Its point that is nearest to another one: that point itself where it lies inside.</summary>
    public abstract Vector3D NearestTo(Vector3D point);

    /// <summary>How far along a straight the place lies that is nearest to the body, in millimetres.</summary>
    /// <remarks>
    /// The squared distance to a convex body is a convex function of the point, with twice the vector from the nearest point as its
    /// gradient; along a straight its slope only grows, and the nearest place is where it goes through nought (S. Boyd and L.
    /// Vandenberghe, Convex Optimization, 2004, 8.1: from memory).
    /// </remarks>
    internal double NearestOn(Stretch straight)
    {
        var (low, high) = (0.0, straight.LengthMm);
        if (Slope(straight, low) >= 0)
        {
            return low;
        }

        if (Slope(straight, high) <= 0)
        {
            return high;
        }

        for (var i = 0; i < MostHalves; i++)
        {
            var middle = (low + high) / 2;
            if (middle <= low || middle >= high)
            {
                break;
            }

            (low, high) = Slope(straight, middle) < 0 ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private double Slope(Stretch straight, double along)
    {
        var point = straight.PointAt(along);
        return (point - NearestTo(point)).Dot(straight.Direction);
    }
}

/// <summary>A box along the axes of the car.</summary>
/// <param name="From">One corner.</param>
/// <param name="To">The opposite one.</param>
public sealed record SolidBox(Vector3D From, Vector3D To) : Solid
{
    internal override Bounds Bounds { get; } = Bounds.Around(From, To);

    /// <inheritdoc/>
    public override Vector3D NearestTo(Vector3D point) => new(
        Math.Clamp(point.X, Bounds.Low.X, Bounds.High.X),
        Math.Clamp(point.Y, Bounds.Low.Y, Bounds.High.Y),
        Math.Clamp(point.Z, Bounds.Low.Z, Bounds.High.Z));
}

/// <summary>A cylinder with flat ends.</summary>
/// <param name="From">Middle of one end.</param>
/// <param name="To">Middle of the other end, at another point.</param>
/// <param name="Radius">Above zero.</param>
public sealed record SolidCylinder(Vector3D From, Vector3D To, Length Radius) : Solid
{
    private readonly Vector3D _axis = 1 / From.DistanceTo(To) * (To - From);

    internal override Bounds Bounds
    {
        get
        {
            // A disc reaches along an axis of the car by its radius times the sine of the angle to its own axis.
            var r = Radius.Millimetres;
            var reach = new Vector3D(r * Sine(_axis.X), r * Sine(_axis.Y), r * Sine(_axis.Z));
            var axis = Bounds.Around(From, To);
            return new(axis.Low - reach, axis.High + reach);
        }
    }

    /// <inheritdoc/>
    public override Vector3D NearestTo(Vector3D point)
    {
        var along = (point - From).Dot(_axis);
        var off = point - From - (along * _axis);
        var within = Math.Clamp(along, 0, From.DistanceTo(To));
        return From + (within * _axis) + (Math.Min(1, Radius.Millimetres / Math.Max(off.Norm, double.Epsilon)) * off);
    }

    private static double Sine(double cosine) => Math.Sqrt(Math.Max(0, 1 - (cosine * cosine)));
}
