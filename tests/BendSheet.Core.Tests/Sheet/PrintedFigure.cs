using System.Globalization;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

/// <summary>A figure read back from the sheet as a person would read it, in millimetres.</summary>
internal static class PrintedFigure
{
    /// <summary>The printed figure is the step nearest to the exact one, and its + or − says on which side the exact one lies.</summary>
    public static void Is(Length exact, string text, LengthNotation notation)
    {
        var step = notation.Imperial ? Length.MillimetresPerInch / notation.FractionsOf : 0.5;
        var off = exact.Millimetres - Millimetres(text, notation);
        AssertGeometry.AtMost(AssertGeometry.HalfOf(step), Math.Abs(off), $"{text} for {exact}");
        if (notation.Imperial)
        {
            var side = text.EndsWith('+') ? 1 : text.EndsWith('−') ? -1 : 0;
            Assert.True(side == 0 ? Math.Abs(off) <= (0.25 + 2e-6) * step : side * off > 0.25 * step, $"{text} for {exact}");
        }
    }

    /// <summary>The same for a figure that carries its unit.</summary>
    public static void IsWithUnit(Length exact, string text, LengthNotation notation)
    {
        Assert.EndsWith(notation.Imperial ? " in" : " mm", text, StringComparison.Ordinal);
        Is(exact, text[..^3], notation);
    }

    private static double Millimetres(string text, LengthNotation notation)
    {
        if (!notation.Imperial)
        {
            return double.Parse(text, CultureInfo.InvariantCulture);
        }

        var inches = text.TrimEnd('+', '−').Split(' ').Sum(part =>
        {
            var fraction = part.Split('/');
            var numerator = double.Parse(fraction[0], CultureInfo.InvariantCulture);
            return fraction.Length == 1 ? numerator : numerator / double.Parse(fraction[1], CultureInfo.InvariantCulture);
        });
        return inches * Length.MillimetresPerInch;
    }
}
