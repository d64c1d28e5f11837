using System.Collections.Immutable;

namespace BendSheet.Core.Sheet;

/// <summary>What of a bend stands in a column of its table.</summary>
public enum BendFigure
{
    /// <summary>Which bend it is.</summary>
    Number,

    /// <summary>Where the pen goes, from the datum.</summary>
    Mark,

    /// <summary>Where the pen line stands, seen from the held end.</summary>
    LineAt,

    /// <summary>What to pull the tool to.</summary>
    Pull,

    /// <summary>The end whose side is held, with the way one looks from it.</summary>
    Held,

    /// <summary>The finished angle.</summary>
    Bend,

    /// <summary>Straight tube towards B.</summary>
    StraightAfter,

    /// <summary>How far the swept side reaches.</summary>
    Swing,

    /// <summary>From the bend made before.</summary>
    Rotate,

    /// <summary>Rotations added up from A.</summary>
    Dial,

    /// <summary>How far end B moves for one degree.</summary>
    Lever,

    /// <summary>Tool and note, in words.</summary>
    Remark,
}

/// <summary>A column of the bend table, for the page and for the terminal.</summary>
/// <param name="Figure">What stands in it.</param>
/// <param name="OnPage">Its heading on the page; empty for what the page says elsewhere.</param>
/// <param name="AtTerminal">Its heading in the terminal.</param>
/// <param name="Text">Of a row; lengths without their unit, which stands in the heading.</param>
public sealed record BendColumn(BendFigure Figure, string OnPage, string AtTerminal, Func<BendRow, string> Text)
{
    /// <summary>Heading of the column to write in, which only paper has.</summary>
    public const string AsBent = "as bent";

    /// <summary>The columns of a sheet from left to right, without those that have nothing in any row.</summary>
    public static ImmutableArray<BendColumn> Of(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var unit = sheet.Notation.Symbol;
        BendColumn[] all =
        [
            new(BendFigure.Number, "bend", "bend", row => FormattableString.Invariant($"{row.Number}")),
            new(BendFigure.Mark, $"mark, {unit}", $"mark {unit}", row => row.Mark),
            new(BendFigure.LineAt, "line at", "line at", row => $"{row.LineClock} {row.LineFigure}"),
            new(BendFigure.Pull, "pull to", "pull to", row => row.Pull),
            new(BendFigure.Held, "held", "held", row => row.Held),
            new(BendFigure.Bend, "finished angle", "angle", row => row.Bend),
            new(BendFigure.StraightAfter, $"straight after, {unit}", "straight after", row => row.StraightAfter),
            new(BendFigure.Swing, "swing", "swing", row => row.Swing),
            new(BendFigure.Rotate, "rotate", "rotate", row => row.Rotate),
            new(BendFigure.Dial, "dial", "dial", row => row.Dial),
            new(BendFigure.Lever, string.Empty, "1° moves B", row => row.Lever),
            new(BendFigure.Remark, "note", "note", row => row.Remark),
        ];
        return [.. all.Where(column => sheet.Rows.Any(row => column.Text(row).Length > 0))];
    }
}
