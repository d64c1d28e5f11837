using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>Where to drill for clips, at full size along the longer side of the paper, in tiles as the straight tube is.</summary>
internal static class ClipPages
{
    /// <summary>A joint keeps at least this far from a clip's box, in millimetres.</summary>
    private const double ClearOfClip = 1;

    /// <summary>How a strip is used, then its tiles.</summary>
    public static IEnumerable<Block> Blocks(SheetContent sheet, DrillingStrip strip, TextMeasure measure, double width, double height)
    {
        var room = TileRoom.Of(sheet.Notation, width);
        if (room.IsTooSmallFor(strip.Length))
        {
            return Paragraph.Of(DrillingWords.TooLong(strip, sheet.Notation, TileRoom.MostTiles), TextStyle.Body, measure, width);
        }

        var tiles = StripTile.Spread(strip.Length, Length.Zero, place => IsFree(strip, place), room);
        var drawn = tiles.Select(tile => ClipTileDrawing.Of(sheet, strip, tile, measure, width) with
        {
            Role = Role.Figure,
            Alternative = DrillingWords.Alternative(strip, tile.Number, tile.Count),
        }).ToList();
        return drawn.Exists(tile => tile.Height > height)
            ? Paragraph.Of(DrillingWords.DoesNotFit, TextStyle.Body, measure, width)
            :
            [
                .. DrillingWords.Gluing(tiles.Count).Concat(strip.HowTo).SelectMany(text => Paragraph.Step(text, measure, width)),
                Block.Space(1.5),
                .. drawn,
            ];
    }

    private static bool IsFree(DrillingStrip strip, Length joint) => strip.Holes.All(
        hole => Math.Abs((hole.Place - joint).Millimetres) >= (hole.Width.Millimetres / 2) + ClearOfClip);
}
