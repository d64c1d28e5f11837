using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>
/// One tile: the tube at its real diameter between two joints, marks across it, and all that lies on the tube named below.
/// </summary>
internal static class TileDrawing
{
    private const double HatchPitch = 1.6;

    /// <summary>Left of the tile's start: cut away at a joint, the letter A at the end.</summary>
    public const double LeftRoom = 6;

    /// <summary>Right of a joint: covered by the next tile.</summary>
    public const double FlapWidth = 12;

    private const double HardwareOver = 1;
    private const double ClipSize = 1.4;
    private const double NameGap = 2;
    private const int MostNameRows = 4;
    private const double Foot = 3;

    /// <summary>Words and bar keep clear of the line that is cut.</summary>
    private const double Inset = 2;

    /// <summary>The tile as one block that is never broken.</summary>
    /// <param name="sheet">Of the line.</param>
    /// <param name="tile">Which.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="width">Of the type area.</param>
    public static Block Of(SheetContent sheet, StripTile tile, TextMeasure measure, double width)
    {
        var strip = sheet.Strip;
        var diameter = sheet.TubeDiameter.Millimetres;
        var tileWidth = tile.Last ? width - LeftRoom : (tile.End - tile.Start).Millimetres;
        double At(Length place) => (place - tile.Start).Millimetres;

        var labels = TileLabels.Of(strip.Bends.Where(bend => tile.Has(bend.Mark)), bend => At(bend.Mark), tileWidth);
        var all = Names(sheet, tile).Select(name => (X: At(name.Place), Text: measure.Printable(name.Text), name.Must)).ToList();

        // Short names find room near the tube; what must be there goes first only where it would be left out otherwise.
        var names = new[] { all.OrderBy(name => name.Must), all.OrderByDescending(name => name.Must) }
            .Select(order => Placed([.. order], tileWidth))
            .MinBy(placed => placed.Count(name => name.Must && name.At is null))!;
        var bar = ProvingBar.Of(sheet.Notation, measure, tileWidth - Inset);
        var titleStyle = TextStyle.Body with { Bold = true };
        var title = measure.Wrap(TileWords.Title(sheet, tile.Number, tile.Count), titleStyle, tileWidth - Inset)[0];

        var tubeTop = TextStyle.Body.LineHeight + 2 + labels.HeightAbove;
        var namesTop = tubeTop + diameter + labels.HeightBelow + 1;
        var barTop = namesTop + ((names.Max(name => name.At?.Row + 1) ?? 0) * TextStyle.Small.LineHeight) + 1;
        var height = barTop + bar.Height + Foot;
        return new(height, (page, top) =>
        {
            var canvas = page.MovedRight(LeftRoom);
            canvas.Text(title, titleStyle, Inset, top + 0.5 + TextStyle.Body.Ascent);
            DrawTube(canvas, sheet, tile, top + tubeTop, At);
            DrawJoints(canvas, tile, top, height - Foot);
            foreach (var at in names.Select(name => name.At).OfType<RowLabel>().Where(at => at.X >= 0))
            {
                canvas.Line(at.X, top + tubeTop + diameter, at.X, top + namesTop + (at.Row * TextStyle.Small.LineHeight), Canvas.Thin);
            }

            labels.Draw(canvas, top + tubeTop, diameter);
            foreach (var (text, _, at) in names.Where(name => name.At is not null))
            {
                var nameTop = top + namesTop + (at!.Row * TextStyle.Small.LineHeight);
                var half = TextStyle.Small.Width(text) / 2;
                canvas.Blank(at.Middle - half, nameTop, 2 * half, TextStyle.Small.LineHeight);
                canvas.Text(text, TextStyle.Small, at.Middle, nameTop + TextStyle.Small.Ascent, Align.Centre);
            }

            bar.Draw(canvas.MovedRight(Inset), top + barTop);
            if (tile.Count > 1)
            {
                page.DashedLine(0, top + height - 1, page.Width, top + height - 1);
            }
        });
    }

    private static List<(string Text, bool Must, RowLabel? At)> Placed(List<(double X, string Text, bool Must)> names, double width)
    {
        var rows = RowLabel.Place(names.Select(name => (name.X, TextStyle.Small.Width(name.Text) + NameGap)), width, MostNameRows);
        return [.. names.Zip(rows, (name, at) => (name.Text, name.Must, at))];
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

    /// <summary>Where each piece lies, one behind the other from the end inwards.</summary>
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
            canvas.Line(at(clip), bottom, at(clip) - ClipSize, bottom + (1.6 * ClipSize));
            canvas.Line(at(clip), bottom, at(clip) + ClipSize, bottom + (1.6 * ClipSize));
            canvas.Line(at(clip) - ClipSize, bottom + (1.6 * ClipSize), at(clip) + ClipSize, bottom + (1.6 * ClipSize));
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

    private static void DrawJoints(Canvas canvas, StripTile tile, double top, double height)
    {
        if (!tile.First)
        {
            canvas.Line(0, top, 0, top + height);
            canvas.Text(TileWords.Cut, TextStyle.Small, -0.6, top + TextStyle.Small.Ascent, Align.Right);
        }

        if (!tile.Last)
        {
            var joint = (tile.End - tile.Start).Millimetres;
            canvas.Line(joint, top, joint, top + height);
            var words = TileWords.OnFlap(tile.Number + 1);
            for (var i = 0; i < words.Count; i++)
            {
                canvas.Text(
                    words[i], TextStyle.Small, joint + (FlapWidth / 2), top + 4 + TextStyle.Small.Ascent
                        + (i * TextStyle.Small.LineHeight), Align.Centre);
            }
        }
    }
}
