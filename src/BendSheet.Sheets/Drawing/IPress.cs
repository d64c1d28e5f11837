namespace BendSheet.Sheets.Drawing;

/// <summary>Makes documents of pages that are drawn.</summary>
public interface IPress
{
    /// <summary>Draws the pages of a part that stands on its own: the cover, or a line's sheet. Safe for several threads.</summary>
    /// <param name="entry">In the outline. Printable.</param>
    /// <param name="pages">At least one.</param>
    /// <param name="mirrored">Every page the wrong way round, left and right exchanged.</param>
    IDrawnPart Draw(string entry, IEnumerable<PageAhead> pages, bool mirrored);

    /// <summary>The whole file; the same bytes for the same parts.</summary>
    /// <param name="parts">Drawn by this press, in reading order.</param>
    /// <param name="title">What a viewer shows in its title bar. Any text.</param>
    ReadOnlyMemory<byte> Bind(IReadOnlyList<IDrawnPart> parts, string title);
}

/// <summary>A part of a document whose pages are drawn.</summary>
public interface IDrawnPart
{
    /// <summary>How many pages it has.</summary>
    int PageCount { get; }
}

/// <summary>A page before it is drawn.</summary>
/// <param name="Size">Of the paper as it is read.</param>
/// <param name="Begins">The part of a sheet that begins here, for the outline; null elsewhere.</param>
/// <param name="Draw">Draws it.</param>
public sealed record PageAhead(PaperSize Size, string? Begins, Action<IPage> Draw);
