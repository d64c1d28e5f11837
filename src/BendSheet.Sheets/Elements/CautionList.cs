using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The cautions of every sheet.</summary>
internal static class CautionList
{
    private const string Sign = "!";

    /// <summary>All of them, with their heading.</summary>
    public static IEnumerable<Block> Of(TextMeasure measure, double width) =>
        [
            Paragraph.Heading(Cautions.Heading, width),
            .. Cautions.All.SelectMany(caution => Paragraph.Remark(Sign, caution, TextStyle.Body, measure, width)),
        ];

    /// <summary>As one text with a sign before each: not smaller, but by a quarter shorter, where the page needs the room.</summary>
    public static IEnumerable<Block> RunOn(TextMeasure measure, double width)
    {
        var text = string.Concat(Cautions.All.Select(caution => $"{Sign} {caution} "));
        return
        [
            Paragraph.Heading(Cautions.Heading, width),
            .. measure.Wrap(text, TextStyle.Body, width).Select(
                (line, i) => Paragraph.Line(line, TextStyle.Body, 0) with
                {
                    Continues = i > 0,
                    Draw = (canvas, top) => DrawRunOn(canvas, line, top + TextStyle.Body.Ascent),
                }),
        ];
    }

    private static void DrawRunOn(Canvas canvas, string line, double baseline)
    {
        var x = 0.0;
        foreach (var (i, words) in line.Split(Sign).Index())
        {
            if (i > 0)
            {
                canvas.Text(Sign, TextStyle.Body with { Bold = true }, x, baseline);
                x += TextStyle.Body.Width(Sign);
            }

            canvas.Text(words, TextStyle.Body, x, baseline);
            x += TextStyle.Body.Width(words);
        }
    }
}
