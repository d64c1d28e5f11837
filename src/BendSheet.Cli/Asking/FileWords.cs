namespace BendSheet.Cli.Asking;

/// <summary>An answer that is several words of the file, each with its value: <c>distance: 344, within: 5</c>.</summary>
internal static class FileWords
{
    /// <summary>
    /// The words in their order, with or without the colons and the braces of the file. A comma inside a number stays with the number,
    /// so that the reader can say what is wrong with it.
    /// </summary>
    /// <param name="answer">As typed.</param>
    public static IReadOnlyList<(string Word, string Value)> Of(string answer)
    {
        List<(string Word, string Value)> words = [];
        foreach (var part in (IsInBraces(answer) ? answer[1..^1] : answer).Split(',', StringSplitOptions.TrimEntries))
        {
            if (words.Count > 0 && part.Length > 0 && !char.IsLetter(part[0]))
            {
                words[^1] = (words[^1].Word, $"{words[^1].Value},{part}");
                continue;
            }

            var end = part.AsSpan().IndexOfAny(' ', ':') is >= 0 and var at ? at : part.Length;
            words.Add((part[..end], part[end..].TrimStart(' ', ':')));
        }

        return words;
    }

    /// <summary>It is written as a map of the file.</summary>
    public static bool IsInBraces(string answer) => answer is ['{', .., '}'];

    /// <summary>The words as a map of the file, all on one line.</summary>
    public static string InBraces(IEnumerable<(string Word, string Value)> words) =>
        $"{{{string.Join(", ", words.Select(one => $"{YamlWord.Of(one.Word)}: {YamlWord.Of(one.Value)}"))}}}";
}
