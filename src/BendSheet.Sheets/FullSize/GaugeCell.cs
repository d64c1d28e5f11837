using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.FullSize;

/// <summary>A drawing with its words above it, to stand beside others.</summary>
/// <param name="Width">With the words.</param>
/// <param name="Height">With the words.</param>
/// <param name="Draw">Draws it with its top at the given height, at the left of the canvas.</param>
internal sealed record GaugeCell(double Width, double Height, Action<Canvas, double> Draw)
{
    private const double LeastWidth = 42;
    private const double Gap = 6;

    /// <summary>A drawing under a large figure and some lines of words.</summary>
    /// <param name="figure">Large.</param>
    /// <param name="words">Small.</param>
    /// <param name="outline">Points that the drawing does not reach beyond.</param>
    /// <param name="measure">Measures texts.</param>
    /// <param name="draw">Draws it, given where its origin is.</param>
    public static GaugeCell Of(
        string figure, IEnumerable<string> words, IReadOnlyList<PagePoint> outline, TextMeasure measure, Action<Canvas, PagePoint> draw)
    {
        var (left, top) = (outline.Min(point => point.X), outline.Min(point => point.Y));
        var width = Math.Max(outline.Max(point => point.X) - left, LeastWidth);
        var height = outline.Max(point => point.Y) - top;
        var middle = (left + outline.Max(point => point.X)) / 2;
        var lines = words.SelectMany(text => measure.Wrap(text, TextStyle.Small, width)).ToList();
        var wordsHeight = TextStyle.Mark.LineHeight + (lines.Count * TextStyle.Small.LineHeight) + 2;
        return new(width, wordsHeight + height, (canvas, cellTop) =>
        {
            canvas.Text(figure, TextStyle.Mark, width / 2, cellTop + TextStyle.Mark.Ascent, Align.Centre);
            for (var i = 0; i < lines.Count; i++)
            {
                canvas.Text(
                    lines[i], TextStyle.Small, width / 2, cellTop + TextStyle.Mark.LineHeight + TextStyle.Small.Ascent
                        + (i * TextStyle.Small.LineHeight), Align.Centre);
            }

            draw(canvas, new((width / 2) - middle, cellTop + wordsHeight - top));
        });
    }

    /// <summary>Cells side by side, as many as there is room for, in the order given.</summary>
    public static IEnumerable<Block> Rows(IEnumerable<GaugeCell> cells, double width)
    {
        var row = new List<GaugeCell>();
        var used = 0.0;
        foreach (var cell in cells)
        {
            if (row.Count > 0 && used + cell.Width > width)
            {
                yield return Row(row);
                row = [];
                used = 0;
            }

            row.Add(cell);
            used += cell.Width + Gap;
        }

        if (row.Count > 0)
        {
            yield return Row(row);
        }
    }

    private static Block Row(List<GaugeCell> cells) => new(cells.Max(cell => cell.Height) + Gap, (canvas, top) =>
    {
        foreach (var cell in cells)
        {
            cell.Draw(canvas, top);
            canvas = canvas.MovedRight(cell.Width + Gap);
        }
    });
}
