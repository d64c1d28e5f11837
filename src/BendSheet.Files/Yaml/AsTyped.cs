using System.Text;

namespace BendSheet.Files.Yaml;

/// <summary>Pieces of the file inside messages: on one line, not endless, with nothing that a terminal would obey.</summary>
internal static class AsTyped
{
    private const int LongestShown = 40;

    /// <summary>A finding lists no more names than fit on a few lines of a terminal.</summary>
    private const int MostListed = 12;

    /// <summary>Names one after the other, with <c>and others</c> where there are many.</summary>
    public static string Listed(IEnumerable<string> names)
    {
        List<string> first = [.. names.Take(MostListed + 1)];
        return string.Join(", ", first.Take(MostListed).Select(name => Show(name)))
            + (first.Count > MostListed ? " and others" : string.Empty);
    }

    /// <summary>The text between backquotes, shortened with <c>…</c>.</summary>
    public static string Show(ReadOnlySpan<char> typed)
    {
        typed = typed.Trim();
        var shown = new StringBuilder("`");
        foreach (var rune in typed.EnumerateRunes())
        {
            if (shown.Length > LongestShown)
            {
                shown.Append('…');
                break;
            }

            shown.Append(
                Rune.IsControl(rune) || Rune.IsWhiteSpace(rune) || (rune.IsBmp && InvisibleCharacter.Is((char)rune.Value))
                    ? " "
                    : rune.ToString());
        }

        return shown.Append('`').ToString();
    }
}
