using System.Collections.Immutable;
using BendSheet.Core.Commissioning;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>A table to fill in by hand: words, boxes to tick and blanks to write on.</summary>
internal sealed class FormTable
{
    private const double Padding = 1.2;
    private const double TickBoxSize = 4;

    /// <summary>Added to what a text measures, so that rounding does not wrap it.</summary>
    private const double Slack = 0.1;

    /// <summary>A hand needs at least this width to write a name or a date.</summary>
    private const double LeastBlank = 21;

    /// <summary>A hand needs lines at least this far apart.</summary>
    private const double LeastRow = 6.6;

    /// <summary>A row of more lines is printed as several, so that none is taller than a page.</summary>
    private const int LinesInRow = 12;

    private static readonly TextStyle Head = TextStyle.Small;
    private static readonly TextStyle Style = TextStyle.Body;
    private static readonly TextStyle RowHead = TextStyle.Body with { Bold = true };

    private readonly double[] _edges;
    private readonly TextMeasure _measure;
    private readonly Block _heading;

    private FormTable(CommissioningSection section, TextMeasure measure, double width)
    {
        _measure = measure;
        double[] widths = Widths(section, measure, width);
        _edges = [0, .. widths.Select((_, i) => widths.Take(i + 1).Sum())];
        _heading = Heading(section.Columns);
    }

    /// <summary>Heading and rows; the heading is repeated on each page.</summary>
    public static IEnumerable<Block> Of(CommissioningSection section, TextMeasure measure, double width)
    {
        var table = new FormTable(section, measure, width);
        return [table._heading with { KeepWithNext = true }, .. section.Rows.SelectMany(table.Row)];
    }

    /// <summary>Boxes take what their heading needs, words what they need as far as there is room, and blanks the rest.</summary>
    private static double[] Widths(CommissioningSection section, TextMeasure measure, double width)
    {
        var columns = section.Columns.Select((head, i) => (Head: head, Cells: section.Rows.Select(row => row.Cells[i]).ToList())).ToList();
        double[] widths =
        [
            .. columns.Select(column => column.Cells.Exists(cell => cell.Kind == CellKind.Blank)
                ? Math.Max(LeastBlank, ForHeading(column.Head, measure))
                : ForHeading(column.Head, measure)),
        ];

        // The rest goes to words first, each column no more than it needs, the least demanding first.
        double[] needs = [.. columns.Select(column => column.Cells.Max(cell => Needed(cell, measure)))];
        var asking = Enumerable.Range(0, widths.Length).Where(i => needs[i] > widths[i]).OrderBy(i => needs[i] - widths[i]).ToList();
        foreach (var (served, i) in asking.Index())
        {
            widths[i] += Math.Min(needs[i] - widths[i], Math.Max(0, width - widths.Sum()) / (asking.Count - served));
        }

        int[] blanks = [.. Enumerable.Range(0, widths.Length).Where(i => columns[i].Cells.TrueForAll(cell => cell.Kind == CellKind.Blank))];
        int[] growing = blanks.Length > 0
            ? blanks
            : [.. Enumerable.Range(0, widths.Length).Where(i => columns[i].Cells.Exists(cell => cell.Kind == CellKind.Words))];
        var left = (width - widths.Sum()) / growing.Length;
        foreach (var i in growing)
        {
            widths[i] += left;
        }

        return widths;
    }

    /// <summary>The words of a heading stand in two lines at most.</summary>
    private static double ForHeading(string head, TextMeasure measure)
    {
        var words = measure.Printable(head).Split(' ');
        var narrowest = Enumerable.Range(1, words.Length)
            .Min(first => Math.Max(Head.Width(string.Join(' ', words[..first])), Head.Width(string.Join(' ', words[first..]))));
        return Math.Max(TickBoxSize, narrowest) + (2 * Padding) + Slack;
    }

    private static double Needed(CommissioningCell cell, TextMeasure measure) => cell.Kind switch
    {
        CellKind.Words => RowHead.Width(measure.Printable(cell.Words)) + (2 * Padding) + Slack,
        CellKind.Blank => LeastBlank + (cell.Words.Length == 0 ? 0 : Style.Width(cell.Words)),
        _ => 0,
    };

    private double Room(int column) => _edges[column + 1] - _edges[column] - (2 * Padding);

    private Block Heading(ImmutableArray<string> columns)
    {
        List<IReadOnlyList<string>> heads = [.. columns.Select((head, i) => _measure.Wrap(head, Head, Room(i)))];
        var height = (heads.Max(lines => lines.Count) * Head.LineHeight) + 1.5;
        return new(height, (canvas, top) =>
        {
            canvas.Decoration(() => Frame(canvas, top, height, Canvas.Thick));
            foreach (var (i, lines) in heads.Index())
            {
                canvas.As(Role.ColumnHead, () => Lines(canvas, lines, Head, i, top + 0.7));
            }
        })
        {
            Role = Role.Row,
        };
    }

    private IEnumerable<Block> Row(CommissioningRow row)
    {
        List<IReadOnlyList<string>> cells =
            [.. row.Cells.Select((cell, i) => cell.Words.Length == 0 ? [] : _measure.Wrap(cell.Words, StyleOf(i), Room(i)))];
        var lines = cells.Max(cell => cell.Count);
        for (var from = 0; from < Math.Max(1, lines); from += LinesInRow)
        {
            var first = from == 0;
            List<IReadOnlyList<string>> part = [.. cells.Select(cell => cell.Skip(first ? 0 : from).Take(LinesInRow).ToList())];
            var height = Math.Max(LeastRow, (part.Max(cell => cell.Count) * Style.LineHeight) + (2 * Padding));
            yield return new(
                height,
                (canvas, top) =>
                {
                    canvas.Decoration(() =>
                    {
                        Frame(canvas, top, height, Canvas.Thin);
                        foreach (var (i, _) in row.Cells.Index().Where(cell => first && cell.Item.Kind == CellKind.Box))
                        {
                            var x = _edges[i] + ((_edges[i + 1] - _edges[i] - TickBoxSize) / 2);
                            canvas.Box(x, top + ((height - TickBoxSize) / 2), TickBoxSize, TickBoxSize);
                        }
                    });
                    foreach (var (i, text) in part.Index())
                    {
                        canvas.As(i == 0 ? Role.RowHead : Role.Cell, () => Lines(canvas, text, StyleOf(i), i, top + Padding));
                    }
                },
                _heading)
            {
                Role = Role.Row,
            };
        }
    }

    private static TextStyle StyleOf(int column) => column == 0 ? RowHead : Style;

    private void Lines(Canvas canvas, IReadOnlyList<string> lines, TextStyle style, int column, double top)
    {
        foreach (var (i, line) in lines.Index())
        {
            canvas.Text(line, style, _edges[column] + Padding, top + style.Ascent + (i * style.LineHeight));
        }
    }

    private void Frame(Canvas canvas, double top, double height, double foot)
    {
        foreach (var x in _edges)
        {
            canvas.Line(x, top, x, top + height, Canvas.Thin);
        }

        canvas.Line(0, top, _edges[^1], top, Canvas.Thin);
        canvas.Line(0, top + height, _edges[^1], top + height, foot);
    }
}
