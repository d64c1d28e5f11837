using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>The straight tube at full size, along the longer side of the paper in tiles that are glued together.</summary>
internal static class StripPages
{
    /// <summary>How the tiles are used, then each of them.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, TextMeasure measure, double width, double height)
    {
        var room = TileRoom.Of(sheet.Notation, width);
        if (room.IsTooSmallFor(sheet.Strip.Length))
        {
            return Paragraph.Of(TileWords.TooLong(sheet, TileRoom.MostTiles), TextStyle.Body, measure, width);
        }

        var tiles = StripTile.Spread(sheet.Strip, room);
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
