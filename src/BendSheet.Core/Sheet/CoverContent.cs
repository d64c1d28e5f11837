using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>
/// What the cover says of several lines, or of the whole car: what is made and what is not, how the tube is cut, what to buy. Rounded and
/// worded, before anybody thinks of how it looks: page and terminal show the same.
/// </summary>
public sealed record CoverContent
{
    /// <summary>What the lines belong to; empty where the file does not say.</summary>
    public required string Project { get; init; }

    /// <summary>How many lines are made, in a sentence.</summary>
    public required string Summary { get; init; }

    /// <summary>Every line, in the order of the file.</summary>
    public required ImmutableArray<CoverLine> Lines { get; init; }

    /// <summary>How lengths are written.</summary>
    public required LengthNotation Notation { get; init; }

    /// <summary>Lines that were to be printed and have no sheet because of errors, in the order of the file.</summary>
    public ImmutableArray<MissingLine> Missing { get; init; } = [];

    /// <summary>For only some lines of a file: the cut lengths, added up for each kind of tube.</summary>
    public ImmutableArray<StockAmount> CutLengths { get; init; } = [];

    /// <summary>For the whole file: each kind of tube.</summary>
    public ImmutableArray<StockTube> Tubes { get; init; } = [];

    /// <summary>For the whole file: what the lines that are not made yet need.</summary>
    public ImmutableArray<StockItem> Shopping { get; init; } = [];

    /// <summary>Of the tube to buy, in a sentence; null where nothing is bought or no price is known.</summary>
    public string? Cost { get; init; }

    /// <summary>What the figures leave out, in sentences.</summary>
    public ImmutableArray<string> Remarks { get; init; } = [];

    /// <summary>The lines in the order of the pages: those with a sheet, then those that wait for a template.</summary>
    public IEnumerable<CoverLine> LinesOnPage =>
        [.. Lines.Where(line => line.Fingerprint is not null), .. Lines.Where(line => line.State == LineState.Rough)];

    /// <summary>What stands on the page above the lines: a reader who has only the paper must not take it for the whole car.</summary>
    public IEnumerable<CoverSection> SectionsAbove => CoverSections.Above(this);

    /// <summary>What stands on the page below the lines, in this order.</summary>
    public IEnumerable<CoverSection> Sections => CoverSections.Of(this);
}

/// <summary>A line that has no sheet because of errors.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="Why">How many errors, of what sort, and where the first is.</param>
public sealed record MissingLine(string Name, string Why);

/// <summary>A part of the cover beside its lines: what is missing, the tube in all, what to buy, how to cut it.</summary>
/// <param name="Heading">Above it.</param>
/// <param name="Rows">At least one.</param>
public sealed record CoverSection(string Heading, ImmutableArray<CoverRow> Rows)
{
    /// <summary>Sentences below the rows; empty for none.</summary>
    public string Remark { get; init; } = string.Empty;

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
