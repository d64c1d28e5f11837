using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Elements;

/// <summary>
/// The table at the middle of the sheet: a row for each bend in working order, what the hands set large, with a box to
/// tick and room to write.
/// </summary>
internal static class BendTable
{
    private const double Padding = 1.2;
    private const double LeastRow = 7.7;
    private const double TickBoxSize = 4;
    private const double LeastToWrite = 14;

    /// <summary>Of the clock face with the pen line.</summary>
    private const double ClockRadius = 3.3;

    /// <summary>Below the notes of a row.</summary>
    private const double NoteFoot = 0.6;

    /// <summary>A note of more lines than this goes on below its row, so that no row is taller than a page.</summary>
    private const int LinesInRow = 12;

    private static readonly TextStyle NoteStyle = TextStyle.Body;

    /// <summary>Heading and rows; the heading is repeated on each page.</summary>
    public static IEnumerable<Block> Of(SheetContent sheet, TextMeasure measure, double width)
    {
        if (sheet.Rows.IsEmpty)
        {
            yield return Paragraph.Heading(SheetWords.NothingToBend);
            yield break;
        }

        var columns = Columns(sheet, width);
        var hasNotes = sheet.Rows.Any(row => row.Remark.Length > 0);
        var heading = HeadingRow(columns, hasNotes, measure);
        yield return Block.Space(1);
        yield return heading with { KeepWithNext = true };
        foreach (var row in sheet.Rows)
        {
            if (row.TurnRound is { } turn)
            {
                foreach (var line in TurnRound(turn, measure, width, heading))
                {
                    yield return line;
                }
            }

            var notes = Remark(row, measure, width - NoteLeft(columns) - (2 * Padding));
            yield return Row(columns, row, hasNotes ? [.. notes.Take(LinesInRow)] : null, heading);
            foreach (var (line, style) in notes.Skip(LinesInRow))
            {
                yield return new(
                    style.LineHeight,
                    (canvas, top) => canvas.As(
                        Role.Cell, () => canvas.Text(line, style, NoteLeft(columns) + Padding, top + style.Ascent)),
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

    /// <summary>
    /// On lines below the figures. Another tool has another radius and another line to mark under: nobody may overlook it.
    /// </summary>
    private static List<(string Line, TextStyle Style)> Remark(BendRow row, TextMeasure measure, double width)
    {
        var style = NoteStyle with { Bold = row.Tool is not null };
        return row.Remark.Length == 0 ? [] : [.. measure.Wrap(row.Remark, style, width).Select(line => (line, style))];
    }

    /// <summary>
    /// What the hands set, then room to write, then the rest in small type; each column at least as wide as its longest figure in the
    /// smallest type.
    /// </summary>
    private static List<Column> Columns(SheetContent sheet, double width)
    {
        List<Column> columns = [new(Kind.Tick, string.Empty, 6, _ => string.Empty)];
        foreach (var column in BendColumn.Of(sheet))
        {
            if (column is { OnPage.Length: > 0, Figure: not BendFigure.Remark })
            {
                var (kind, least) = Look(column.Figure);
                var longest = sheet.Rows.Max(row => TextStyle.Small.Width(column.Text(row)));
                columns.Add(new(kind, column.OnPage, Math.Max(least, longest + (2 * Padding)), column.Text));
            }
        }

        var left = Math.Max(LeastToWrite, width - columns.Sum(column => column.Width));
        columns.Insert(columns.FindIndex(column => column.Kind == Kind.Small), new(Kind.Write, BendColumn.AsBent, left, _ => string.Empty));
        return columns;
    }

    /// <summary>How a figure is drawn, and the least width of its column.</summary>
    private static (Kind Kind, double Least) Look(BendFigure figure) => figure switch
    {
        BendFigure.Number => (Kind.Number, 9),
        BendFigure.Mark => (Kind.Mark, 25),
        BendFigure.LineAt => (Kind.Clock, 26),
        BendFigure.Pull => (Kind.Figure, 18),
        BendFigure.Held => (Kind.Held, 13),
        BendFigure.Bend => (Kind.Small, 13.5),
        BendFigure.StraightAfter => (Kind.Small, 15),
        BendFigure.Swing => (Kind.Small, 14),
        BendFigure.Rotate => (Kind.Small, 15.5),
        _ => (Kind.Small, 11.5),
    };

    /// <summary>Below the mark.</summary>
    private static double NoteLeft(List<Column> columns) =>
        columns.TakeWhile(column => column.Kind != Kind.Mark).Sum(column => column.Width);

    private static Block HeadingRow(List<Column> columns, bool hasNotes, TextMeasure measure)
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

            if (hasNotes)
            {
                // A note below the figures needs no heading; this empty one is for readers that count cells.
                canvas.As(Role.ColumnHead, () => { });
            }
        })
        {
            Role = Role.Row,
        };
    }

    /// <param name="columns">Of the table.</param>
    /// <param name="row">What stands in it.</param>
    /// <param name="notes">Below its figures; null where no row of the table has any.</param>
    /// <param name="heading">Of the columns.</param>
    private static Block Row(List<Column> columns, BendRow row, List<(string Line, TextStyle Style)>? notes, Block heading)
    {
        var noteHeight = notes is { Count: > 0 } ? notes.Sum(note => note.Style.LineHeight) + NoteFoot : 0;
        return new(
            LeastRow + noteHeight,
            (canvas, top) =>
            {
                canvas.Decoration(() =>
                {
                    Frame(canvas, columns, top, LeastRow, noteHeight > 0 ? Canvas.Thin : Canvas.Medium);
                    Outline(canvas, columns.Sum(column => column.Width), top + LeastRow, noteHeight);
                    canvas.Box((columns[0].Width - TickBoxSize) / 2, top + ((LeastRow - TickBoxSize) / 2), TickBoxSize, TickBoxSize);
                });
                var x = 0.0;
                foreach (var column in columns)
                {
                    var left = x;
                    canvas.As(column.Kind == Kind.Number ? Role.RowHead : Role.Cell, () => DrawCell(canvas, column, row, left, top));
                    x += column.Width;
                }

                if (notes is not null)
                {
                    canvas.As(Role.Cell, () => DrawNotes(canvas, notes, NoteLeft(columns) + Padding, top + LeastRow));
                }
            },
            heading)
        {
            Role = Role.Row,
        };
    }

    private static void DrawCell(Canvas canvas, Column column, BendRow row, double x, double top)
    {
        var text = column.Text(row);
        var right = x + column.Width - Padding;
        var middle = top + (LeastRow / 2);
        switch (column.Kind)
        {
            case Kind.Number:
                canvas.Text(text, TextStyle.Mark, x + (column.Width / 2), middle + (TextStyle.Mark.CapHeight / 2), Align.Centre);
                break;
            case Kind.Held:
                canvas.Text(text, TextStyle.Set, x + (column.Width / 2), middle + (TextStyle.Set.CapHeight / 2), Align.Centre);
                break;
            case Kind.Mark:
                canvas.Text(text, TextStyle.Mark.Fitting(text, column.Width - (2 * Padding)), right, middle + 0.3, Align.Right);
                canvas.Text(row.MarkOther, TextStyle.Small, right, middle + 3.4, Align.Right);
                break;
            case Kind.Clock:
                ClockFace.Draw(canvas, new(x + Padding + ClockRadius, middle + (0.1 * ClockRadius)), ClockRadius, row.LineAt);
                canvas.Text(row.LineClock, TextStyle.Set, right, middle + 0.3, Align.Right);
                canvas.Text(row.LineFigure, TextStyle.Small, right, middle + 3.4, Align.Right);
                break;
            case Kind.Figure or Kind.Small:
                var style = column.Kind == Kind.Small ? TextStyle.Small : TextStyle.Set.Fitting(text, column.Width - (2 * Padding));
                canvas.Text(text, style, right, middle + (style.CapHeight / 2), Align.Right);
                break;
            default:
                break;
        }
    }

    private static void DrawNotes(Canvas canvas, IEnumerable<(string Line, TextStyle Style)> notes, double x, double top)
    {
        foreach (var (line, style) in notes)
        {
            canvas.Text(line, style, x, top + style.Ascent);
            top += style.LineHeight;
        }
    }

    /// <summary>Around the notes of a row.</summary>
    private static void Outline(Canvas canvas, double width, double top, double height)
    {
        if (height > 0)
        {
            canvas.Line(0, top, 0, top + height, Canvas.Thin);
            canvas.Line(width, top, width, top + height, Canvas.Thin);
            canvas.Line(0, top + height, width, top + height, Canvas.Medium);
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
        Mark,
        Clock,
        Figure,
        Held,
        Write,
        Small,
    }

    private sealed record Column(Kind Kind, string Heading, double Width, Func<BendRow, string> Text);
}
