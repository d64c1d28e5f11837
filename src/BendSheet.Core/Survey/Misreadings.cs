using System.Globalization;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>What a figure may have been meant to be, by every mistake that a tired person makes.</summary>
internal static class Misreadings
{
    /// <summary>A centimetre, an inch and a foot, in millimetres.</summary>
    private static readonly double[] Steps = [10, 25.4, 304.8];

    /// <summary>Of a figure of the route: millimetres or radians.</summary>
    /// <param name="kind">What the figure is of.</param>
    /// <param name="value">As it was typed.</param>
    public static IEnumerable<(SlipKind Kind, double Instead)> Of(ObservationKind kind, double value) => kind switch
    {
        ObservationKind.Rotation => OfRotation(value),
        ObservationKind.Bend => OfBend(value),
        _ => OfLength(value),
    };

    /// <summary>Of a length in millimetres.</summary>
    public static IEnumerable<(SlipKind Kind, double Instead)> OfLength(double value)
    {
        foreach (var step in Steps)
        {
            yield return (SlipKind.Misread, value + step);
            if (value > step)
            {
                yield return (SlipKind.Misread, value - step);
            }
        }

        foreach (var exchanged in Exchanged(value))
        {
            yield return (SlipKind.Digits, exchanged);
        }

        foreach (var exchanged in Exchanged(value / 25.4))
        {
            yield return (SlipKind.Digits, 25.4 * exchanged);
        }
    }

    private static IEnumerable<(SlipKind Kind, double Instead)> OfRotation(double value)
    {
        yield return (SlipKind.Sense, -value);

        // Nobody reads more than a whole turn off a wire.
        foreach (var exchanged in Exchanged(Degrees(value)).Where(degrees => Math.Abs(degrees) < 360))
        {
            yield return (SlipKind.Digits, Radians(exchanged));
        }
    }

    private static IEnumerable<(SlipKind Kind, double Instead)> OfBend(double value)
    {
        if (value < Math.PI)
        {
            yield return (SlipKind.Included, Math.PI - value);
        }

        foreach (var exchanged in Exchanged(Degrees(value)).Where(degrees => degrees < 180))
        {
            yield return (SlipKind.Digits, Radians(exchanged));
        }
    }

    /// <summary>The figure with two neighbouring digits exchanged, where it was typed with two decimals or fewer.</summary>
    private static IEnumerable<double> Exchanged(double figure)
    {
        var digits = figure.ToString("0.##", CultureInfo.InvariantCulture);
        if (Math.Abs(double.Parse(digits, CultureInfo.InvariantCulture) - figure) > 1e-6)
        {
            yield break;
        }

        for (var i = 0; i + 1 < digits.Length; i++)
        {
            if (char.IsAsciiDigit(digits[i]) && char.IsAsciiDigit(digits[i + 1]) && digits[i] != digits[i + 1])
            {
                var exchanged = double.Parse(
                    $"{digits[..i]}{digits[i + 1]}{digits[i]}{digits[(i + 2)..]}", CultureInfo.InvariantCulture);
                if (exchanged != 0)
                {
                    yield return exchanged;
                }
            }
        }
    }

    private static double Degrees(double radians) => radians * 180 / Math.PI;

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
