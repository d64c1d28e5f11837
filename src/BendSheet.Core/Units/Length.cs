using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>A length, kept in millimetres; never NaN or infinite. May be negative where a difference is meant.</summary>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>Exact by definition of the inch (international yard and pound agreement, 1959).</summary>
    public const double MillimetresPerInch = 25.4;

    private Length(double millimetres)
    {
        if (!double.IsFinite(millimetres))
        {
            throw new ArgumentOutOfRangeException(nameof(millimetres), millimetres, "A length is a finite number.");
        }

        Millimetres = millimetres;
    }

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The length in millimetres, unrounded.</summary>
    public double Millimetres { get; }

    /// <summary>The length in inches, unrounded.</summary>
    public double Inches => Millimetres / MillimetresPerInch;

    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Length FromMillimetres(double millimetres) => new(millimetres);

    /// <exception cref="ArgumentOutOfRangeException">NaN or infinite.</exception>
    public static Length FromInches(double inches) => new(inches * MillimetresPerInch);

    /// <summary>Sum of two lengths.</summary>
    public static Length operator +(Length left, Length right) => new(left.Millimetres + right.Millimetres);

    /// <summary>Difference; negative where the right one is longer.</summary>
    public static Length operator -(Length left, Length right) => new(left.Millimetres - right.Millimetres);

    /// <summary>So many times as long.</summary>
    public static Length operator *(double factor, Length length) => new(factor * length.Millimetres);

    /// <summary>Ratio of two lengths.</summary>
    public static double operator /(Length left, Length right) => left.Millimetres / right.Millimetres;

    /// <summary>Shorter than.</summary>
    public static bool operator <(Length left, Length right) => left.Millimetres < right.Millimetres;

    /// <summary>Longer than.</summary>
    public static bool operator >(Length left, Length right) => left.Millimetres > right.Millimetres;

    /// <summary>Not longer than.</summary>
    public static bool operator <=(Length left, Length right) => left.Millimetres <= right.Millimetres;

    /// <summary>Not shorter than.</summary>
    public static bool operator >=(Length left, Length right) => left.Millimetres >= right.Millimetres;

    /// <summary>Shorter by more than what counts as the same length: a piece that just fits, fits.</summary>
    public bool FallsShortOf(Length need) => need - this > Tolerances.SamePoint;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Millimetres.CompareTo(other.Millimetres);

    /// <summary>For the debugger; people see lengths through <see cref="LengthNotation"/>.</summary>
    public override string ToString() => Millimetres.ToString("R", CultureInfo.InvariantCulture) + " mm";
}
