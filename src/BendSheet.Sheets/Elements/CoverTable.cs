using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>The lines of the cover: a row for each, with a box to tick that is ticked where the line is made already.</summary>
internal static class CoverTable
{
    private const double Padding = 1.2;
    private const double TickBoxSize = 4;
    private const double TickWidth = 9;
    private const double TubeWidth = 48;
    private const double SheetWidth = 17;
    private const double CutWidth = 30;
    private const double LeastRow = 9;
    private const int CutColumn = 3;

    /// <summary>A row of more lines is printed as several, so that none is taller than a page.</summary>
    private const int LinesInRow = 12;

    private static readonly TextStyle Name = TextStyle.Cell with { Bold = true };

    /// <summary>Heading and rows; the heading is repeated on each page.</summary>
    public static IEnumerable<Block> Of(CoverContent cover, TextMeasure measure, double width)
    {
        double[] edges =
        [
            0, TickWidth, width - SheetWidth - CutWidth - TubeWidth, width - SheetWidth - CutWidth, width - SheetWidth, width,
        ];
        var heading = Heading(edges);
        yield return heading with { KeepWithNext = true };
        foreach (var line in cover.LinesOnPage)
        {
            var room = edges[2] - edges[1] - (2 * Padding);
            (string Text, TextStyle Style)[] what =
            [
                .. measure.Wrap(line.NameOnPage, Name, room).Select(text => (text, Name)),
                .. measure.Wrap(line.EndsOnPage, TextStyle.Small, room).Select(text => (text, TextStyle.Small)),
            ];
            (string Text, TextStyle Style)[] tube =
            [
                .. measure.Wrap(line.Tube, TextStyle.Small, TubeWidth - (2 * Padding)).Select(text => (text, TextStyle.Small)),
            ];
            for (var from = 0; from < Math.Max(what.Length, tube.Length); from += LinesInRow)
            {
                yield return Row(
                    from == 0 ? line : null, [.. what.Skip(from).Take(LinesInRow)], [.. tube.Skip(from).Take(LinesInRow)], edges, heading);
            }
        }
    }

    private static Block Heading(double[] edges)
    {
        var style = TextStyle.Small;
        var heads = CoverWords.Headings;
        var height = style.LineHeight + 1.5;
        return new(height, (canvas, top) =>
        {
            canvas.Decoration(() => Frame(canvas, edges, top, height, Canvas.Thick));
            for (var i = 0; i < heads.Count; i++)
            {
                // Over figures that end at the right, and words that begin at the left.
                var (head, x, align) = i == CutColumn
                    ? (heads[i], edges[i + 1] - Padding, Align.Right)
                    : (heads[i], edges[i] + Padding, Align.Left);
                canvas.As(Role.ColumnHead, () => canvas.Text(head, style, x, top + 0.7 + style.Ascent, align));
            }
        })
        {
            Role = Role.Row,
        };
    }

    /// <param name="line">Null where the row goes on with more text of the line before.</param>
    /// <param name="what">Name and ends.</param>
    /// <param name="tube">Size and material.</param>
    /// <param name="edges">Of the columns.</param>
    /// <param name="heading">To be repeated.</param>
    private static Block Row(
        CoverLine? line, (string Text, TextStyle Style)[] what, (string Text, TextStyle Style)[] tube, double[] edges, Block heading)
    {
        var height = Math.Max(line is null ? 0 : LeastRow, Math.Max(HeightOf(what), HeightOf(tube)) + (2 * Padding));
        return new(
            height,
            (canvas, top) =>
            {
                canvas.Decoration(() =>
                {
                    Frame(canvas, edges, top, height, Canvas.Medium);
                    if (line is not null)
                    {
                        canvas.Box((TickWidth - TickBoxSize) / 2, top + Padding + 0.6, TickBoxSize, TickBoxSize);
                    }
                });
                var tick = line is { State: LineState.Made } ? "✓" : string.Empty;
                var tickBase = top + Padding + 0.6 + (TickBoxSize / 2) + (Name.CapHeight / 2);
                canvas.As(Role.Cell, () => canvas.Text(tick, Name, TickWidth / 2, tickBase, Align.Centre));
                canvas.As(Role.RowHead, () => Lines(canvas, what, edges[1] + Padding, top + Padding));
                canvas.As(Role.Cell, () => Lines(canvas, tube, edges[2] + Padding, top + Padding));
                if (line is null)
                {
                    return;
                }

                var (cut, sheet) = (line.CutLength ?? Figure.Unknown, line.Fingerprint ?? SheetWriter.Dash);
                var cutStyle = Name.Fitting(cut.Main, CutWidth - (2 * Padding));
                canvas.As(Role.Cell, () =>
                {
                    canvas.Text(cut.Main, cutStyle, edges[4] - Padding, top + Padding + cutStyle.Ascent, Align.Right);
                    var otherBase = top + Padding + Name.LineHeight + TextStyle.Small.Ascent;
                    canvas.Text(cut.Other, TextStyle.Small, edges[4] - Padding, otherBase, Align.Right);
                });
                canvas.As(Role.Cell, () => canvas.Text(sheet, TextStyle.Small, edges[4] + Padding, top + Padding + Name.Ascent));
            },
            heading)
        {
            Role = Role.Row,
        };
    }

    private static double HeightOf((string Text, TextStyle Style)[] lines) => lines.Sum(line => line.Style.LineHeight);

    private static void Lines(Canvas canvas, (string Text, TextStyle Style)[] lines, double x, double top)
    {
        foreach (var (text, style) in lines)
        {
            canvas.Text(text, style, x, top + style.Ascent);
            top += style.LineHeight;
        }
    }

    private static void Frame(Canvas canvas, double[] edges, double top, double height, double foot)
    {
        foreach (var x in edges)
        {
            canvas.Line(x, top, x, top + height, Canvas.Thin);
        }

        canvas.Line(0, top, edges[^1], top, Canvas.Thin);
        canvas.Line(0, top + height, edges[^1], top + height, foot);
    }
}
