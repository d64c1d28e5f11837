using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>Distances to measure on the finished piece, with room to write what was measured.</summary>
internal static class CheckList
{
    private const double RowHeight = 5;

    /// <summary>To write a figure in.</summary>
    private const double LeastLine = 9;
    private const double Gap = 1.5;
    private const int MostInRow = 5;

    private static readonly TextStyle Style = TextStyle.Small;

    /// <summary>The distances, as many in a row as there is room for, and the box the piece fits into.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        yield return Paragraph.Heading(CheckWords.Heading(sheet), width);
        var checks = CheckWords.Distances(sheet).ToList();
        var widths = checks.ConvertAll(text => Style.Width(text) + LeastLine + (2 * Gap));
        var perRow = Enumerable.Range(1, MostInRow).Last(count => count == 1 || widths.Chunk(count).All(row => row.Sum() <= width));
        foreach (var row in checks.Zip(widths).Chunk(perRow))
        {
            // What is left in the row goes to the lines to write on.
            var more = (width - row.Sum(check => check.Second)) / perRow;
            yield return new(RowHeight, (canvas, top) =>
            {
                var baseline = top + Style.Ascent + 0.8;
                var left = 0.0;
                foreach (var (text, least) in row)
                {
                    var right = left + least + (row.Length == perRow ? more : 0);
                    var from = left;
                    canvas.As(Role.ListItem, () => canvas.Text(text, Style, from, baseline));
                    canvas.Decoration(
                        () => canvas.Line(
                            right - LeastLine - Gap - (row.Length == perRow ? more : 0), baseline + 0.4, right - Gap, baseline
                                + 0.4, Canvas.Thin));
                    left = right;
                }
            })
            {
                Role = Role.Nothing,
            };
        }

        foreach (var block in Paragraph.Of(string.Join(' ', CheckWords.Below(sheet)), TextStyle.Body, measure, width))
        {
            yield return block;
        }
    }
}
