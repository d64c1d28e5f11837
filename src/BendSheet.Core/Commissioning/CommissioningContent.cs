using System.Collections.Immutable;

namespace BendSheet.Core.Commissioning;

/// <summary>What the commissioning page says, in words, before anybody draws it. It approves nothing.</summary>
/// <param name="Entry">In the outline of the document.</param>
/// <param name="Heading">Above the page.</param>
/// <param name="Disclaimer">Below it, before everything else.</param>
/// <param name="Sections">Tables, in the order of the work.</param>
public sealed record CommissioningContent(
    string Entry, string Heading, string Disclaimer, ImmutableArray<CommissioningSection> Sections);

/// <summary>A table of the page.</summary>
/// <param name="Heading">Above it.</param>
/// <param name="Remarks">Whole sentences between heading and table; may be none.</param>
/// <param name="Columns">Headings of the columns.</param>
/// <param name="Rows">As many cells as columns.</param>
public sealed record CommissioningSection(
    string Heading, ImmutableArray<string> Remarks, ImmutableArray<string> Columns, ImmutableArray<CommissioningRow> Rows);

/// <summary>A row of such a table.</summary>
/// <param name="Cells">One for each column.</param>
public sealed record CommissioningRow(ImmutableArray<CommissioningCell> Cells);

/// <summary>What a cell is.</summary>
public enum CellKind
{
    /// <summary>Printed words.</summary>
    Words,

    /// <summary>An empty square to tick.</summary>
    Box,

    /// <summary>An empty line to write on; words in it are small, before the line.</summary>
    Blank,
}

/// <summary>A cell.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Words">Printed in it; empty for none.</param>
public readonly record struct CommissioningCell(CellKind Kind, string Words)
{
    /// <summary>A square to tick.</summary>
    public static CommissioningCell Box { get; } = new(CellKind.Box, string.Empty);

    /// <summary>A line to write on.</summary>
    public static CommissioningCell Blank { get; } = new(CellKind.Blank, string.Empty);

    /// <summary>Printed words.</summary>
    public static CommissioningCell Of(string words) => new(CellKind.Words, words);
}
