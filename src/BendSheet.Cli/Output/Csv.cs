using System.Buffers;
using System.Text;

namespace BendSheet.Cli.Output;

/// <summary>
/// Rows for a spreadsheet, quoted as RFC 4180 says. A text that a spreadsheet would take for a formula gets an apostrophe in front, which
/// is what spreadsheets have people type before a text that begins so, and what MITRE's CWE-1236 and OWASP's page on CSV injection
/// advise. Figures are left alone: a minus in front of one is a minus.
/// </summary>
internal static class Csv
{
    private static readonly SearchValues<char> NeedQuotes = SearchValues.Create(",\"\r\n");

    /// <summary>What a formula begins with, also as wide characters, and what may stand unseen before it.</summary>
    private static readonly SearchValues<char> FormulasBegin = SearchValues.Create("=+-@\t\r\n＝＋－＠");

    /// <summary>A cell of words that somebody has typed.</summary>
    public static string Text(string words) =>
        words.AsSpan().TrimStart(' ') is [var first, ..] && FormulasBegin.Contains(first) ? $"'{words}" : words;

    /// <summary>One row, with a line end after it.</summary>
    public static void AppendRow(StringBuilder text, IEnumerable<string> cells) =>
        text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Quoted(string cell) =>
        cell.AsSpan().ContainsAny(NeedQuotes) ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
