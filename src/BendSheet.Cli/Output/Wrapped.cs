using System.Text;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>Sentences on a terminal, broken between words instead of inside them.</summary>
public static class Wrapped
{
    private const string Further = "  ";

    /// <summary>On less than this nothing can be read, whatever is broken where.</summary>
    private const int Narrowest = 20;

    /// <summary>
    /// Every line that is wider than the terminal is broken at spaces; the rest is indented two characters further than its beginning.
    /// </summary>
    /// <param name="text">Lines, with or without an end after the last.</param>
    /// <param name="width">In columns; null leaves the text as it is.</param>
    public static string Text(string text, int? width)
    {
        if (width is not { } asked || Math.Max(asked, Narrowest) is var columns && !text.Split('\n').Any(line => line.Length > columns))
        {
            return text;
        }

        return string.Join('\n', text.Split('\n').Select(line => Line(line, columns)));
    }

    /// <summary>
    /// Words in rows no wider than a width; a word that is wider has a row to itself, and a figure stays with its unit.
    /// </summary>
    public static IEnumerable<string> Rows(string words, int width)
    {
        var row = new StringBuilder();
        foreach (var word in UnpartedWords.Of(words).SelectMany(range => Fitting(words[range], width)))
        {
            if (row.Length > 0 && row.Length + 1 + word.Length > width)
            {
                yield return row.ToString();
                row.Clear();
            }

            row.Append(row.Length > 0 ? " " : string.Empty).Append(word);
        }

        yield return row.ToString();
    }

    private static string[] Fitting(string part, int width) => part.Length <= width ? [part] : part.Split(' ');

    private static string Line(string line, int width)
    {
        if (line.Length <= width)
        {
            return line;
        }

        var words = line.TrimStart(' ');
        var indent = line[..(line.Length - words.Length)];
        var first = Rows(words, width - indent.Length).First();
        var rest = words[first.Length..].TrimStart(' ');
        return rest.Length == 0
            ? line
            : indent + first + "\n"
                + string.Join('\n', Rows(rest, width - indent.Length - Further.Length).Select(row => indent + Further + row));
    }
}
