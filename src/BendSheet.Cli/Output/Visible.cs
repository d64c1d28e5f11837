namespace BendSheet.Cli.Output;

/// <summary>
/// Text that came from outside, for a terminal: nothing in it moves the cursor, changes colours, begins a line or turns the direction of
/// writing, which would show other words than stand there.
/// </summary>
internal static class Visible
{
    private const char StandIn = '\uFFFD';

    /// <summary>
    /// The text with a mark in the place of each character that a terminal would obey; a tab is kept where columns are to stay.
    /// </summary>
    public static string Text(ReadOnlySpan<char> text, bool keepTabs = false)
    {
        var visible = text.ToArray();
        for (var i = 0; i < visible.Length; i++)
        {
            if (IsObeyed(visible[i]) && !(keepTabs && visible[i] == '\t'))
            {
                visible[i] = StandIn;
            }
        }

        return new(visible);
    }

    /// <summary>Control characters, Unicode's own line ends, and its marks of direction (Unicode Standard Annex 9, 2).</summary>
    private static bool IsObeyed(char character) => char.IsControl(character)
        || character is '\u061C' or '\u200E' or '\u200F' or '\u2028' or '\u2029' or (>= '\u202A' and <= '\u202E')
            or (>= '\u2066' and <= '\u2069');
}
