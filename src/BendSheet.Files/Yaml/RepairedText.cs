using System.Buffers;
using System.Text;
using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>
/// A text whose slips in the layout are put right, one after the other, so that everything after them can be read. Lines stay lines, and
/// places are known as they were typed. What is read so is never used without the slip's finding beside it.
/// </summary>
/// <param name="source">As it was typed.</param>
/// <param name="text">For the parser, of the same length.</param>
internal sealed class RepairedText(SourceLines source, string text)
{
    private static readonly SearchValues<char> BracketsAndQuotes = SearchValues.Create("{}[]\"'");

    private readonly string _fileName = source.At(1, 1).File;

    /// <summary>By line at which column and by how many characters the text was made longer, or shorter.</summary>
    private readonly Dictionary<int, List<(int Column, int By)>> _changes = [];

    /// <summary>Up to which column, as typed, a slip of a kind was put right on a line: the next one has to lie after it.</summary>
    private readonly Dictionary<(int Line, Rule Rule), int> _tried = [];
    private SourceLines _lines = string.Equals(text, source.Text, StringComparison.Ordinal) ? source : new(source.At(1, 1).File, text);

    /// <summary>As it was typed.</summary>
    public SourceLines Source => source;

    /// <summary>As it is to be read.</summary>
    public SourceLines Lines => _lines;

    /// <summary>In characters.</summary>
    public int Length => Lines.Text.Length;

    /// <summary>A place of the text as it is read, in the text as it was typed.</summary>
    public SourcePosition AsTyped(SourcePosition place)
    {
        if (!_changes.TryGetValue(place.Line, out var changes))
        {
            return place;
        }

        var column = place.Column;
        for (var i = changes.Count - 1; i >= 0; i--)
        {
            var (at, by) = changes[i];
            if (column > at)
            {
                column = Math.Max(at, column - by);
            }
        }

        return column == place.Column ? place : source.At(place.Line, column);
    }

    /// <summary>Puts a slip right as its finding says; false where nobody can tell how, or where that was tried before.</summary>
    /// <param name="broken">At its place in the text as it is read.</param>
    public bool TryRepair(Finding broken)
    {
        var (line, column) = (broken.Position.Line, broken.Position.Column);
        var asTyped = AsTyped(broken.Position).Column;
        if (_tried.TryGetValue((line, broken.Rule), out var before) && asTyped <= before)
        {
            return false;
        }

        _tried[(line, broken.Rule)] = asTyped;

        var typed = Lines[line].ToString();
        var content = typed.TrimStart();
        var indent = typed.Length - content.Length;
        var word = content.StartsWith("- ", StringComparison.Ordinal) ? content[2..].TrimStart() : content;
        var first = typed.Length - word.Length;
        return broken.Rule switch
        {
            _ when broken.Rule == YamlRules.ColonMissing => Colon(line, first, word),
            _ when broken.Rule == YamlRules.SpaceAfterColon => word.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon
                && Change(line, first + colon + 1, 0, " "),
            _ when broken.Rule == YamlRules.SpaceAfterDash => content.StartsWith('-') && Change(line, indent + 1, 0, " "),
            _ when broken.Rule == YamlRules.ColonTwice => Braces(line, first, word),
            _ when broken.Rule == YamlRules.UnevenIndent => Indent(line, indent, content),
            _ when broken.Rule == YamlRules.BracketNotOpened => Change(line, column - 1, 1, " "),
            _ when broken.Rule == YamlRules.BracketNotClosed => Closing(line, column, typed),
            _ when broken.Rule == YamlRules.StrayComma => Comma(line, column, typed),
            _ when broken.Rule == YamlRules.CommaMissing => Change(line, column - 1, 0, ","),
            _ when broken.Rule == YamlRules.QuoteNotClosed => Quote(line, column, typed),
            _ when broken.Rule == YamlRules.TextAfterQuote => column > 1 && QuotesAround(line, column, typed),
            _ => false,
        };
    }

    /// <summary><c>radius 15</c>.</summary>
    private bool Colon(int line, int first, string word)
    {
        var blank = word.IndexOf(' ', StringComparison.Ordinal);
        var end = blank < 0 ? word.Length : blank;
        return end > 0 && Change(line, first + end, 0, ":");
    }

    /// <summary><c>- straight: 110, bend: 45</c>.</summary>
    private bool Braces(int line, int first, string word)
    {
        var end = EndOfContent(word);
        var typed = word.AsSpan(0, end);
        return typed.IndexOfAny(BracketsAndQuotes) < 0 && typed.Contains(", ", StringComparison.Ordinal)
            && Change(line, first + end, 0, "}") && Change(line, first, 0, "{");
    }

    /// <summary>Where nothing stands before the comma that it could end.</summary>
    private bool Comma(int line, int column, string typed) =>
        column <= typed.Length && typed[column - 1] == ','
            && typed.AsSpan(0, column - 1).TrimEnd() is ([] or [.., ',' or '{' or '[' or '}' or ']' or ':' or '-'])
            && Change(line, column - 1, 1, " ");

    /// <summary>The bracket is closed on its line, where what stands in it looks complete.</summary>
    private bool Closing(int line, int column, string typed)
    {
        var end = EndOfContent(typed);
        return end >= column && typed[column - 1] is '{' or '[' && typed[end - 1] is not (',' or '{' or '[' or ':')
            && Change(line, end, 0, typed[column - 1] == '{' ? "}" : "]");
    }

    /// <summary>
    /// A text that was begun with a quote ends with its line; between brackets the quote goes, and the text ends with its comma or bracket.
    /// </summary>
    private bool Quote(int line, int column, string typed)
    {
        if (column > typed.Length || typed[column - 1] is not ('"' or '\''))
        {
            return false;
        }

        return typed.AsSpan(0, column - 1).IndexOfAny('{', '[') >= 0
            ? Change(line, column - 1, 1, " ")
            : Change(line, Math.Max(EndOfContent(typed), column), 0, typed[(column - 1)..column]);
    }

    /// <summary><c>"2' 3-1/2""</c> and <c>"3/16" in</c> need no quotes; <c>'Joe's line'</c> needs the other ones.</summary>
    private bool QuotesAround(int line, int column, string typed)
    {
        var closing = typed.AsSpan(0, column - 1).LastIndexOfAny('"', '\'');
        var opening = closing < 1 ? -1 : typed.LastIndexOf(typed[closing], closing - 1);
        if (opening < 0)
        {
            return false;
        }

        var last = typed.IndexOf(typed[closing], closing + 1);
        var (end, by) = last < 0 ? (closing, " ") : typed[closing] == '"' ? (last, " ") : (last, "\"");
        return Change(line, end, 1, by) && Change(line, opening, 1, by);
    }

    /// <summary>Puts spaces in the place of tabs, as many for each as line up most lines with those around them.</summary>
    public void ReplaceTabs()
    {
        int[] widths = [2, 4, 8, 3];
        var indents = Enumerable.Range(1, Lines.Count)
            .Select(line => (Line: line, Indent: Lines[line][..^Lines[line].TrimStart().Length].ToString()))
            .Where(line => line.Indent.Length < Lines[line.Line].Length).ToList();
        var width = widths.MaxBy(width => indents.Zip(indents.Skip(1)).Count(pair =>
            pair.First.Indent.Contains('\t', StringComparison.Ordinal) != pair.Second.Indent.Contains('\t', StringComparison.Ordinal)
            && pair.First.Indent.Length > 0 && pair.Second.Indent.Length > 0
            && Blanks(pair.First.Indent, width) == Blanks(pair.Second.Indent, width)));
        var replaced = new StringBuilder();
        var copied = 0;
        foreach (var (line, indent) in indents.Where(line => line.Indent.AsSpan().ContainsAnyExcept(' ')))
        {
            var start = Lines.StartOf(line);
            replaced.Append(Lines.Text, copied, start - copied).Append(' ', Blanks(indent, width));
            copied = start + indent.Length;
            Note(line, 1, Blanks(indent, width) - indent.Length);
        }

        _lines = new(_fileName, replaced.Append(Lines.Text, copied, Lines.Text.Length - copied).ToString());
    }

    private static int Blanks(string indent, int width) => indent.Sum(c => c == '\t' ? width : 1);

    /// <summary>Lines it up with the nearest line above that begins as it does, at nearly the same depth.</summary>
    private bool Indent(int line, int indent, string content)
    {
        var isItem = content.StartsWith('-');
        for (var above = Lines.LineAbove(line); above > 0; above = Lines.LineAbove(above))
        {
            var there = Lines.IndentOf(above);
            if (Lines[above].TrimStart().StartsWith("-", StringComparison.Ordinal) == isItem && Math.Abs(there - indent) == 1)
            {
                return there > indent
                    ? Change(line, 0, 0, new string(' ', there - indent))
                    : Change(line, 0, indent - there, string.Empty);
            }

            if (there < indent - 1)
            {
                break;
            }
        }

        return false;
    }

    /// <summary>Before a comment and the spaces in front of it.</summary>
    private static int EndOfContent(string typed)
    {
        var comment = typed.IndexOf(" #", StringComparison.Ordinal);
        return (comment < 0 ? typed : typed[..comment]).TrimEnd().Length;
    }

    private bool Change(int line, int at, int remove, string insert)
    {
        var start = Lines.StartOf(line) + at;
        _lines = new(_fileName, string.Concat(Lines.Text.AsSpan(0, start), insert, Lines.Text.AsSpan(start + remove)));
        Note(line, at + (remove > 0 ? 1 : 0), insert.Length - remove);
        return true;
    }

    private void Note(int line, int column, int by)
    {
        if (!_changes.TryGetValue(line, out var changes))
        {
            _changes[line] = changes = [];
        }

        changes.Add((column, by));
    }
}
