using System.Collections.Immutable;

namespace BendSheet.Core.Sheet;

/// <summary>What the cover of a file with several lines says, rounded and worded.</summary>
/// <param name="Project">What the lines belong to; empty where the file does not say.</param>
/// <param name="Summary">How many lines there are, in a sentence.</param>
/// <param name="Lines">Every line, in the order of the file.</param>
/// <param name="Sections">What stands below them, in this order.</param>
public sealed record CoverContent(string Project, string Summary, ImmutableArray<CoverLine> Lines, ImmutableArray<CoverSection> Sections);

/// <summary>A line on the cover.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="Ends">Where it runs from and to.</param>
/// <param name="Tube">Size and material.</param>
/// <param name="CutLength">What to cut off the roll.</param>
/// <param name="Fingerprint">Of its sheet.</param>
/// <param name="Made">It exists already.</param>
public sealed record CoverLine(string Name, string Ends, string Tube, Figure CutLength, string Fingerprint, bool Made);

/// <summary>A part of the cover below its lines: the tube in all, what to buy, how to cut it.</summary>
/// <param name="Heading">Above it.</param>
/// <param name="Rows">At least one.</param>
public sealed record CoverSection(string Heading, ImmutableArray<CoverRow> Rows)
{
    /// <summary>A sentence below the rows; null for none.</summary>
    public string? Remark { get; init; }

    /// <summary>A box to tick in front of each row.</summary>
    public bool ToTick { get; init; }
}

/// <summary>A row of a section.</summary>
/// <param name="What">Any length of text.</param>
/// <param name="HowMuch">A figure with its unit, short; empty for none.</param>
public sealed record CoverRow(string What, string HowMuch)
{
    /// <summary>The same in the other unit, small; empty for none.</summary>
    public string Other { get; init; } = string.Empty;
}
