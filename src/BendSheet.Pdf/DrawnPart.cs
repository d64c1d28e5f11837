using System.Collections.Immutable;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Fonts;

namespace BendSheet.Pdf;

/// <summary>A page whose content is whole.</summary>
/// <param name="Size">Of the paper as it is read.</param>
/// <param name="Content">Its content stream, compressed.</param>
/// <param name="Begins">The part of a sheet that begins here, for the outline; null elsewhere.</param>
internal sealed record DrawnPage(PaperSize Size, byte[] Content, string? Begins);

/// <summary>
/// A part that stands on its own in a document, drawn: the cover, or a line's sheet. Nothing in it depends on what else is printed.
/// </summary>
/// <param name="Entry">In the outline.</param>
/// <param name="Pages">At least one.</param>
/// <param name="Structure">What is read out, in which order.</param>
/// <param name="Characters">For each face, by its number, the characters drawn with it.</param>
internal sealed record DrawnPart(
    string Entry, ImmutableArray<DrawnPage> Pages, StructurePart Structure, ImmutableArray<DrawnCharacters> Characters) : IDrawnPart
{
    /// <inheritdoc/>
    public int PageCount => Pages.Length;

    /// <summary>Draws a part.</summary>
    /// <param name="entry">In the outline. Printable.</param>
    /// <param name="pages">Each with what begins on it and how it is drawn.</param>
    /// <param name="content">Room to write a page's content in; used again for every page.</param>
    /// <param name="mirrored">Every page the wrong way round, left and right exchanged.</param>
    public static DrawnPart Of(string entry, IEnumerable<PageAhead> pages, SyntaxWriter content, bool mirrored)
    {
        var structure = new StructurePart();
        var reading = new ReadingOrder(structure);
        ImmutableArray<DrawnCharacters> characters = [.. Enumerable.Range(0, Face.Count).Select(_ => new DrawnCharacters())];
        var drawn = ImmutableArray.CreateBuilder<DrawnPage>();
        foreach (var (size, begins, draw) in pages)
        {
            content.Clear();
            size.InMillimetres(content, mirrored);
            reading.BeginPage(content, size, mirrored);
            draw(new ContentPage(content, characters, reading));
            reading.EndPage();
            drawn.Add(new(size, Flate.Packed(content.Written.Span), begins));
        }

        return new(entry, drawn.ToImmutable(), structure, characters);
    }
}
