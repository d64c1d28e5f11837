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
    private const int MostTogether = 12;

    private static readonly TextStyle Style = TextStyle.Small;

    /// <summary>The distances, as many in a row as there is room for, and the box the piece fits into.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        yield return Paragraph.Heading(CheckWords.Heading(sheet), width);
        var rows = Rows(CheckWords.Distances(sheet).Select(text => (text, Style.Width(text) + LeastLine + (2 * Gap))), width);

        // A few rows stay together: half of them in another column would be looked for.
        foreach (var together in rows.Chunk(rows.Count <= MostTogether ? MostTogether : 1))
        {
            yield return new(together.Length * RowHeight, (canvas, top) =>
            {
                foreach (var (i, row) in together.Index())
                {
                    Draw(row, canvas, top + (i * RowHeight), width);
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

    /// <summary>As many in a row as it has room for.</summary>
    private static List<List<(string Text, double Width)>> Rows(IEnumerable<(string Text, double Width)> checks, double width)
    {
        List<List<(string Text, double Width)>> rows = [];
        foreach (var check in checks)
        {
            if (rows.Count == 0 || rows[^1].Sum(one => one.Width) + check.Width > width)
            {
                rows.Add([]);
            }

            rows[^1].Add(check);
        }

        return rows;
    }

    /// <summary>What is left over in the row lengthens the lines to write on, except where a check stands alone.</summary>
    private static void Draw(List<(string Text, double Width)> row, Canvas canvas, double top, double width)
    {
        var (baseline, from) = (top + Style.Ascent + 0.8, 0.0);
        var more = row.Count == 1 ? LeastLine : (width - row.Sum(one => one.Width)) / row.Count;
        foreach (var (text, least) in row)
        {
            var (start, right) = (from, from + least + more);
            canvas.As(Role.ListItem, () => canvas.Text(text, Style, start, baseline));
            canvas.Decoration(() => canvas.Line(right - LeastLine - Gap - more, baseline + 0.4, right - Gap, baseline + 0.4, Canvas.Thin));
            from = right;
        }
    }
}
