namespace BendSheet.Cli.Asking;

/// <summary>An answer with a note after it: <c>120 # clears the column</c>, as comments stand in the file.</summary>
internal static class Noted
{
    private const string Mark = " #";

    /// <summary>The answer, and the note; empty where there is none.</summary>
    public static (string Answer, string Note) Of(string typed) =>
        typed.IndexOf(Mark, StringComparison.Ordinal) is > 0 and var at
            ? (typed[..at].TrimEnd(), typed[(at + Mark.Length)..].Trim())
            : (typed, string.Empty);
}
