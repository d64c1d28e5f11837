using System.Text;

namespace BendSheet.Files.Yaml;

/// <summary>Pieces of the file inside messages: on one line, not endless, with nothing that a terminal would obey.</summary>
internal static class AsTyped
{
    private const int LongestShown = 40;

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
