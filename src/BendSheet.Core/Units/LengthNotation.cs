using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>
/// How lengths are shown to people: millimetres to a half, or inches as fractions. A length is rounded here, once, from the exact
/// figure.
/// </summary>
/// <param name="Imperial">Inches as fractions; otherwise millimetres.</param>
/// <param name="FractionsOf">The finest fraction of an inch shown: a power of two from 2 to 128.</param>
public sealed record LengthNotation(bool Imperial, int FractionsOf)
{
    /// <summary>The step of the millimetre notation: as fine as a pen line on tube can be placed with a ruler.</summary>
    public const double MillimetreStep = 0.5;

    private const int TenthsOfStep = 5;

    /// <summary>Two figures nearer than this are one figure, so that a half-way case does not fall by the last bit.</summary>
    private const double Noise = 1e-6;

    /// <summary>The other unit, with the same fractions.</summary>
    public LengthNotation Other => this with { Imperial = !Imperial };

    /// <summary>The unit's symbol, <c>mm</c> or <c>in</c>.</summary>
    public string Symbol => Imperial ? "in" : "mm";

    /// <summary>The unit in a sentence, <c>millimetres</c> or <c>inches</c>.</summary>
    public string UnitName => Imperial ? "inches" : "millimetres";

    /// <summary>The figure without its unit: <c>114.5</c>, or <c>4 1/2</c> with a <c>+</c> or <c>−</c> after it where the exact value
    /// lies more than a quarter step above or below the fraction.</summary>
    public string Figure(Length length) => Imperial ? InchFigure(length) : MillimetreFigure(length);

    /// <summary>The figure with its unit.</summary>
    public string WithUnit(Length length) => Figure(length) + " " + Symbol;

    /// <summary>The figure in this unit and, in brackets, in the other one.</summary>
    public string InBoth(Length length) => $"{WithUnit(length)} ({Other.WithUnit(length)})";

    /// <summary>
    /// A length that is a given size rather than a measured place, as exactly as it was given and in the unit it is round in:
    /// <c>3/16 in</c>, <c>0.028 in</c>, <c>4.75 mm</c>. Used for tube diameters, walls and radii, where rounding would name another size.
    /// </summary>
    /// <remarks>
    /// A quarter of an inch is 6.35 mm to the last digit, and nobody sells it by that name: a fraction of an inch goes before decimals.
    /// </remarks>
    public string Size(Length length)
    {
        var (whole, decimals) = (Decimals(length.Millimetres, 0), Decimals(length.Millimetres, 2));
        var (fraction, thousandths) = (ExactFraction(length.Inches), Decimals(length.Inches, 3));
        (string? Figure, string Unit)[] sizes = Imperial
            ? [(fraction, "in"), (thousandths, "in"), (decimals, "mm")]
            : [(whole, "mm"), (fraction, "in"), (decimals, "mm"), (thousandths, "in")];
        return Array.Find(sizes, size => size.Figure is not null) is { Figure: { } figure } known
            ? $"{figure} {known.Unit}"
            : (Imperial ? length.Inches : length.Millimetres).ToString("0.####", CultureInfo.InvariantCulture) + " " + Symbol;
    }

    /// <summary>
    /// A size in inches without its unit, as threads are named by: <c>3/8</c>; null where it is no round figure of inches.
    /// </summary>
    public static string? InchSize(Length length) => ExactFraction(length.Inches) ?? Decimals(length.Inches, 3);

    /// <summary>
    /// A small length that was reckoned, not to be measured off: millimetres to a tenth, or inches to a thousandth. Used where a half
    /// millimetre would hide the difference that is spoken of.
    /// </summary>
    public string Fine(Length length) => Finely(length, "0.000;-0.000;0.000", "0.0;-0.0;0.0");

    /// <summary>
    /// How much more one length is than another, as fine as <see cref="Fine"/>: <c>+0.5 mm</c>, <c>-0.110 in</c>, <c>0.0 mm</c>.
    /// </summary>
    public string Difference(Length difference) => Finely(difference, "+0.000;-0.000;0.000", "+0.0;-0.0;0.0");

    /// <summary>By a format with three parts: above zero, below zero, and zero, which has no sign.</summary>
    private string Finely(Length length, string inches, string millimetres) => (Imperial
        ? length.Inches.ToString(inches, CultureInfo.InvariantCulture)
        : length.Millimetres.ToString(millimetres, CultureInfo.InvariantCulture)) + " " + Symbol;

    private static string MillimetreFigure(Length length) =>
        Tenths.WithDecimal((long)RoundToWhole(length.Millimetres / MillimetreStep) * TenthsOfStep);

    private string InchFigure(Length length)
    {
        var exactSteps = length.Inches * FractionsOf;
        var steps = RoundToWhole(exactSteps);
        var rest = exactSteps - steps;
        var sign = steps < 0 ? "-" : string.Empty;
        var nearly = rest > 0.25 + Noise ? "+" : rest < -0.25 - Noise ? "−" : string.Empty;
        return sign + Fraction((long)Math.Abs(steps), FractionsOf) + nearly;
    }

    private static double RoundToWhole(double steps) =>
        Math.Round(Math.Round(steps, 6, MidpointRounding.AwayFromZero), MidpointRounding.AwayFromZero);

    /// <summary>In sixty-fourths or coarser; null where the size is not such a fraction.</summary>
    private static string? ExactFraction(double inches)
    {
        const int Finest = 64;
        var steps = Math.Round(inches * Finest);
        return steps > 0 && Math.Abs((inches * Finest) - steps) < Noise ? Fraction((long)steps, Finest) : null;
    }

    /// <summary>Null where the figure has more decimals than may be shown.</summary>
    private static string? Decimals(double figure, int most) => Math.Abs(Math.Round(figure, most) - figure) < Noise
        ? figure.ToString("0." + new string('#', most), CultureInfo.InvariantCulture)
        : null;

    private static string Fraction(long steps, int denominator)
    {
        var whole = steps / denominator;
        var numerator = steps % denominator;
        if (numerator == 0)
        {
            return whole.ToString(CultureInfo.InvariantCulture);
        }

        while (numerator % 2 == 0)
        {
            numerator /= 2;
            denominator /= 2;
        }

        return whole == 0
            ? FormattableString.Invariant($"{numerator}/{denominator}")
            : FormattableString.Invariant($"{whole} {numerator}/{denominator}");
    }
}
