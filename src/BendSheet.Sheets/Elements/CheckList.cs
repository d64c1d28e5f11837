using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>Distances to measure on the finished piece, with room to write what was measured.</summary>
internal static class CheckList
{
    private const double RowHeight = 6;

    /// <summary>To write a figure in.</summary>
    private const double LeastLine = 9;
    private const double Gap = 1.5;
    private const int MostInRow = 5;

    private static readonly TextStyle Style = TextStyle.Small;

    /// <summary>The distances, as many in a row as there is room for, and the box the piece fits into.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        // Said once where all are taken from one end.
        var from = sheet.Checks.Select(check => check.From).Distinct(StringComparer.Ordinal).ToList();
        yield return Paragraph.Heading($"Check on the finished piece: straight-line distances{(from is [var one] ? $" from {one}" : string.Empty)} (a corner is where two straights would meet)");
        var checks = sheet.Checks.Select(check => $"{(from.Count == 1 ? "to" : $"{check.From} to")} {check.To}: {check.Distance.Main}").ToList();
        var widths = checks.ConvertAll(text => measure.Width(text, Style) + LeastLine + (2 * Gap));
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
                    canvas.Text(text, Style, left, baseline);
                    canvas.Line(right - LeastLine - Gap - (row.Length == perRow ? more : 0), baseline + 0.4, right - Gap, baseline + 0.4, Canvas.Thin);
                    left = right;
                }
            });
        }

        foreach (var line in new[] { $"Box over the outside, along X × Y × Z of the views: {sheet.Envelope}", sheet.Levers }.OfType<string>())
        {
            foreach (var block in Paragraph.Of(line, TextStyle.Body, measure, width))
            {
                yield return block;
            }
        }
    }
}
