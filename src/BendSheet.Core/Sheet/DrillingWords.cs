using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>What the strips for drilling the holes of clips say.</summary>
public static class DrillingWords
{
    /// <summary>In the place of a strip that has no room.</summary>
    public const string DoesNotFit =
        "The holes do not fit on this paper at full size: there are too many on a page. Work from the clips' places on the line's sheet: "
        + "on one straight the holes are as far apart as the clips.";

    /// <summary>In the place of a strip that nobody would glue.</summary>
    /// <param name="strip">Which.</param>
    /// <param name="notation">Of the sheet.</param>
    /// <param name="most">Tiles.</param>
    public static string TooLong(DrillingStrip strip, LengthNotation notation, int most)
    {
        ArgumentNullException.ThrowIfNull(strip);
        ArgumentNullException.ThrowIfNull(notation);
        return FormattableString.Invariant(
            $"{strip.Name}: too long to be drawn at full size, {notation.WithUnit(strip.Length)} would take more than {most} tiles.");
    }

    /// <summary>Above a tile.</summary>
    /// <param name="strip">Which.</param>
    /// <param name="number">Of the tile, from 1.</param>
    /// <param name="count">How many there are.</param>
    /// <param name="sheet">Of the line.</param>
    public static string Title(DrillingStrip strip, int number, int count, SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return $"{TileWords.Tile(number, count)} – {SheetWords.Fingerprint(sheet)} – {strip.Name}";
    }

    /// <summary>A joint and where it must lie.</summary>
    /// <param name="before">Number of the tile before it.</param>
    /// <param name="place">From the edge.</param>
    /// <param name="notation">Of the sheet.</param>
    public static string JointAt(int before, Length place, LengthNotation notation)
    {
        ArgumentNullException.ThrowIfNull(notation);
        return $"{TileWords.Joint(before)}: {notation.WithUnit(place)} from the edge";
    }

    /// <summary>A tile for somebody who does not see it.</summary>
    /// <param name="strip">Which.</param>
    /// <param name="number">Of the tile, from 1.</param>
    /// <param name="count">How many there are.</param>
    public static string Alternative(DrillingStrip strip, int number, int count)
    {
        ArgumentNullException.ThrowIfNull(strip);
        return FormattableString.Invariant($"Tile {number} of {count} at full size. ")
            + (number == 1 ? strip.Alternative : "The strip goes on.");
    }

    /// <summary>How the tiles are put together; nothing where there is one.</summary>
    /// <param name="tiles">How many.</param>
    public static IEnumerable<string> Gluing(int tiles) => tiles > 1 ? [TileWords.Gluing("the line of the holes")] : [];

    /// <summary>Where the edge of a rail's strip lies.</summary>
    /// <param name="rail">With its lines.</param>
    public static string Edge(ClipRail rail)
    {
        ArgumentNullException.ThrowIfNull(rail);
        var line = rail.Lines.MinBy(line => line.From)!;
        return line.Reversed ? To(line) : From(line);
    }

    private static string From(RailLine line) => line.IsFirst
        ? $"the finished end A of {line.Line}"
        : FormattableString.Invariant($"where bend {line.Straight - 1} of {line.Line} ends");

    private static string To(RailLine line) => line.IsLast
        ? $"the finished end B of {line.Line}"
        : FormattableString.Invariant($"where bend {line.Straight} of {line.Line} begins");
}
