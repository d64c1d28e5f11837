using System.Collections.Immutable;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Picture;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets;

/// <summary>What goes into one PDF. The cover comes first, then the sheets.</summary>
/// <param name="Lines">A sheet for each of them; may be none where there is something else to print.</param>
/// <param name="Paper">To print on.</param>
public sealed record PrintJob(ImmutableArray<SheetContent> Lines, Paper Paper)
{
    /// <summary>What a viewer shows in its title bar; empty for a title of our own.</summary>
    public string Title { get; init; } = string.Empty;

    /// <summary>Null for none.</summary>
    public CoverContent? Cover { get; init; }

    /// <summary>The car in one picture, with the cover or alone; null for none.</summary>
    public CarPicture? Car { get; init; }

    /// <summary>The work after the last bend, after all sheets; null for none.</summary>
    public CommissioningContent? Commissioning { get; init; }

    /// <summary>Tags to wrap round finished lines, after everything else; null for none.</summary>
    public TagSheet? Tags { get; init; }

    /// <summary>Pages drawn at full size, after each line's sheet.</summary>
    public FullSizePages FullSize { get; init; }

    /// <summary>Every page the wrong way round, left and right exchanged, so that a copy pressed on to a board comes out right.</summary>
    public bool Mirrored { get; init; }
}
