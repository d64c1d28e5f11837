using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>
/// The table at the middle of the sheet: a row for each bend in working order, its mark large, with a box to tick and room to write.
/// </summary>
internal static class BendTable
{
    private const double Padding = 1.2;
    private const double LeastRow = 8.8;
    private const double TickBoxSize = 4;
    private const double LeastToWrite = 14;

    /// <summary>A note of more lines than this goes on below its row, so that no row is taller than a page.</summary>
    private const int LinesInRow = 12;

    /// <summary>Heading and rows; the heading is repeated on each page.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        if (sheet.Rows.IsEmpty)
        {
            yield return Paragraph.Heading(SheetWords.NothingToBend);
            yield break;
        }

        var columns = Columns(sheet, width);
        var heading = HeadingRow(columns, measure);
        yield return Block.Space(1);
        yield return heading with { KeepWithNext = true };
        foreach (var row in sheet.Rows)
        {
            var notes = row.Remark.Length == 0 ? [] : Remark(row, measure, NoteWidth(columns) - (2 * Padding));
            if (row.TurnRound is { } turn)
            {
                foreach (var line in TurnRound(turn, measure, width, heading))
                {
                    yield return line;
                }
            }

            yield return Row(columns, row, [.. notes.Take(LinesInRow)], heading);
            foreach (var line in notes.Skip(LinesInRow))
            {
                yield return new(
                    TextStyle.Small.LineHeight,
                    (canvas, top) => canvas.As(
                        Role.Cell, () => canvas.Text(line, TextStyle.Small, NoteLeft(columns) + Padding, top + TextStyle.Small.Ascent)),
                    heading)
                {
                    Role = Role.Row,
                };
            }
        }

        yield return Block.Space(0.8);
        foreach (var block in Paragraph.Of(SheetWords.BelowTable, TextStyle.Small, measure, width, indent: 1))
        {
            yield return block;
        }
    }

    /// <summary>Between two rows, across the table: nobody may make the next bend without having done it.</summary>
    private static IEnumerable<Block> TurnRound(string text, TextMeasure measure, double width, Block heading)
    {
        var style = TextStyle.Body with { Bold = true };
        return measure.Wrap(text, style, width - (2 * Padding)).Select(line => new Block(
            style.LineHeight + 0.8,
            (canvas, top) => canvas.As(Role.Cell, () => canvas.Text(line, style, Padding, top + 0.4 + style.Ascent)),
            heading,
            KeepWithNext: true)
        {
            Role = Role.Row,
        });
    }

    /// <summary>The tool, where it is another one, on lines of its own.</summary>
    private static IReadOnlyList<string> Remark(BendRow row, TextMeasure measure, double width) =>
    [
        .. row.ToolInWords is { } tool ? measure.Wrap(tool, TextStyle.Small with { Bold = true }, width) : [],
        .. row.Note is { } note ? measure.Wrap(note, TextStyle.Small, width) : [],
    ];

    /// <summary>Each column at least as wide as its longest figure in the smallest type; what is left is to write in.</summary>
    private static List<Column> Columns(SheetContent sheet, double width)
    {
        var all = BendColumn.Of(sheet);
        List<Column> columns = [new(Kind.Tick, string.Empty, 6, _ => string.Empty)];
        foreach (var column in all)
        {
            if (column is { OnPage.Length: > 0, Figure: not BendFigure.Remark })
            {
                var (kind, least) = Look(column.Figure);
                var longest = sheet.Rows.Max(row => TextStyle.Small.Width(column.Text(row)));
                columns.Add(new(kind, column.OnPage, Math.Max(least, longest + (2 * Padding)), column.Text));
            }
        }

        var left = width - columns.Sum(column => column.Width);
        if (all.FirstOrDefault(column => column.Figure == BendFigure.Remark) is { } note)
        {
            columns.Add(new(Kind.Note, note.OnPage, left - LeastToWrite, _ => string.Empty));
            left = LeastToWrite;
        }

        columns.Add(new(Kind.Write, BendColumn.AsBent, left, _ => string.Empty));
        return columns;
    }

    /// <summary>How a figure is drawn, and the least width of its column.</summary>
    private static (Kind Kind, double Least) Look(BendFigure figure) => figure switch
    {
        BendFigure.Number => (Kind.Number, 9),
        BendFigure.Mark => (Kind.Mark, 25),
        BendFigure.Held => (Kind.Held, 9),
        BendFigure.Rotate => (Kind.Figure, 17),
        BendFigure.Dial => (Kind.Figure, 12),
        BendFigure.Pull => (Kind.Figure, 12.5),
        BendFigure.Swing => (Kind.Figure, 15.5),
        _ => (Kind.Figure, 14),
    };

    private static double NoteLeft(List<Column> columns) =>
        columns.TakeWhile(column => column.Kind != Kind.Note).Sum(column => column.Width);

    private static double NoteWidth(List<Column> columns) => columns.Find(column => column.Kind == Kind.Note)!.Width;

    private static Block HeadingRow(List<Column> columns, TextMeasure measure)
    {
        var style = TextStyle.Small;
        var wrapped = columns.ConvertAll(column => measure.Wrap(column.Heading, style, column.Width - 1));
        var height = (wrapped.Max(lines => lines.Count) * style.LineHeight) + 1.5;
        return new(height, (canvas, top) =>
        {
            canvas.Decoration(() => Frame(canvas, columns, top, height, Canvas.Thick));
            var x = 0.0;
            for (var i = 0; i < columns.Count; i++)
            {
                var (lines, middle) = (wrapped[i], x + (columns[i].Width / 2));
                canvas.As(Role.ColumnHead, () =>
                {
                    for (var line = 0; line < lines.Count; line++)
                    {
                        canvas.Text(lines[line], style, middle, top + 0.7 + style.Ascent + (line * style.LineHeight), Align.Centre);
                    }
                });
                x += columns[i].Width;
            }
        })
        {
            Role = Role.Row,
        };
    }

    private static Block Row(List<Column> columns, BendRow row, List<string> notes, Block heading)
    {
        var height = Math.Max(LeastRow, (notes.Count * TextStyle.Small.LineHeight) + (2 * Padding));
        return new(
            height,
            (canvas, top) =>
            {
                canvas.Decoration(() =>
                {
                    Frame(canvas, columns, top, height, Canvas.Medium);
                    canvas.Box((columns[0].Width - TickBoxSize) / 2, top + ((height - TickBoxSize) / 2), TickBoxSize, TickBoxSize);
                });
                var x = 0.0;
                foreach (var column in columns)
                {
                    var left = x;
                    canvas.As(
                        column.Kind == Kind.Number ? Role.RowHead : Role.Cell,
                        () => DrawCell(canvas, column, row, notes, left, top, height));
                    x += column.Width;
                }
            },
            heading)
        {
            Role = Role.Row,
        };
    }

    private static void DrawCell(Canvas canvas, Column column, BendRow row, List<string> notes, double x, double top, double height)
    {
        var text = column.Text(row);
        var right = x + column.Width - Padding;
        var middle = top + (height / 2);
        switch (column.Kind)
        {
            case Kind.Number or Kind.Held:
                canvas.Text(text, TextStyle.Mark, x + (column.Width / 2), middle + (TextStyle.Mark.CapHeight / 2), Align.Centre);
                break;
            case Kind.Mark:
                canvas.Text(text, TextStyle.Mark.Fitting(text, column.Width - (2 * Padding)), right, middle + 0.4, Align.Right);
                canvas.Text(row.MarkOther, TextStyle.Small, right, middle + 3.6, Align.Right);
                break;
            case Kind.Figure:
                var figure = TextStyle.Cell.Fitting(text, column.Width - (2 * Padding));
                canvas.Text(text, figure, right, middle + (figure.CapHeight / 2), Align.Right);
                break;
            case Kind.Note:
                var first = middle - (notes.Count * TextStyle.Small.LineHeight / 2) + TextStyle.Small.Ascent;
                for (var line = 0; line < notes.Count; line++)
                {
                    // Another tool has another radius and another line to mark under: nobody may overlook it.
                    var style = line == 0 && row.Tool is not null ? TextStyle.Small with { Bold = true } : TextStyle.Small;
                    canvas.Text(notes[line], style, x + Padding, first + (line * TextStyle.Small.LineHeight));
                }

                break;
            default:
                break;
        }
    }

    private static void Frame(Canvas canvas, List<Column> columns, double top, double height, double foot)
    {
        var x = 0.0;
        canvas.Line(0, top, 0, top + height, Canvas.Thin);
        foreach (var column in columns)
        {
            x += column.Width;
            canvas.Line(x, top, x, top + height, Canvas.Thin);
        }

        canvas.Line(0, top, x, top, Canvas.Thin);
        canvas.Line(0, top + height, x, top + height, foot);
    }

    private enum Kind
    {
        Tick,
        Number,
        Held,
        Mark,
        Figure,
        Note,
        Write,
    }

    private sealed record Column(Kind Kind, string Heading, double Width, Func<BendRow, string> Text);
}
