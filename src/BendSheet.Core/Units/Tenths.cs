using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>Figures that are counted in tenths, which takes a fraction of the time that writing a floating-point number does.</summary>
internal static class Tenths
{
    /// <summary>With one decimal: <c>114.5</c>, <c>-0.5</c>, <c>90.0</c>.</summary>
    public static string WithDecimal(long tenths) =>
        (tenths < 0 ? "-" : string.Empty) + Text(Math.Abs(tenths) / 10) + "." + Text(Math.Abs(tenths) % 10);

    /// <summary>With a decimal only where there is one: <c>22.5</c>, <c>90</c>.</summary>
    public static string Shortest(long tenths) => tenths % 10 == 0 ? Text(tenths / 10) : WithDecimal(tenths);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
