using System.Globalization;
using BendSheet.Core.Units;

namespace BendSheet.Core.Findings;

/// <summary>
/// Figures in findings: millimetres to a tenth, and the inch to a thousandth beside it. A shortfall is rounded up and a largest radius
/// down, so that doing what the finding says is always enough.
/// </summary>
public static class FindingFigures
{
    private const double Noise = 1e-7;

    /// <summary>To the nearest.</summary>
    public static string Mm(Length length) => Figure(length, steps => Math.Round(Math.Round(steps, 6), MidpointRounding.AwayFromZero));

    /// <summary>Rounded up.</summary>
    public static string UpMm(Length length) => Figure(length, steps => Math.Ceiling(steps - Noise));

    /// <summary>Rounded down.</summary>
    public static string DownMm(Length length) => Figure(length, steps => Math.Floor(steps + Noise));

    /// <summary>A wall, in which a tenth of a millimetre is another tube: to the nearest hundredth.</summary>
    public static string Wall(Length wall) =>
        string.Create(CultureInfo.InvariantCulture, $"{wall.Millimetres:0.00} mm ({wall.Inches:0.000} in)");

    /// <summary>Zero rounded from below is negative zero, which prints a minus sign; adding zero takes it away.</summary>
    private static string Figure(Length length, Func<double, double> round) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(round(length.Millimetres * 10) + 0) / 10:0.0} mm ({(round(length.Inches * 1000) + 0) / 1000:0.000} in)");
}
