using System.Globalization;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>
/// How an end is flared, in the order of work: how far the tube stands out of the bar, how wide the flare comes out, and what it uses up.
/// The tool's own stop sets how far it stands out, because its bar is countersunk (FAA-H-8083-30, p. 7-5), unless the file says how
/// deep. Double and bubble flares fold the tube, which no simple geometry gives: the tool's gauge sets them.
/// </summary>
public static class FlareStep
{
    /// <summary>The step without its full stop, at most two sentences.</summary>
    /// <param name="fitting">With a flare.</param>
    /// <param name="tube">That is flared.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="alikeAt">The end that has the same fitting and was flared before, where one was: the figures stand there.</param>
    public static string Of(Fitting fitting, Tube tube, LengthNotation notation, string? alikeAt)
    {
        if (alikeAt is not null)
        {
            return $"make the {fitting.Flare.InWords()} as at {alikeAt}";
        }

        var takes = fitting.FlareAllowance > Length.Zero ? $" (uses up {notation.Size(fitting.FlareAllowance)})" : string.Empty;
        var step = $"make the {fitting.Flare.InWords()}{takes}";
        var size = FlareSize.For(fitting.Flare, tube);
        var across = size is null
            ? string.Empty
            : $"{Range(size, notation)} across ({size.Source.InWords}: check your fitting's standard)";
        if (fitting.Flare is Flare.Double45 or Flare.Bubble)
        {
            return $"{step} by the tool's gauge, on a practice piece first{(size is null ? string.Empty : ": " + across)}"
                + (fitting.FlareAllowance > Length.Zero
                ? string.Empty
                : ". Measure on it how much tube the flare uses up, and put that in the file");
        }

        var cone = size is null ? null : SingleFlare.Of(fitting.Flare, tube.OutsideDiameter, size.Largest);
        var standsOut = StandsOut(fitting, tube) is { } length
            ? $", {StandOut(length, notation)} of tube standing out of the bar"
            : " by the tool's own stop";
        return $"{step}{standsOut}{(size is null ? ", on a practice piece first" : $"; practise until it is {across}")}"
            + (fitting.FlareAllowance > Length.Zero || cone is null
            ? string.Empty
            : $". By geometry it uses up {StandOut(cone.FlareAllowance, notation)}: measure yours, and put that in the file");
    }

    /// <summary>
    /// What stands out of the bar, where the file says how deep that is countersunk and a publication how wide the flare is.
    /// </summary>
    internal static Length? StandsOut(Fitting fitting, Tube tube) =>
        fitting.Countersink is { } countersink && FlareSize.For(fitting.Flare, tube) is { } size
        && SingleFlare.Of(fitting.Flare, tube.OutsideDiameter, size.Largest) is { } cone
            ? cone.StandOut(countersink)
            : null;

    /// <summary>Beside the picture of the end in the bar: how far it stands out, or what sets that.</summary>
    internal static string StandsOutInWords(Fitting fitting, Tube tube, LengthNotation notation) => fitting.Flare switch
    {
        Flare.None => string.Empty,
        Flare.Double45 or Flare.Bubble => "stands out by the tool's gauge",
        _ => StandsOut(fitting, tube) is { } length ? $"stands out {StandOut(length, notation)}" : "stands out by the tool's own stop",
    };

    /// <summary>As calipers show it, rounded inwards so that what fits the figures fits the limits.</summary>
    private static string Range(FlareSize size, LengthNotation notation)
    {
        var (smallest, largest, places) = notation.Imperial
            ? (size.Smallest.Inches, size.Largest.Inches, 1000)
            : (size.Smallest.Millimetres, size.Largest.Millimetres, 100);
        var from = Math.Ceiling(Math.Round(smallest * places, 6)) / places;
        var to = Math.Floor(Math.Round(largest * places, 6)) / places;
        return string.Create(CultureInfo.InvariantCulture, $"{from:0.0##} to {to:0.0##} {notation.Symbol}");
    }

    /// <summary>Too short for the notation's steps: a tenth of a millimetre, or thousandths of an inch.</summary>
    private static string StandOut(Length length, LengthNotation notation) => notation.Imperial
        ? string.Create(CultureInfo.InvariantCulture, $"{length.Inches:0.000} in")
        : string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.0} mm");
}
