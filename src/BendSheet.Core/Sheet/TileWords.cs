using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What stands on the straight tube at full size, which is glued together of tiles.</summary>
public static class TileWords
{
    /// <summary>At the line that a tile is cut off along.</summary>
    public const string Cut = "cut";

    /// <summary>Where the tube begins and marks count from its cut end.</summary>
    public const string CutEndA = "lay the cut end of A here";

    /// <summary>What the marks count from, where that is not the cut end.</summary>
    public const string FaceA = "lay the finished flare face of A here";

    /// <summary>Where the tube ends.</summary>
    public const string CutEndB = "cut end of B";

    /// <summary>Where end B is cut off later.</summary>
    public const string Trim = "trim here on the car";

    /// <summary>At the middle of a clip.</summary>
    public const string Clip = "clip";

    /// <summary>In the place of a strip that has no room.</summary>
    public const string DoesNotFit =
        "The straight tube does not fit on this paper at full size: the tube is too thick, or its marks are too many. Work from "
        + "the table.";

    /// <summary>In the place of a strip that nobody would glue.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="most">Tiles.</param>
    public static string TooLong(SheetContent sheet, int most)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return FormattableString.Invariant(
            $"The tube is too long to be drawn at full size: {sheet.CutLength.Main} would take more than {most} tiles.");
    }

    /// <summary>How the tiles are used, a step each.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="tiles">How many.</param>
    public static IEnumerable<string> HowTo(SheetContent sheet, int tiles)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (tiles > 1)
        {
            yield return Gluing("the tube's sides");
        }

        yield return $"Lay the straight tube on its picture, {sheet.DatumName} on its line, and draw every mark right across the tube. "
            + $"Figures in {sheet.Notation.UnitName} from {sheet.DatumName}; hatched: what becomes the bend. "
            + "The figures of the table hold: check the last mark with a rule.";
    }

    /// <summary>A tile for somebody who does not see it: the first one tells the whole strip.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="number">Of the tile, from 1.</param>
    /// <param name="count">How many there are.</param>
    public static string Alternative(SheetContent sheet, int number, int count)
    {
        var told = number == 1 ? DrawingWords.OfStrip(sheet) : "The straight tube goes on.";
        return FormattableString.Invariant($"Tile {number} of {count} at full size. {told}");
    }

    /// <summary>Above a tile.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="number">Of the tile, from 1.</param>
    /// <param name="count">How many there are.</param>
    public static string Title(SheetContent sheet, int number, int count)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"{Tile(number, count)} – {SheetWords.Fingerprint(sheet)} – {sheet.Line}";
    }

    /// <summary>How tiles are put together.</summary>
    /// <param name="inLine">What runs on from one to the next.</param>
    internal static string Gluing(string inLine) =>
        "Measure the bar of each tile. Cut the tiles apart at the dashed lines and at the line marked “cut”; lay that "
        + $"edge on the line of the same joint of the tile before, {inLine} in line, and glue. Then hold a tape along the "
        + "strip: every joint must lie at its figure, or the figures of all after it are wrong.";

    /// <summary>A tile, and what it is glued on to.</summary>
    /// <param name="number">From 1.</param>
    /// <param name="count">How many there are.</param>
    internal static string Tile(int number, int count) => FormattableString.Invariant($"tile {number} of {count}")
        + (number == 1 ? string.Empty : $" – glue on to {Joint(number - 1)}");

    /// <summary>A joint and where it must lie.</summary>
    /// <param name="before">Number of the tile before it.</param>
    /// <param name="place">From the cut end of A.</param>
    /// <param name="sheet">Of the line; all figures count from its datum.</param>
    public static string JointAt(int before, Length place, SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"{Joint(before)}: {sheet.Notation.WithUnit(place - sheet.Strip.Datum)} from {sheet.DatumName}";
    }

    /// <summary>On the flap that the next tile covers, one below the other.</summary>
    /// <param name="next">Its number.</param>
    public static IReadOnlyList<string> OnFlap(int next) => ["glue", "tile", FormattableString.Invariant($"{next}"), "here"];

    /// <summary>Below the figure of a mark, one below the other.</summary>
    public static IReadOnlyList<string> AtMark(StripBend bend)
    {
        ArgumentNullException.ThrowIfNull(bend);
        return [$"line at {bend.LineClock}", $"{bend.LineFigure}, held {bend.Held}"];
    }

    /// <summary>Between a tile and the next.</summary>
    internal static string Joint(int before) => FormattableString.Invariant($"joint {before}|{before + 1}");
}
