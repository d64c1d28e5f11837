namespace BendSheet.Cli.Output;

/// <summary>Text that came from outside, for a terminal: nothing in it moves the cursor, changes colours or begins a line.</summary>
internal static class Visible
{
    private const char StandIn = '\uFFFD';

    /// <summary>The text without control characters; a tab is kept where columns are to stay.</summary>
    public static string Text(ReadOnlySpan<char> text, bool keepTabs = false)
    {
        var visible = text.ToArray();
        for (var i = 0; i < visible.Length; i++)
        {
            if (char.IsControl(visible[i]) && !(keepTabs && visible[i] == '\t'))
            {
                visible[i] = StandIn;
            }
        }

        return new(visible);
    }
}
