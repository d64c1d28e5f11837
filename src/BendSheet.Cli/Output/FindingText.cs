using System.Globalization;
using System.Text;
using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Output;

/// <summary>Findings for a person at a terminal: the sentence, then the line that was typed with a caret under the place.</summary>
public static class FindingText
{
    /// <summary>Of a long line only so much is shown on each side of the place.</summary>
    private const int Before = 70;
    private const int After = 40;

    /// <summary>All findings, one after the other; empty where there are none.</summary>
    /// <param name="findings">In their order.</param>
    /// <param name="source">What was typed, with what it includes.</param>
    /// <param name="colour">Whether the terminal shows colours.</param>
    /// <param name="width">Of the terminal, in columns; null where it is a file or another program.</param>
    public static string Write(IEnumerable<Finding> findings, SourceLines source, bool colour, int? width = null)
    {
        var text = new StringBuilder();
        foreach (var finding in findings)
        {
            Append(text, finding, source.Of(finding.Position), colour, width);
        }

        return text.ToString();
    }

    private static void Append(StringBuilder text, Finding finding, SourceLines source, bool colour, int? width)
    {
        // Wrapped before it is coloured: what switches colours has no width.
        var place = Visible.Text(finding.Position.ToString());
        var sentence = Wrapped.Text($"{place}: {finding.SeverityWord}: {Visible.Text(finding.Message)} [{finding.Rule.Name}]", width);
        text.Append(colour ? WithColour(sentence, finding, from: place.Length) : sentence).Append('\n');
        var position = finding.Position;
        if (position.Line == 0 || position.Line > source.Count || source[position.Line].IsWhiteSpace())
        {
            return;
        }

        var line = source[position.Line];
        var column = Math.Min(position.Column - 1, line.Length);
        var number = position.Line.ToString(CultureInfo.InvariantCulture);
        var room = Room(width - number.Length);
        var start = Math.Max(0, column - (room * Before / (Before + After)));
        var from = BesidePair(line, start);
        var to = BesidePair(line, Math.Min(line.Length, Math.Min(column + After, start + room)));
        text.Append("  ").Append(number).Append(" | ").Append(from > 0 ? "…" : string.Empty);
        text.Append(Visible.Text(line[from..to], keepTabs: true));
        text.Append(to < line.Length ? "…" : string.Empty).Append('\n');
        text.Append(' ', number.Length + 2).Append(" | ").Append(' ', from > 0 ? 1 : 0);
        foreach (var character in line[from..column])
        {
            // A tab is as wide above as below; the low half of a pair has no width of its own.
            if (!char.IsLowSurrogate(character))
            {
                text.Append(character == '\t' ? '\t' : ' ');
            }
        }

        text.Append("^\n");
    }

    /// <summary>The two halves of a character outside the first 65,536 stay together.</summary>
    private static int BesidePair(ReadOnlySpan<char> line, int at) =>
        at > 0 && at < line.Length && char.IsSurrogatePair(line[at - 1], line[at]) ? at - 1 : at;

    /// <summary>How much of a line fits beside its number, with an ellipsis on either side.</summary>
    private static int Room(int? width)
    {
        const int Around = 7;
        return Math.Clamp((width ?? int.MaxValue) - Around, 2, Before + After);
    }

    private static string WithColour(string sentence, Finding finding, int from)
    {
        var code = finding.Severity switch
        {
            Severity.Error => 31,
            Severity.Warning => 33,
            _ => 36,
        };
        var at = sentence.IndexOf(finding.SeverityWord, from, StringComparison.Ordinal);
        return at < 0 ? sentence
            : string.Create(CultureInfo.InvariantCulture, $"{sentence[..at]}\u001b[1;{code}m{finding.SeverityWord}\u001b[0m")
                + sentence[(at + finding.SeverityWord.Length)..];
    }
}
