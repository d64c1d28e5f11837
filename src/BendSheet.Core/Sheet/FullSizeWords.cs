using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What all pages at full size have: the names of their parts, and the bar that proves the print.</summary>
public static class FullSizeWords
{
    /// <summary>The straight tube in tiles.</summary>
    public const string Strip = "Full-size strip";

    /// <summary>Curves and wedges.</summary>
    public const string Gauges = "Full-size angle gauges";

    /// <summary>Dial and pointer.</summary>
    public const string Dial = "Full-size rotation dial";

    /// <summary>Where to drill for clips.</summary>
    public const string Clips = "Full-size clip holes";

    /// <summary>Head of each page, because they are taken apart.</summary>
    /// <param name="part">Which.</param>
    /// <param name="sheet">Of the line.</param>
    public static string Head(string part, SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"{part} – {sheet.Line}";
    }

    /// <summary>Beside a bar of known length. Viewers like to fit a page to the paper.</summary>
    /// <param name="bar">Whole millimetres.</param>
    /// <param name="notation">Of the sheet.</param>
    public static string ProvingBar(Length bar, LengthNotation notation)
    {
        ArgumentNullException.ThrowIfNull(notation);
        var metric = FormattableString.Invariant($"{bar.Millimetres:0} mm");
        var size = notation.Imperial ? $"{metric} ({notation.WithUnit(bar)})" : metric;
        return $"Check the print: this bar must measure {size} on a steel rule. If not, print again at 100 %, not fitted to the page.";
    }
}
