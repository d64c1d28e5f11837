using System.Text;

namespace BendSheet.Cli.Commands;

/// <summary>
/// A line that a shell wants completed, as it was typed up to the cursor. Shells quote in several ways (POSIX.1-2017, Shell Command
/// Language, 2.2); the parsing library knows only double quotes around a whole word.
/// </summary>
internal static class ShellLine
{
    private const string Asked = "[suggest:";

    /// <summary>The arguments, where they ask for completions with every word quoted as the library reads it.</summary>
    public static IReadOnlyList<string> Requoted(IReadOnlyList<string> args)
    {
        if (args is not [var asked, var line] || !asked.StartsWith(Asked, StringComparison.Ordinal))
        {
            return args;
        }

        var words = Words(line);

        // The word at the cursor is not closed: it goes on.
        var typed = string.Join(' ', words[..^1].Select(word => IsOne(word) ? word : $"\"{word}\"").Append(
            IsOne(words[^1]) || words[^1].Length == 0 ? words[^1] : $"\"{words[^1]}"));
        return [$"{Asked}{typed.Length}]", typed];
    }

    private static bool IsOne(string word) => word.Length > 0 && !word.Contains(' ', StringComparison.Ordinal);

    /// <summary>
    /// The words without their quotes; the last one is that at the cursor, and may be empty. A backslash counts only before a space or a
    /// quote, because elsewhere Windows has it between folders.
    /// </summary>
    private static List<string> Words(string line)
    {
        List<string> words = [];
        var word = new StringBuilder();
        var (quote, isWord) = ('\0', false);
        for (var at = 0; at < line.Length; at++)
        {
            var letter = line[at];
            if (quote == '\0' && letter == '\\' && at + 1 < line.Length && line[at + 1] is ' ' or '\'' or '"')
            {
                word.Append(line[++at]);
                isWord = true;
            }
            else if (quote == '\0' ? letter is '\'' or '"' : letter == quote)
            {
                quote = quote == '\0' ? letter : '\0';
                isWord = true;
            }
            else if (quote == '\0' && letter == ' ')
            {
                if (isWord)
                {
                    words.Add(word.ToString());
                }

                word.Clear();
                isWord = false;
            }
            else
            {
                word.Append(letter);
                isWord = true;
            }
        }

        words.Add(word.ToString());
        return words;
    }
}
