using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>One tile of a drilling strip: the line of the holes between two joints, a cross and the clip's width at each hole.</summary>
internal static class ClipTileDrawing
{
    /// <summary>Of a clip's box, across the rail: more than any fastener's head.</summary>
    private const double BoxHeight = 11;

    /// <summary>Half a stroke of a cross: longer than the radius of a 10 mm drill, so that it still shows beside the hole.</summary>
    private const double CrossArm = 7;

    /// <summary>Names below a figure are broken into lines no longer than this.</summary>
    private const double LongestName = 60;

    /// <summary>The tile as one block that is never broken.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="strip">Which.</param>
    /// <param name="tile">Which of it.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    public static Block Of(SheetContent sheet, DrillingStrip strip, StripTile tile, TextMeasure measure, double width)
    {
        var tileWidth = tile.Last ? width - TileJoints.LeftRoom : (tile.End - tile.Start).Millimetres;
        double At(Length place) => (place - tile.Start).Millimetres;

        List<DrillingHole> holes = [.. strip.Holes.Where(hole => tile.Has(hole.Place))];
        var labels = TileLabels.Of(
            holes.Select(hole => new TileMark(hole.Number, At(hole.Place), hole.Label, Clips(hole, measure))),
            tileWidth);
        var names = TileNames.Of(
            [
                .. Names(sheet, strip, tile).Select(
                    name => (At(name.Place), measure.Wrap(name.Text, TextStyle.Small, tileWidth - TileJoints.Inset)[0], true)),
            ],
            tileWidth);
        var bar = ProvingBar.Of(sheet.Notation, measure, tileWidth - TileJoints.Inset);
        var titleStyle = TextStyle.Body with { Bold = true };
        var title = measure.Wrap(DrillingWords.Title(strip, tile.Number, tile.Count, sheet), titleStyle, tileWidth - TileJoints.Inset)[0];
        var ends = Ends(strip, tile, measure, (tileWidth - (2 * TileJoints.Inset)) / 2);

        var boxTop = TextStyle.Body.LineHeight + 2 + labels.HeightAbove;
        var namesTop = boxTop + BoxHeight + labels.HeightBelow + 1;
        var endsTop = namesTop + names.Height + 0.5;
        var barTop = endsTop + (ends.Max(end => end.Count) * TextStyle.Small.LineHeight) + 1;
        var height = barTop + bar.Height + TileJoints.Foot;
        return new(height, (page, top) =>
        {
            var canvas = page.MovedRight(TileJoints.LeftRoom);
            canvas.Text(title, titleStyle, TileJoints.Inset, top + 0.5 + TextStyle.Body.Ascent);
            DrawHoles(canvas, strip, tile, top + boxTop, At);
            TileJoints.Draw(canvas, tile, top, height - TileJoints.Foot, cutsFirst: true);
            names.DrawLines(canvas, top + boxTop + BoxHeight, top + namesTop);
            labels.Draw(canvas, top + boxTop, BoxHeight);
            names.Draw(canvas, top + namesTop);
            DrawEnds(canvas, ends, tileWidth, top + endsTop);
            bar.Draw(canvas.MovedRight(TileJoints.Inset), top + barTop);
            TileJoints.DrawFoot(page, tile, top + height);
        });
    }

    private static IEnumerable<(Length Place, string Text)> Names(SheetContent sheet, DrillingStrip strip, StripTile tile)
    {
        yield return tile.First
            ? (tile.Start, strip.Edge)
            : (tile.Start, DrillingWords.JointAt(tile.Number - 1, tile.Start, sheet.Notation));
        if (!tile.Last)
        {
            yield return (tile.End, DrillingWords.JointAt(tile.Number, tile.End, sheet.Notation));
        }
    }

    private static IReadOnlyList<string> Clips(DrillingHole hole, TextMeasure measure) =>
        [.. hole.Clips.SelectMany(clip => measure.Wrap(clip, TextStyle.Small, LongestName))];

    /// <summary>Which ends of the lines lie which way, on the first and the last tile.</summary>
    private static IReadOnlyList<string>[] Ends(DrillingStrip strip, StripTile tile, TextMeasure measure, double width) =>
    [
        tile.First ? measure.Wrap(strip.Left, TextStyle.Small, width) : [],
        tile.Last ? measure.Wrap(strip.Right, TextStyle.Small, width) : [],
    ];

    private static void DrawEnds(Canvas canvas, IReadOnlyList<string>[] ends, double width, double top)
    {
        double[] x = [TileJoints.Inset, width - TileJoints.Inset];
        Align[] aligned = [Align.Left, Align.Right];
        for (var side = 0; side < ends.Length; side++)
        {
            for (var i = 0; i < ends[side].Count; i++)
            {
                var baseline = top + TextStyle.Small.Ascent + (i * TextStyle.Small.LineHeight);
                canvas.Text(ends[side][i], TextStyle.Small, x[side], baseline, aligned[side]);
            }
        }
    }

    private static void DrawHoles(Canvas canvas, DrillingStrip strip, StripTile tile, double top, Func<Length, double> at)
    {
        var end = at(tile.End);
        var middle = top + (BoxHeight / 2);
        canvas.DashedLine(0, middle, end, middle);
        foreach (var hole in strip.Holes.Where(hole => tile.Has(hole.Place)))
        {
            var x = at(hole.Place);
            canvas.Box(x - (hole.Width.Millimetres / 2), top, hole.Width.Millimetres, BoxHeight);
            canvas.Line(x - CrossArm, middle, x + CrossArm, middle, TileLabels.MarkPen);
            if (hole.Drill is { } drill)
            {
                canvas.Circle(new(x, middle), drill.Millimetres / 2);
            }
        }
    }
}
