namespace BendSheet.Core.Sheet;

/// <summary>What stands around the lines of a cover.</summary>
public static class CoverWords
{
    /// <summary>In the outline of the document.</summary>
    public const string Entry = "Cover";

    /// <summary>Above the columns: box to tick, name with ends, tube, length, fingerprint.</summary>
    public static IReadOnlyList<string> Headings { get; } = ["made", "line", "tube", "cut length", "sheet"];

    /// <summary>Above everything; any length of text.</summary>
    public static string Title(CoverContent cover)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return cover.Project.Length > 0 ? cover.Project : SheetWords.Untitled;
    }
}
