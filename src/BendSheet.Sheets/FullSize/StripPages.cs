using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>The straight tube at full size, along the longer side of the paper in tiles that are glued together.</summary>
internal static class StripPages
{
    /// <summary>More are no help to anybody: fifty metres of paper come from a slip in the unit.</summary>
    private const int MostTiles = 200;

    /// <summary>How the tiles are used, then each of them.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var step = sheet.Notation.Imperial ? Length.FromInches(0.5) : Length.FromMillimetres(10);
        var room = Length.FromMillimetres(width - TileDrawing.LeftRoom - TileDrawing.FlapWidth);
        var lastRoom = Length.FromMillimetres(width - (2 * TileDrawing.LeftRoom));
        if (sheet.Strip.Length / room > MostTiles)
        {
            return Paragraph.Of(TileWords.TooLong(sheet, MostTiles), TextStyle.Body, measure, width);
        }

        var tiles = StripTile.Spread(sheet.Strip, step, room, lastRoom);
        var drawn = tiles.Select(tile => TileDrawing.Of(sheet, tile, measure, width) with
        {
            Role = Role.Figure,
            Alternative = TileWords.Alternative(sheet, tile.Number, tile.Count),
        }).ToList();
        return drawn.Exists(tile => tile.Height > height)
            ? Paragraph.Of(TileWords.DoesNotFit, TextStyle.Body, measure, width)
            : [.. TileWords.HowTo(sheet, tiles.Count).SelectMany(text => Paragraph.Step(text, measure, width)), Block.Space(1.5), .. drawn];
    }
}
