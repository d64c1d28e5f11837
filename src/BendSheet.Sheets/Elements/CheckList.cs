using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;
using BendSheet.Sheets.Pdf;

namespace BendSheet.Sheets.Elements;

/// <summary>Distances to measure on the finished piece, with room to write what was measured.</summary>
internal static class CheckList
{
    private const double RowHeight = 6;

    /// <summary>To write a figure in.</summary>
    private const double LeastLine = 9;
    private const double Gap = 2;

    private static readonly TextStyle Style = TextStyle.Body with { Tabular = true };

    /// <summary>The distances, as many in a row as there is room for, and the box the piece fits into.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        yield return Paragraph.Heading("Check on the finished piece: straight-line distances (a corner is where two straights would meet)");
        var checks = sheet.Checks.Select(check => $"{check.From} to {check.To}: {check.Distance.Main}").ToList();
        var perRow = (int)Math.Clamp(width / (checks.Max(text => measure.Width(text, Style)) + LeastLine + (2 * Gap)), 1, 4);
        var column = width / perRow;
        foreach (var row in checks.Chunk(perRow))
        {
            yield return new(RowHeight, (canvas, top) =>
            {
                var baseline = top + Style.Ascent + 0.8;
                for (var i = 0; i < row.Length; i++)
                {
                    var left = i * column;
                    var text = row[i];
                    canvas.As(Role.ListItem, () => canvas.Text(text, Style, left, baseline));
                    canvas.Decoration(() => canvas.Line(left + measure.Width(text, Style) + Gap, baseline + 0.4, left + column - Gap, baseline + 0.4, Canvas.Thin));
                }
            })
            {
                Role = Role.Nothing,
            };
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
