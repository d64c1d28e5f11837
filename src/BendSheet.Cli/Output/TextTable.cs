using System.Text;

namespace BendSheet.Cli.Output;

/// <summary>A column of a table of characters: figures end under one another, words begin under one another.</summary>
/// <param name="Heading">Null where the table has no row of headings.</param>
/// <param name="Cells">One for each row.</param>
/// <param name="IsText">Words, which may be broken over several rows; figures never are.</param>
internal sealed record TextColumn(string? Heading, IReadOnlyList<string> Cells, bool IsText)
{
    /// <summary>Of the widest cell.</summary>
    public int Width { get; private init; } = Cells.Select(cell => cell.Length).Append(Heading?.Length ?? 0).Max();

    /// <summary>A column of words.</summary>
    public static TextColumn Words(string? heading, IEnumerable<string> cells) => new(heading, [.. cells], IsText: true);

    /// <summary>A column of figures.</summary>
    public static TextColumn Figures(string? heading, IEnumerable<string> cells) => new(heading, [.. cells], IsText: false);

    /// <summary>The same column with its words broken to a width, but never inside a word.</summary>
    public TextColumn Within(int width) => this with { Width = Math.Min(Width, Math.Max(width, LongestWord)) };

    private int LongestWord => Cells.Append(Heading ?? string.Empty).SelectMany(cell => cell.Split(' ')).Max(word => word.Length);

    /// <summary>A cell, as wide as the column.</summary>
    public string Padded(string cell) => IsText ? cell.PadRight(Width) : cell.PadLeft(Width);
}

/// <summary>A table of characters, for a terminal or for a file.</summary>
internal static class TextTable
{
    /// <summary>Between columns, and before the first.</summary>
    public const string Gap = "  ";

    /// <summary>How wide columns are side by side.</summary>
    public static int Width(string indent, IReadOnlyCollection<TextColumn> columns) =>
        indent.Length + columns.Sum(column => column.Width) + (Gap.Length * (columns.Count - 1));

    /// <summary>The whole table; where it is too wide, the words in its widest columns are broken over several rows.</summary>
    /// <param name="text">To write to.</param>
    /// <param name="indent">Before each row.</param>
    /// <param name="columns">At least one.</param>
    /// <param name="width">That it should fit in; null as wide as it comes.</param>
    public static void Append(StringBuilder text, string indent, IReadOnlyList<TextColumn> columns, int? width)
    {
        columns = width is { } most ? Fitted(indent, columns, most) : columns;
        if (columns[0].Heading is not null)
        {
            AppendRow(text, indent, columns, column => column.Heading!);
        }

        for (var row = 0; row < columns[0].Cells.Count; row++)
        {
            AppendRow(text, indent, columns, column => column.Cells[row]);
        }
    }

    /// <summary>One row; as many rows as the cell with the most words needs in its column.</summary>
    public static void AppendRow(StringBuilder text, string indent, IReadOnlyList<TextColumn> columns, Func<TextColumn, string> cell)
    {
        List<List<string>> cells = [.. columns.Select(column => Broken(column, cell(column)))];
        for (var part = 0; part < cells.Max(rows => rows.Count); part++)
        {
            var parts = columns.Select((column, at) => column.Padded(part < cells[at].Count ? cells[at][part] : string.Empty));
            text.Append((indent + string.Join(Gap, parts)).TrimEnd()).Append('\n');
        }
    }

    private static List<string> Broken(TextColumn column, string cell) =>
        cell.Length <= column.Width ? [cell] : [.. Wrapped.Rows(cell, column.Width)];

    /// <summary>The widest column of words gives way first, down to the next widest, until the table fits or no column can.</summary>
    private static TextColumn[] Fitted(string indent, IReadOnlyList<TextColumn> columns, int width)
    {
        var fitted = columns.ToArray();
        for (var over = Width(indent, fitted) - width; over > 0; over = Width(indent, fitted) - width)
        {
            var widths = fitted.Select((column, at) => (At: at, column.Width)).Where(one => fitted[one.At].IsText)
                .OrderByDescending(one => one.Width).ToList();
            var given = widths.FirstOrDefault(one => fitted[one.At].Within(one.Width - 1).Width < one.Width, (At: -1, Width: 0));
            if (given.At < 0)
            {
                break;
            }

            fitted[given.At] = fitted[given.At].Within(given.Width - 1);
        }

        return fitted;
    }
}
