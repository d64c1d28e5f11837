using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>The straight tube at full size, along the longer side of the paper in tiles that are glued together.</summary>
internal static class StripPages
{
    /// <summary>More are no help to anybody: a hundred metres and more of paper come from a slip in the unit.</summary>
    private const int MostTiles = 500;

    /// <summary>How the tiles are used, then each of them.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var step = sheet.Notation.Imperial ? Length.FromInches(0.5) : Length.FromMillimetres(10);
        var room = Length.FromMillimetres(width - TileDrawing.LeftRoom - TileDrawing.FlapWidth);
        var lastRoom = Length.FromMillimetres(width - (2 * TileDrawing.LeftRoom));
        if (sheet.Strip.Length / room > MostTiles)
        {
            return Paragraph.Of(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The tube is too long to be drawn at full size: {sheet.CutLength.Main} would take more than {MostTiles} tiles."),
                TextStyle.Body,
                measure,
                width);
        }

        var tiles = StripTile.Spread(sheet.Strip, step, room, lastRoom);
        var told = DrawingWords.OfStrip(sheet);
        var drawn = tiles.Select((tile, i) => TileDrawing.Of(sheet, tile, measure, width) with
        {
            Role = Role.Figure,
            Alternative = FormattableString.Invariant(
                $"Tile {i + 1} of {tiles.Count} at full size. {(i == 0 ? told : "The straight tube goes on.")}"),
        }).ToList();
        return drawn.Exists(tile => tile.Height > height)
            ? Paragraph.Of(
                "The straight tube does not fit on this paper at full size: the tube is too thick, or its marks are too many. Work from "
                    + "the table.", TextStyle.Body, measure, width)
            : [.. HowTo(sheet, tiles.Count).SelectMany(text => Paragraph.Step(text, measure, width)), Block.Space(1.5), .. drawn];
    }

    private static IEnumerable<string> HowTo(SheetContent sheet, int tiles)
    {
        if (tiles > 1)
        {
            yield return "Measure the bar of each tile. Cut the tiles apart at the dashed lines and at the line marked “cut”; lay that "
                + "edge on the line of the same joint of the tile before, "
                + "the tube's sides in line, and glue. Then hold a tape along the strip: every joint must lie at its figure from the cut "
                + "end of A, or the figures of all behind it are wrong.";
        }

        yield return $"Lay the straight tube on its picture, {sheet.DatumName} on its line, and draw every mark right across the tube. "
            + $"Figures in {sheet.Notation.UnitName} "
            + $"from {sheet.DatumName}; hatched: what becomes the bend. The figures of the table hold: check the last mark with a rule.";
    }
}
