using BendSheet.Sheets.Drawing;

namespace BendSheet.Pdf;

/// <summary>Makes PDFs.</summary>
public sealed class PdfPress : IPress
{
    /// <summary>Nearly no page has more content, in bytes.</summary>
    private const int TypicalContent = 64 * 1024;

    /// <summary>Room to write a page's content in, used again for every page of a thread.</summary>
    [ThreadStatic]
    private static SyntaxWriter? _content;

    /// <inheritdoc/>
    public IDrawnPart Draw(string entry, IEnumerable<PageAhead> pages, bool mirrored) =>
        DrawnPart.Of(entry, pages, _content ??= new(TypicalContent), mirrored);

    /// <inheritdoc/>
    public ReadOnlyMemory<byte> Bind(IReadOnlyList<IDrawnPart> parts, string title) =>
        PdfAssembler.Bound([.. parts.Cast<DrawnPart>()], title);
}
