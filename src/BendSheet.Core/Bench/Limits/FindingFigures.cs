using System.Globalization;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Limits;

/// <summary>
/// Figures in findings: millimetres to a tenth, and the inch to a thousandth beside it. A shortfall is rounded up and a largest radius
/// down, so that doing what the finding says is always enough.
/// </summary>
public static class FindingFigures
{
    private const double Noise = 1e-7;

    /// <summary>To the nearest.</summary>
    public static string Mm(Length length) => Figure(Math.Round(length.Millimetres * 10, MidpointRounding.AwayFromZero) / 10);

    /// <summary>Rounded up.</summary>
    public static string UpMm(Length length) => Figure(Math.Ceiling((length.Millimetres * 10) - Noise) / 10);

    /// <summary>Rounded down.</summary>
    public static string DownMm(Length length) => Figure(Math.Floor((length.Millimetres * 10) + Noise) / 10);

    private static string Figure(double millimetres) => string.Create(
        CultureInfo.InvariantCulture, $"{millimetres:0.0} mm ({millimetres / Length.MillimetresPerInch:0.000} in)");
}
