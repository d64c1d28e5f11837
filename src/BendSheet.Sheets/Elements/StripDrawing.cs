using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Elements;

/// <summary>
/// The tube drawn straight from A to B, to scale along its length: where each bend lies (hatched), its mark, number and rotation, and what
/// goes on the ends. Labels that would meet are moved to another row.
/// </summary>
internal static class StripDrawing
{
    private const double EndRoom = 7;
    private const double TubeHeight = 3;
    private const double HardwareHeight = 5;
    private const double BubbleRadius = 2.4;
    private const double BubbleRow = (2 * BubbleRadius) + 0.6;
    private const double LabelGap = 1.5;
    private const double ClipSize = 0.9;

    /// <summary>More rows would take the page from what matters more.</summary>
    private const int MostRows = 4;

    /// <summary>The order of work names every piece; here a long list ends.</summary>
    private const int MostEndLines = 3;

    /// <summary>The strip as one block with its heading.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        var strip = sheet.Strip;
        var scale = (width - (2 * EndRoom)) / strip.Length.Millimetres;
        double At(Length place) => EndRoom + (place.Millimetres * scale);

        var bubbles = LabelRows.Place(strip.Bends.Select(bend => (At(bend.Mark), (2 * BubbleRadius) + 0.4)), width, MostRows);
        var labels = strip.Bends.Select(bend => new Label(At(bend.Mark), bend.Label, bend.Rotation)).ToList();
        var labelRows = LabelRows.Place(labels.Select(label => (label.X, label.Width(measure) + LabelGap)), width, MostRows);
        var labelHeight = (2 * TextStyle.Small.LineHeight) + 0.6;
        var tubeTop = (bubbles.Count * BubbleRow) + 2.5;
        var labelTop = tubeTop + TubeHeight + 2.5;
        var endsTop = labelTop + (labelRows.Count * labelHeight);

        var half = (width / 2) - LabelGap;
        var endA = measure.Wrap(EndInWords(strip.HardwareA, strip.FlaredA), TextStyle.Small, half);
        var endB = measure.Wrap(EndInWords(strip.HardwareB, strip.FlaredB), TextStyle.Small, half);
        yield return Paragraph.Heading($"The straight tube, marks in {sheet.Notation.UnitName} from {sheet.DatumName} (hatched: what becomes the bend)");
        yield return new(endsTop + (Math.Min(Math.Max(endA.Count, endB.Count), MostEndLines) * TextStyle.Small.LineHeight), (canvas, top) =>
        {
            DrawTube(canvas, top + tubeTop, strip, At);
            double BubbleY(int i) => top + tubeTop - 2.5 - BubbleRadius - (bubbles.Row(i) * BubbleRow);
            double LabelY(int i) => top + labelTop + (labelRows.Row(i) * labelHeight);
            for (var i = 0; i < labels.Count; i++)
            {
                canvas.Line(labels[i].X, bubbles.Has(i) ? BubbleY(i) : top + tubeTop - 1.5, labels[i].X, top + tubeTop + TubeHeight + 1.5, Canvas.Thick);
                if (labelRows.Has(i))
                {
                    canvas.Line(labels[i].X, top + tubeTop + TubeHeight + 1.5, labels[i].X, LabelY(i), Canvas.Thin);
                }
            }

            // Over all lines, so that no line runs through a figure.
            for (var i = 0; i < labels.Count; i++)
            {
                if (bubbles.Has(i))
                {
                    canvas.Bubble(FormattableString.Invariant($"{strip.Bends[i].Number}"), TextStyle.Small with { Bold = true }, labels[i].X, BubbleY(i), BubbleRadius);
                }

                if (labelRows.Has(i))
                {
                    labels[i].Draw(canvas, measure, labelRows.X(i), LabelY(i));
                }
            }

            DrawEnd(canvas, endA, 0, top + endsTop, Align.Left);
            DrawEnd(canvas, endB, canvas.Width, top + endsTop, Align.Right);
        })
        {
            Role = Role.Figure,
            Alternative = DrawingWords.OfStrip(sheet),
        };

        string EndInWords(IEnumerable<SlideOn> hardware, bool flared)
        {
            var pieces = hardware.Select(piece => measure.Printable(piece.Name)).ToList();
            return (flared, pieces.Count) switch
            {
                (false, 0) => string.Empty,
                (false, _) => "from the end: " + string.Join(", ", pieces),
                (true, 0) => "flare",
                _ => "from the end: flare, " + string.Join(", ", pieces),
            };
        }
    }

    private static void DrawEnd(Canvas canvas, IReadOnlyList<string> lines, double x, double top, Align align)
    {
        for (var i = 0; i < Math.Min(lines.Count, MostEndLines); i++)
        {
            canvas.Text(lines[i], TextStyle.Small, x, top + TextStyle.Small.Ascent + (i * TextStyle.Small.LineHeight), align);
        }
    }

    private static void DrawTube(Canvas canvas, double top, Strip strip, Func<Length, double> at)
    {
        var a = at(Length.Zero);
        var b = at(strip.Length);
        var middle = top + (TubeHeight / 2);
        canvas.Text("A", TextStyle.Heading, 1.5, middle + (TextStyle.Heading.CapHeight / 2));
        canvas.Text("B", TextStyle.Heading, canvas.Width - 1.5, middle + (TextStyle.Heading.CapHeight / 2), Align.Right);
        foreach (var bend in strip.Bends)
        {
            Hatch(canvas, at(bend.Start), at(bend.End), top);
        }

        canvas.Box(a, top, b - a, TubeHeight);
        foreach (var clip in strip.Clips)
        {
            DrawClip(canvas, at(clip), top + TubeHeight);
        }

        DrawHardware(canvas, strip.HardwareA, at, piece => piece, middle);
        DrawHardware(canvas, strip.HardwareB, at, piece => strip.Length - piece, middle);
        if (strip.FlaredA)
        {
            DrawFlare(canvas, a, a - 1.5, top);
        }

        if (strip.FlaredB)
        {
            DrawFlare(canvas, b, b + 1.5, top);
        }

        if (strip.Trim > Length.Zero)
        {
            var cut = at(strip.Length - strip.Trim);
            canvas.DashedLine(cut, top - 2, cut, top + TubeHeight + 2, Canvas.Medium);
            canvas.Text("trim", TextStyle.Small, canvas.Width, top - 1.2, Align.Right);
        }
    }

    /// <summary>To scale, one behind the other from the end inwards, and never too narrow to be seen.</summary>
    private static void DrawHardware(Canvas canvas, IEnumerable<SlideOn> hardware, Func<Length, double> at, Func<Length, Length> fromEnd, double middle)
    {
        var reached = Length.Zero;
        foreach (var piece in hardware)
        {
            var inner = at(fromEnd(reached + piece.Length));
            var outer = at(fromEnd(reached));
            var height = Math.Abs(inner - outer) < 1 ? HardwareHeight - 1 : HardwareHeight;
            canvas.Box(Math.Min(inner, outer), middle - (height / 2), Math.Abs(inner - outer), height, Canvas.Medium);
            reached += piece.Length;
        }
    }

    /// <summary>A triangle that points at the tube from below, in the room above the labels.</summary>
    private static void DrawClip(Canvas canvas, double x, double bottom)
    {
        canvas.Line(x, bottom, x - ClipSize, bottom + (1.6 * ClipSize));
        canvas.Line(x, bottom, x + ClipSize, bottom + (1.6 * ClipSize));
        canvas.Line(x - ClipSize, bottom + (1.6 * ClipSize), x + ClipSize, bottom + (1.6 * ClipSize));
    }

    private static void DrawFlare(Canvas canvas, double end, double outer, double top)
    {
        canvas.Line(end, top, outer, top - 1.2);
        canvas.Line(end, top + TubeHeight, outer, top + TubeHeight + 1.2);
    }

    private static void Hatch(Canvas canvas, double from, double to, double top) => canvas.Clipped(from, top, to - from, TubeHeight, () =>
    {
        for (var x = from - TubeHeight; x < to; x += 0.9)
        {
            canvas.Line(x, top + TubeHeight, x + TubeHeight, top, Canvas.Thin);
        }
    });

    /// <summary>What stands under a mark.</summary>
    private sealed record Label(double X, string Mark, string Rotation)
    {
        private static readonly TextStyle MarkStyle = TextStyle.Small with { Bold = true };

        public double Width(TextMeasure measure) => Math.Max(measure.Width(Mark, MarkStyle), measure.Width(Rotation, TextStyle.Small));

        public void Draw(Canvas canvas, TextMeasure measure, double x, double top)
        {
            var width = Width(measure);
            canvas.Blank(x - (width / 2), top, width, MarkStyle.LineHeight + (Rotation.Length > 0 ? TextStyle.Small.LineHeight : 0));
            canvas.Text(Mark, MarkStyle, x, top + MarkStyle.Ascent, Align.Centre);
            canvas.Text(Rotation, TextStyle.Small, x, top + MarkStyle.LineHeight + TextStyle.Small.Ascent, Align.Centre);
        }
    }
}
