using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Files.Yaml;

/// <summary>Says in plain words why the text cannot be read on at a place. First by its brackets and quotes; if those are in order, by the
/// line and the one above it.</summary>
/// <param name="source">The whole text.</param>
/// <param name="place">Where the parser found something that it did not expect.</param>
/// <param name="reachedLine">How far it had looked ahead.</param>
internal sealed class BrokenPlace(SourceLines source, SourcePosition place, int reachedLine)
{
    private ReadOnlySpan<char> Line => source[place.Line];

    private char Here => place.Column <= Line.Length ? Line[place.Column - 1] : ' ';

    /// <summary>The finding, at the place where a person should look.</summary>
    public Finding Explain()
    {
        var slip = new BracketWalk(source).FirstSlip();
        if (slip is not null && slip.Position.Line <= Math.Max(place.Line, reachedLine))
        {
            return slip;
        }

        return Quotes() ?? FirstCharacter() ?? DashWithoutBlank() ?? Colons() ?? DashBehindWord() ?? Indent()
            ?? YamlRules.YamlBroken.Error(place,
                "this cannot be read: compare the brackets, quotes, colons and spaces of this line, and of the line above, with a line "
                    + "that is right");
    }

    private Finding? Quotes()
    {
        if (Here is not ('"' or '\''))
        {
            return null;
        }

        if (reachedLine > place.Line)
        {
            return YamlRules.QuoteNotClosed
                .Error(place, $"this {Here} was not closed on its line: put another {Here} after the text, or delete this one");
        }

        var backslash = Line[(place.Column - 1)..].IndexOf('\\');
        return backslash < 0 ? null : YamlRules.YamlBroken.Error(place with { Column = place.Column + backslash },
            "between \" and \" a backslash means something else: type it twice, or put the text between ' and '");
    }

    private Finding? FirstCharacter()
    {
        return Here switch
        {
            '@' or '`' or '%' => YamlRules.YamlBroken.Error(place, $"a value cannot begin with {Here}: put the text in quotes"),
            '&' or '*' => YamlRules.AnchorOrAlias.Error(place, $"a value cannot begin with {Here}: put the text in quotes"),
            '!' => YamlRules.Tag.Error(place, "a value cannot begin with !: put the text in quotes"),
            _ when Line.StartsWith('!') =>
                YamlRules.Tag.Error(place with { Column = 1 }, "a value cannot begin with !: put the text in quotes"),
            ',' => YamlRules.StrayComma.Error(place, "a value cannot begin with a comma: delete it, or put the text in quotes"),
            '|' or '>' => YamlRules.YamlBroken.Error(place, $"a value cannot begin with {Here}: put the text in quotes"),
            _ => null,
        };
    }

    /// <summary>The parser stops at a colon that it did not expect, or at a line that has none.</summary>
    private Finding? Colons()
    {
        var content = Line.TrimStart();
        var above = source.LineAbove(place.Line);
        if (Here != ':')
        {
            return content.Length > 0 && content[0] is not ('-' or '?') && !HasColon(content) ? NoColon(place.Line) : null;
        }

        if (HasColon(Line[..(place.Column - 1)]) || HasColon($"{Line[..(place.Column - 1)]} "))
        {
            return YamlRules.ColonTwice.Error(place, "a second colon on this line: put what follows the first one in {…} or in quotes");
        }

        if (Line.Length - content.Length + 1024 < place.Column)
        {
            return YamlRules.YamlBroken.Error(place, "the word before this colon is longer than 1,024 characters");
        }

        if (above > 0 && !HasColon(source[above]) && !source[above].TrimStart().StartsWith('-'))
        {
            return NoColon(above);
        }

        return above > 0 && source.IndentOf(above) < source.IndentOf(place.Line) ? Uneven(above) : null;
    }

    private Finding NoColon(int line)
    {
        var content = source[line].Trim();
        var position = source.At(line, source[line].Length - source[line].TrimStart().Length + 1);
        var colon = content.IndexOf(':');
        if (colon > 0)
        {
            var spaced = $"{content[..colon]}: {content[(colon + 1)..].Trim()}";
            return YamlRules.SpaceAfterColon.Error(position, $"put a space after the colon: write {AsTyped.Show(spaced)}");
        }

        var blank = content.IndexOf(' ');
        var typed = blank < 0 ? $"{content}:" : $"{content[..blank]}: {content[(blank + 1)..].Trim()}";
        return YamlRules.ColonMissing.Error(position, $"this line has no colon between a word and its value: write {AsTyped.Show(typed)}");
    }

    private Finding? DashWithoutBlank()
    {
        var content = Line.TrimStart();
        return content is ['-', not ' ' and not '-' and not '\t', ..]
            ? YamlRules.SpaceAfterDash
            .Error(source.At(place.Line, Line.Length - content.Length + 1), "put a space after the dash at the start of this line")
            : null;
    }

    private Finding? DashBehindWord() =>
        Here == '-' && place.Column > source.IndentOf(place.Line) + 1
            ? YamlRules.YamlBroken.Error(
                place, "a list cannot begin on the line of its word: put the dash on the next line, two spaces further in")
            : null;

    /// <summary>The line begins at no step that is open above it, or at one where something else belongs.</summary>
    private Finding? Indent()
    {
        var above = source.LineAbove(place.Line);
        if (above == 0)
        {
            return null;
        }

        var indent = source.IndentOf(place.Line);
        var aligned = above;
        while (source.IndentOf(aligned) > indent && source.LineAbove(aligned) is > 0 and var next)
        {
            aligned = next;
        }

        if (source.IndentOf(aligned) != indent)
        {
            return Uneven(above);
        }

        var position = source.At(place.Line, indent + 1);
        var thisIsItem = IsItem(Line[indent..]);
        var isItem = IsItem(source[aligned][indent..]);
        return thisIsItem == isItem ? null : YamlRules.UnevenIndent.Error(position, isItem
            ? FormattableString.Invariant(
                $"line {aligned} begins with a dash at this depth and this line does not: put a dash before it, or move it in or out")
            : FormattableString.Invariant(
                $"line {aligned} begins with a word at this depth and this line with a dash: move it two spaces in, or out to its list"));
    }

    private Finding Uneven(int neighbour)
    {
        var indent = source.IndentOf(place.Line);
        var (here, there) = (Counted.Large(indent, "space"), Counted.Large(source.IndentOf(neighbour), "space"));
        return YamlRules.UnevenIndent.Error(source.At(place.Line, indent + 1), FormattableString.Invariant(
            $"this line begins after {here}, line {neighbour} after {there}: line it up with those it belongs to"));
    }

    private static bool IsItem(ReadOnlySpan<char> content) => content is ['-'] or ['-', ' ' or '\t', ..];

    /// <summary>A colon with a space or nothing after it.</summary>
    private static bool HasColon(ReadOnlySpan<char> line) =>
        line.Contains(": ", StringComparison.Ordinal) || line.TrimEnd().EndsWith(':') || line.Contains(":\t", StringComparison.Ordinal);
}
