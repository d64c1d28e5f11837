using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>Distances to measure on the finished piece, with room to write what was measured.</summary>
internal static class CheckList
{
    private const int PerRow = 4;
    private const double RowHeight = 6;

    /// <summary>The distances, four in a row, and the box the piece fits into.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        yield return Paragraph.Heading("Check on the finished piece: straight-line distances (a corner is where two straights would meet)");
        var column = width / PerRow;
        foreach (var row in sheet.Checks.Chunk(PerRow))
        {
            yield return new(RowHeight, (canvas, top) =>
            {
                var baseline = top + TextStyle.Cell.Ascent + 0.5;
                for (var i = 0; i < row.Length; i++)
                {
                    var text = $"{row[i].From} to {row[i].To}: {row[i].Distance.Main}";
                    canvas.Text(text, TextStyle.Body with { Tabular = true }, i * column, baseline);
                    var from = (i * column) + measure.Width(text, TextStyle.Body with { Tabular = true }) + 2;
                    canvas.Line(from, baseline + 0.4, ((i + 1) * column) - 4, baseline + 0.4, Canvas.Thin);
                }
            });
        }

        foreach (var block in Paragraph.Of($"Box over the outside, first straight along its length, first bend flat: {sheet.Envelope}", TextStyle.Body, measure, width))
        {
            yield return block;
        }
    }
}
