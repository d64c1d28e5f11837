namespace BendSheet.Core.Sheet;

/// <summary>What stands on the pages of tags.</summary>
public static class TagWords
{
    /// <summary>In the outline, and at the head of the pages.</summary>
    public const string Entry = "Tags";

    /// <summary>Between the two halves of a tag.</summary>
    public const string Middle = "round the tube";

    /// <summary>Of a line that was only estimated.</summary>
    public const string NoSheet = "no sheet yet";

    /// <summary>How they are used.</summary>
    public static IReadOnlyList<string> HowTo { get; } =
    [
        "Cut along the solid lines. Lay the part between the dashed lines round the finished line, fold there, and stick the two halves "
            + "back to back.",
        "Cover the tag with clear tape: brake fluid takes off ink and paint. Put it where it cannot chafe or catch, away from heat and "
            + "from anything that moves, and never on a nut or a flare.",
    ];

    /// <summary>Head of each page.</summary>
    /// <param name="sheet">Whose tags.</param>
    public static string Head(TagSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Project.Length > 0 ? $"{Entry} – {sheet.Project}" : Entry;
    }

    /// <summary>A tag for somebody who does not see it.</summary>
    /// <param name="tag">Which.</param>
    public static string Alternative(TagContent tag)
    {
        ArgumentNullException.ThrowIfNull(tag);
        return $"Tag of {tag.Name}: {tag.EndA}, {tag.EndB}, {tag.Length} ({tag.LengthOther}), {tag.Sheet}.";
    }
}
