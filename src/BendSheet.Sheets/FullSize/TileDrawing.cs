using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>
/// One tile: the tube at its real diameter between two joints, marks across it, and all that lies on the tube named below.
/// </summary>
internal static class TileDrawing
{
    private const double HatchPitch = 1.6;
    private const double HardwareOver = 1;
    private const double ClipSize = 1.4;

    /// <summary>The tile as one block that is never broken.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="tile">Which.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    public static Block Of(SheetContent sheet, StripTile tile, TextMeasure measure, double width)
    {
        var strip = sheet.Strip;
        var diameter = sheet.TubeDiameter.Millimetres;
        var tileWidth = tile.Last ? width - TileJoints.LeftRoom : (tile.End - tile.Start).Millimetres;
        double At(Length place) => (place - tile.Start).Millimetres;

        var labels = TileLabels.Of(
            strip.Bends.Where(bend => tile.Has(bend.Mark))
                .Select(bend => new TileMark(bend.Number, At(bend.Mark), bend.Label, TileWords.AtMark(bend))),
            tileWidth);
        var names = TileNames.Of(
            [.. Names(sheet, tile).Select(name => (At(name.Place), measure.Printable(name.Text), name.Must))], tileWidth);
        var bar = ProvingBar.Of(sheet.Notation, measure, tileWidth - TileJoints.Inset);
        var titleStyle = TextStyle.Body with { Bold = true };
        var title = measure.Wrap(TileWords.Title(sheet, tile.Number, tile.Count), titleStyle, tileWidth - TileJoints.Inset)[0];

        var tubeTop = TextStyle.Body.LineHeight + 2 + labels.HeightAbove;
        var namesTop = tubeTop + diameter + labels.HeightBelow + 1;
        var barTop = namesTop + names.Height + 1;
        var height = barTop + bar.Height + TileJoints.Foot;
        return new(height, (page, top) =>
        {
            var canvas = page.MovedRight(TileJoints.LeftRoom);
            canvas.Text(title, titleStyle, TileJoints.Inset, top + 0.5 + TextStyle.Body.Ascent);
            DrawTube(canvas, sheet, tile, top + tubeTop, At);
            TileJoints.Draw(canvas, tile, top, height - TileJoints.Foot);
            names.DrawLines(canvas, top + tubeTop + diameter, top + namesTop);
            labels.Draw(canvas, top + tubeTop, diameter);
            names.Draw(canvas, top + namesTop);
            bar.Draw(canvas.MovedRight(TileJoints.Inset), top + barTop);
            TileJoints.DrawFoot(page, tile, top + height);
        });
    }

    /// <summary>What is named below the tube: joints and ends must be there whatever else finds room.</summary>
    private static IEnumerable<(Length Place, string Text, bool Must)> Names(SheetContent sheet, StripTile tile)
    {
        var strip = sheet.Strip;
        if (!tile.First)
        {
            yield return (tile.Start, TileWords.JointAt(tile.Number - 1, tile.Start, sheet), true);
        }

        if (!tile.Last)
        {
            yield return (tile.End, TileWords.JointAt(tile.Number, tile.End, sheet), true);
        }

        if (tile.First && strip.Datum == Length.Zero)
        {
            yield return (Length.Zero, TileWords.CutEndA, true);
        }

        if (strip.Datum > Length.Zero && tile.Has(strip.Datum))
        {
            yield return (strip.Datum, TileWords.FaceA, true);
        }

        if (tile.Last)
        {
            yield return (strip.Length, TileWords.CutEndB, true);
        }

        if (strip.Trim > Length.Zero && tile.Has(strip.Length - strip.Trim))
        {
            yield return (strip.Length - strip.Trim, TileWords.Trim, true);
        }

        foreach (var (from, to, name) in Hardware(strip).Where(piece => tile.Has(0.5 * (piece.From + piece.To))))
        {
            yield return (0.5 * (from + to), name, false);
        }

        foreach (var clip in strip.Clips.Where(tile.Has))
        {
            yield return (clip, TileWords.Clip, false);
        }
    }

    /// <summary>Where each piece lies, one after the other from the end inwards.</summary>
    private static IEnumerable<(Length From, Length To, string Name)> Hardware(Strip strip)
    {
        var reached = Length.Zero;
        foreach (var piece in strip.HardwareA)
        {
            yield return (reached, reached + piece.Length, piece.Name);
            reached += piece.Length;
        }

        reached = strip.Length;
        foreach (var piece in strip.HardwareB)
        {
            yield return (reached - piece.Length, reached, piece.Name);
            reached -= piece.Length;
        }
    }

    private static void DrawTube(Canvas canvas, SheetContent sheet, StripTile tile, double top, Func<Length, double> at)
    {
        var strip = sheet.Strip;
        var bottom = top + sheet.TubeDiameter.Millimetres;
        var end = at(tile.End);
        foreach (var bend in strip.Bends)
        {
            var (from, to) = (Math.Max(at(bend.Start), 0), Math.Min(at(bend.End), end));
            if (from < to)
            {
                Hatching.Draw(canvas, from, to, top, bottom - top, HatchPitch);
                Edge(at(bend.Start));
                Edge(at(bend.End));
            }
        }

        canvas.Line(0, top, end, top);
        canvas.Line(0, bottom, end, bottom);
        var middle = (top + bottom) / 2;
        if (tile.First)
        {
            canvas.Line(0, top - 2, 0, bottom + 2);
            canvas.Text("A", TextStyle.Mark, -3.4, middle + (TextStyle.Mark.CapHeight / 2), Align.Centre);
        }

        if (strip.Datum > Length.Zero && tile.Has(strip.Datum))
        {
            canvas.Line(at(strip.Datum), top - 2, at(strip.Datum), bottom + 2);
        }

        if (tile.Last)
        {
            canvas.Line(end, top - 2, end, bottom + 2);
            canvas.Text("B", TextStyle.Mark, end + 3.4, middle + (TextStyle.Mark.CapHeight / 2), Align.Centre);
        }

        foreach (var (from, to, _) in Hardware(strip))
        {
            DrawPiece(canvas, Math.Max(at(from), 0), Math.Min(at(to), end), top, bottom, at(from) >= 0, at(to) <= end);
        }

        foreach (var clip in strip.Clips.Where(tile.Has))
        {
            DrawClip(canvas, at(clip), bottom);
        }

        var cut = strip.Length - strip.Trim;
        if (strip.Trim > Length.Zero && tile.Has(cut))
        {
            canvas.DashedLine(at(cut), top - 2, at(cut), bottom + 2, Canvas.Medium);
        }

        void Edge(double x)
        {
            if (x >= 0 && x <= end)
            {
                canvas.Line(x, top, x, bottom, Canvas.Thin);
            }
        }
    }

    private static void DrawClip(Canvas canvas, double x, double bottom)
    {
        canvas.Line(x, bottom, x - ClipSize, bottom + (1.6 * ClipSize));
        canvas.Line(x, bottom, x + ClipSize, bottom + (1.6 * ClipSize));
        canvas.Line(x - ClipSize, bottom + (1.6 * ClipSize), x + ClipSize, bottom + (1.6 * ClipSize));
    }

    /// <summary>A nut or sleeve where it lies before it is pushed away: outside the tube, open at a joint.</summary>
    private static void DrawPiece(Canvas canvas, double from, double to, double top, double bottom, bool begins, bool ends)
    {
        if (from >= to)
        {
            return;
        }

        canvas.Line(from, top - HardwareOver, to, top - HardwareOver);
        canvas.Line(from, bottom + HardwareOver, to, bottom + HardwareOver);
        foreach (var x in new[] { begins ? from : double.NaN, ends ? to : double.NaN }.Where(double.IsFinite))
        {
            canvas.Line(x, top - HardwareOver, x, bottom + HardwareOver);
        }
    }
}
