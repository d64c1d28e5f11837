using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The rows of a section of the cover: what, and how much of it at the right, the figures one below the other.</summary>
internal static class CoverRows
{
    private const double TickBoxSize = 3.4;
    private const double SignWidth = 7;
    private const double Gap = 4;

    /// <summary>The figure never takes more of the width than this, whatever it says.</summary>
    private const double MostOfWidth = 0.5;

    private static readonly TextStyle Style = TextStyle.Cell;

    /// <summary>The rows, a block for each line of a row's text; its figure stands beside the first.</summary>
    public static IEnumerable<Block> Of(CoverSection section, TextMeasure measure, double width)
    {
        var other = section.Rows.Max(row => row.Other.Length == 0 ? 0 : TextStyle.Small.Width(row.Other) + Gap);
        return section.Rows.SelectMany(row => Of(row, section.ToTick, other, measure, width));
    }

    private static IEnumerable<Block> Of(CoverRow row, bool toTick, double otherWidth, TextMeasure measure, double width)
    {
        var indent = toTick ? SignWidth : 0;
        var figure = measure.Printable(row.HowMuch);
        var figureStyle = (Style with { Bold = true }).Fitting(figure, width * MostOfWidth);
        var lines = measure.Wrap(row.What, Style, width - indent - figureStyle.Width(figure) - otherWidth - Gap);
        for (var i = 0; i < lines.Count; i++)
        {
            var (first, line) = (i == 0, lines[i]);
            yield return new(
                Style.LineHeight + (i == lines.Count - 1 ? 1 : 0),
                (canvas, top) => canvas.As(Role.Cell, () =>
                {
                    var baseline = top + Style.Ascent;
                    if (first && toTick)
                    {
                        canvas.Decoration(() => canvas.TickBox(0.2, baseline, TickBoxSize));
                    }

                    canvas.Text(line, Style, indent, baseline);
                    if (first)
                    {
                        canvas.Text(figure, figureStyle, canvas.Width - otherWidth, baseline, Align.Right);
                        canvas.Text(row.Other, TextStyle.Small, canvas.Width, baseline, Align.Right);
                    }
                }))
            {
                Role = Role.Row,
                KeepWithNext = i < lines.Count - 1,
            };
        }
    }
}
