using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>
/// An angle, kept in degrees as it was typed; never NaN or infinite. A bend counts what the tube turns (0 = still straight); a rotation
/// is positive clockwise, seen looking along the tube from end A.
/// </summary>
public readonly record struct Angle : IComparable<Angle>
{
    private Angle(double degrees)
    {
        if (!double.IsFinite(degrees))
        {
            throw new ArgumentOutOfRangeException(nameof(degrees), degrees, "An angle is a finite number.");
        }

        Degrees = degrees;
    }

    /// <summary>No turn at all.</summary>
    public static Angle Zero => default;

    /// <summary>The angle in degrees, unrounded and not brought into any range.</summary>
    public double Degrees { get; }

    /// <summary>The angle in radians.</summary>
    public double Radians => Degrees * (Math.PI / 180);

    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Angle FromDegrees(double degrees) => new(degrees);

    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Angle FromRadians(double radians) => new(radians * (180 / Math.PI));

    /// <summary>The same direction as a reading on a dial: at least 0 and below 360 degrees.</summary>
    public Angle OnDial()
    {
        var degrees = Degrees % 360;
        if (degrees < 0)
        {
            degrees += 360;
        }

        // A tiny negative remainder added to 360 gives 360 itself.
        return new(degrees >= 360 ? 0 : degrees);
    }

    /// <summary>The same direction the shorter way round: above -180 and at most 180 degrees.</summary>
    public Angle NearestTurn()
    {
        var degrees = OnDial().Degrees;
        return new(degrees > 180 ? degrees - 360 : degrees);
    }

    /// <summary>Sum of two angles.</summary>
    public static Angle operator +(Angle left, Angle right) => new(left.Degrees + right.Degrees);

    /// <summary>The same turn the other way.</summary>
    public static Angle operator -(Angle angle) => new(0 - angle.Degrees);

    /// <summary>Smaller than.</summary>
    public static bool operator <(Angle left, Angle right) => left.Degrees < right.Degrees;

    /// <summary>Larger than.</summary>
    public static bool operator >(Angle left, Angle right) => left.Degrees > right.Degrees;

    /// <summary>Not larger than.</summary>
    public static bool operator <=(Angle left, Angle right) => left.Degrees <= right.Degrees;

    /// <summary>Not smaller than.</summary>
    public static bool operator >=(Angle left, Angle right) => left.Degrees >= right.Degrees;

    /// <inheritdoc/>
    public int CompareTo(Angle other) => Degrees.CompareTo(other.Degrees);

    /// <summary>For the debugger; people see angles through <see cref="AngleNotation"/>.</summary>
    public override string ToString() => Degrees.ToString("R", CultureInfo.InvariantCulture) + "°";
}
