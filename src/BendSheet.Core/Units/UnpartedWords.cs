namespace BendSheet.Core.Units;

/// <summary>
/// Words that no end of a line parts: a figure and its fraction, its unit or its sense (<c>17 7/8 in</c>, <c>90° cw</c>). At the end of a
/// line the first of them alone would be read as another figure.
/// </summary>
public static class UnpartedWords
{
    private const string Closing = ".,;:)";

    private static readonly string[] Units = ["mm", "in", "ft", "cm"];
    private static readonly string[] Senses = ["cw", "ccw"];

    /// <summary>Where the parts of a text begin and end that lines may be broken between: a word, or words that stay together.</summary>
    /// <param name="text">Its words have a space between them.</param>
    public static IEnumerable<Range> Of(string text)
    {
        var (start, word) = (0, 0);
        for (var end = text.IndexOf(' ', StringComparison.Ordinal); end >= 0; end = text.IndexOf(' ', end + 1))
        {
            var next = text.IndexOf(' ', end + 1);
            if (!StayTogether(text.AsSpan(word, end - word), text.AsSpan((end + 1)..(next < 0 ? text.Length : next))))
            {
                yield return start..end;
                start = end + 1;
            }

            word = end + 1;
        }

        yield return start..text.Length;
    }

    private static bool StayTogether(ReadOnlySpan<char> word, ReadOnlySpan<char> next) => word.Length > 0 && next.Length > 0
        && word[^1] switch
        {
            '°' => IsOneOf(Senses, next),
            '+' or '−' => word.Length > 1 && IsOneOf(Units, next),
            var last when char.IsAsciiDigit(last) => IsOneOf(Units, next) || IsFraction(next),
            _ => false,
        };

    private static bool IsOneOf(string[] words, ReadOnlySpan<char> next)
    {
        foreach (var word in words)
        {
            if (next.TrimEnd(Closing).SequenceEqual(word))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsFraction(ReadOnlySpan<char> next) =>
        next.IndexOf('/') is > 0 and var stroke && stroke + 1 < next.Length
            && next[..stroke].IndexOfAnyExceptInRange('0', '9') < 0 && char.IsAsciiDigit(next[stroke + 1]);
}
