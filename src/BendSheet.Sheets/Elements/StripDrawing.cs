using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>
/// The tube drawn straight from A to B, to scale along its length: where each bend lies, its mark, number and pen line, and what goes on
/// the ends. Every label is there: those that would meet move apart along their row, at the end of a leader line; and a tube with more
/// bends than one row has room for is drawn in parts, one below the other, all to the same scale.
/// </summary>
internal static class StripDrawing
{
    private const double BubbleRadius = 2.4;
    private const double BubblePitch = (2 * BubbleRadius) + 0.6;
    private const double LabelGap = 1.5;

    /// <summary>Of the clock face with the pen line.</summary>
    private const double ClockRadius = 1.8;
    private const double ClockGap = 0.8;

    /// <summary>A tick of a mark reaches over the tube by this.</summary>
    private const double Tick = 1.5;

    /// <summary>Leader lines rise by at least this part of the way they go along the tube, so that the eye can follow them…</summary>
    private const double Rise = 0.3;

    /// <summary>… as long as they do not take more room than this.</summary>
    private const double MostRise = 9;

    /// <summary>A longer list at an end is cut off here: the order of work names every piece.</summary>
    private const int MostEndLines = 3;

    private static readonly TextStyle MarkStyle = TextStyle.Small with { Bold = true };

    /// <summary>The strip with its heading, a block for each part.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        var bends = sheet.Strip.Bends.OrderBy(bend => bend.Mark.Millimetres).ToList();
        var pitch = LabelGap + bends.Select(bend => Math.Max(MarkStyle.Width(bend.Label), LineWidth(bend)))
            .DefaultIfEmpty(0).Max();
        yield return Paragraph.Heading(StripWords.Heading(sheet));
        foreach (var part in StripPart.Of(sheet.Strip, bends, Math.Max(1, (int)(width / pitch)), width))
        {
            yield return Part(sheet, part, pitch, measure, width);
        }
    }

    private static Block Part(SheetContent sheet, StripPart part, double pitch, TextMeasure measure, double width)
    {
        var marks = part.Bends.Select(bend => part.At(bend.Mark)).ToList();
        var bubbles = SideBySide.Middles(marks.ConvertAll(mark => (mark, BubblePitch)), width - (part.HasTrim ? TubeOnStrip.TrimRoom : 0));
        var labels = SideBySide.Middles(marks.ConvertAll(mark => (mark, pitch)), width);
        var tubeTop = marks.Count == 0 ? 3 : (2 * BubbleRadius) + 0.7 + Tick + Fan(marks, bubbles);
        var labelTop = tubeTop + TubeOnStrip.Height + Tick + 0.5 + Fan(marks, labels);

        var half = (width / 2) - LabelGap;
        var endA = part.HasA ? EndLines(StripWords.AtEnd(sheet.Strip.FlaredA, sheet.Strip.HardwareA), measure, half) : [];
        var endB = part.HasB ? EndLines(StripWords.AtEnd(sheet.Strip.FlaredB, sheet.Strip.HardwareB), measure, half) : [];
        var labelHeight = MarkStyle.LineHeight + (2.3 * ClockRadius);
        var endsTop = labelTop + EndsBelowLabels(endA, endB);
        var foot = Math.Max(
            marks.Count == 0 ? labelTop : labelTop + labelHeight,
            endsTop + (Math.Max(endA.Count, endB.Count) * TextStyle.Small.LineHeight));
        return new(foot + 0.6, (canvas, top) =>
        {
            TubeOnStrip.Draw(canvas, part, sheet.Strip, top + tubeTop);
            for (var i = 0; i < marks.Count; i++)
            {
                var (above, below) = (top + tubeTop - Tick, top + tubeTop + TubeOnStrip.Height + Tick);
                canvas.Line(marks[i], above, marks[i], below, Canvas.Thick);
                canvas.Line(marks[i], above, bubbles[i], top + BubbleRadius, Canvas.Thin);
                canvas.Line(marks[i], below, labels[i], top + labelTop, Canvas.Thin);
            }

            // Over all lines, so that no line runs through a figure.
            for (var i = 0; i < marks.Count; i++)
            {
                canvas.Bubble(
                    FormattableString.Invariant($"{part.Bends[i].Number}"), MarkStyle, bubbles[i], top + BubbleRadius + 0.2, BubbleRadius);
                canvas.Text(part.Bends[i].Label, MarkStyle, labels[i], top + labelTop + MarkStyle.Ascent, Align.Centre);
                DrawLineAt(
                    canvas, part.Bends[i], sheet.Rows.Length <= MostFaces, labels[i],
                    top + labelTop + MarkStyle.LineHeight + (1.2 * ClockRadius));
            }

            TubeOnStrip.DrawClips(canvas, part, sheet.Strip, top + tubeTop);

            DrawEnd(canvas, endA, 0, top + endsTop, Align.Left);
            DrawEnd(canvas, endB, canvas.Width, top + endsTop, Align.Right);
        })
        {
            Role = Role.Figure,
            Alternative = DrawingWords.OfStrip(sheet),
        };

        // The words at the ends stand beside the labels where there is room, or else below those that are in the way.
        double EndsBelowLabels(IReadOnlyList<string> ofA, IReadOnlyList<string> ofB)
        {
            var (rightOfA, leftOfB) = (Widest(ofA), width - Widest(ofB));
            return labels.Any(label => label - (pitch / 2) < rightOfA || label + (pitch / 2) > leftOfB) ? labelHeight : 0;
        }
    }

    /// <summary>With more bends than fit into two parts only the time is shown: so many small faces are a lot of strokes.</summary>
    private const int MostFaces = 25;

    private static double LineWidth(StripBend bend) => (2 * ClockRadius) + ClockGap + TextStyle.Small.Width(bend.LineClock);

    /// <summary>Where the pen line stands: a clock face and the time beside it.</summary>
    private static void DrawLineAt(Canvas canvas, StripBend bend, bool withFace, double middle, double y)
    {
        if (!withFace)
        {
            canvas.Text(bend.LineClock, TextStyle.Small, middle, y + (TextStyle.Small.CapHeight / 2), Align.Centre);
            return;
        }

        var left = middle - (LineWidth(bend) / 2);
        ClockFace.Draw(canvas, new(left + ClockRadius, y), ClockRadius, bend.LineAt);
        canvas.Text(
            bend.LineClock, TextStyle.Small, left + (2 * ClockRadius) + ClockGap, y + (TextStyle.Small.CapHeight / 2));
    }

    private static double Fan(IReadOnlyList<double> marks, IReadOnlyList<double> labels) =>
        Math.Min(MostRise, marks.Zip(labels, (mark, label) => Rise * Math.Abs(mark - label)).DefaultIfEmpty(0).Max());

    private static double Widest(IReadOnlyList<string> lines) =>
        lines.Select(line => TextStyle.Small.Width(line) + LabelGap).DefaultIfEmpty(0).Max();

    private static IReadOnlyList<string> EndLines(string words, TextMeasure measure, double width) =>
        words.Length == 0 ? [] : [.. measure.Wrap(words, TextStyle.Small, width).Take(MostEndLines)];

    private static void DrawEnd(Canvas canvas, IReadOnlyList<string> lines, double x, double top, Align align)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            canvas.Text(lines[i], TextStyle.Small, x, top + TextStyle.Small.Ascent + (i * TextStyle.Small.LineHeight), align);
        }
    }
}
