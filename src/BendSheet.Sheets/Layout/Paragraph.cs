using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Layout;

/// <summary>Running text as blocks, a block for each line, so that a text of any length flows on to the next page.</summary>
internal static class Paragraph
{
    /// <summary>Width of a tick box or sign with the room after it.</summary>
    private const double SignWidth = 4.6;

    /// <summary>
    /// From one baseline to the next, for each millimetre of type: lines of running text may lie nearer than those of a table.
    /// </summary>
    private const double Leading = 1.17;

    private const double TickBoxSize = 3;

    /// <summary>A text of up to this many lines is never broken; a longer one may be.</summary>
    private const int MostKept = 8;

    /// <summary>Between one step or remark and the next.</summary>
    private const double Between = 0.5;

    /// <summary>A text across the type area.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="style">Of the text.</param>
    /// <param name="measure">Measures it.</param>
    /// <param name="width">Of the type area.</param>
    /// <param name="indent">From the left.</param>
    public static IEnumerable<Block> Of(string text, TextStyle style, TextMeasure measure, double width, double indent = 0)
    {
        var lines = measure.Wrap(text, style, width - indent);
        return lines.Select((line, i) => Line(line, style, indent) with { Continues = i > 0, KeepWithNext = IsKept(i, lines) });
    }

    /// <summary>The heading of a part of the sheet, with a rule above it.</summary>
    /// <param name="text">Printable, on one line.</param>
    /// <param name="width">Of the rule; without it that of the type area.</param>
    public static Block Heading(string text, double? width = null) => new(
        5.3,
        (canvas, top) =>
        {
            canvas.Decoration(() => canvas.Line(0, top + 0.5, width ?? canvas.Width, top + 0.5, Canvas.Thin));
            canvas.Text(text, TextStyle.Heading, 0, top + 0.7 + TextStyle.Heading.Ascent);
        },
        KeepWithNext: true)
    {
        Role = Role.Heading,
    };

    /// <summary>A step with a box to tick in front of its first line.</summary>
    public static IEnumerable<Block> Step(string text, TextMeasure measure, double width) => WithSign(
        text,
        TextStyle.Body,
        measure,
        width,
        (canvas, baseline) => canvas.TickBox(0.2, baseline, TickBoxSize));

    /// <summary>A remark with a sign in front of its first line.</summary>
    public static IEnumerable<Block> Remark(string sign, string text, TextStyle style, TextMeasure measure, double width) => WithSign(
        text, style, measure, width, (canvas, baseline) => canvas.Text(sign, style with { Bold = true }, 1.2, baseline));

    private static IEnumerable<Block> WithSign(string text, TextStyle style, TextMeasure measure, double width, Action<Canvas, double> sign)
    {
        var lines = measure.Wrap(text, style, width - SignWidth);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = Line(lines[i], style, SignWidth) with { Role = Role.ListItem, Continues = i > 0 };
            yield return i > 0
                ? line with { Height = line.Height + (i == lines.Count - 1 ? Between : 0), KeepWithNext = IsKept(i, lines) }
                : line with
                {
                    Height = line.Height + (lines.Count == 1 ? Between : 0),
                    Draw = (canvas, top) =>
                    {
                        canvas.Decoration(() => sign(canvas, top + style.Ascent));
                        line.Draw(canvas, top);
                    },
                    KeepWithNext = lines.Count > 1,
                };
        }
    }

    private static bool IsKept(int line, IReadOnlyList<string> lines) => lines.Count <= MostKept && line < lines.Count - 1;

    /// <summary>One line of it.</summary>
    public static Block Line(string printable, TextStyle style, double indent) =>
        new(Leading * style.Size, (canvas, top) => canvas.Text(printable, style, indent, top + style.Ascent));
}
