using System.Globalization;
using BendSheet.Sheets.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BendSheet.Pdf;

/// <summary>Drawn parts as one document: its pages, fonts, outline and structure.</summary>
internal static class PdfAssembler
{
    /// <summary>The whole file.</summary>
    /// <param name="parts">In their order; at least one page in all.</param>
    /// <param name="title">What a viewer shows in its title bar. Any text.</param>
    public static ReadOnlyMemory<byte> Bound(IReadOnlyList<DrawnPart> parts, string title)
    {
        using var document = new PdfDocument { Language = "en" };
        var resources = Resources(document, parts);
        foreach (var part in parts)
        {
            PdfOutline? outline = null;
            foreach (var drawn in part.Pages)
            {
                var page = drawn.Size.NewPage(document);
                page.Elements["/Resources"] = resources.Reference;
                page.Elements.SetInteger("/StructParents", document.PageCount - 1);
                var content = page.Contents.AppendContent();
                content.CreateStream(drawn.Content);
                content.Elements.SetName("/Filter", "/FlateDecode");
                outline ??= document.Outlines.Add(part.Entry, page);
                if (drawn.Begins is { } name)
                {
                    outline.Outlines.Add(name, page);
                }
            }
        }

        MarkStructure(document);
        var size = parts.Sum(part => part.Pages.Sum(page => page.Content.Length));
        return FinishedPdf.Of(document, title, size, new StructureTree([.. parts.Select(part => part.Structure)]));
    }

    /// <summary>
    /// What all pages draw with: every face that was used, under its number, embedded with the characters that were drawn. PDFsharp embeds
    /// what is drawn on a page, so the characters are drawn once on a page that is taken out again.
    /// </summary>
    private static PdfDictionary Resources(PdfDocument document, IReadOnlyList<DrawnPart> parts)
    {
        var fonts = new PdfDictionary(document);
        var page = document.AddPage();
        using (var graphics = XGraphics.FromPdfPage(page))
        {
            for (var number = 0; number < Face.Count; number++)
            {
                if (Drawn(number) is { Length: > 0 } characters)
                {
                    graphics.DrawString(characters, Typeface.Font(Face.At(number)), XBrushes.Black, 0, 0);
                    var embedded = page.Resources.Elements.GetDictionary("/Font")!.Elements.Values.Except(fonts.Elements.Values).Single();
                    fonts.Elements[string.Create(CultureInfo.InvariantCulture, $"/F{number}")] = embedded;
                }
            }
        }

        document.Pages.Remove(page);
        var resources = new PdfDictionary(document);
        resources.Elements["/Font"] = fonts;
        document.Internals.AddObject(resources);
        return resources;

        string Drawn(int face) => string.Concat(parts.SelectMany(part => part.Characters[face].All).Distinct().Order());
    }

    /// <summary>The catalogue says that there is a structure; the finishing pass writes it out.</summary>
    private static void MarkStructure(PdfDocument document)
    {
        var catalog = document.Internals.Catalog.Elements;
        var marked = new PdfDictionary(document);
        marked.Elements.SetBoolean("/Marked", true);
        catalog["/MarkInfo"] = marked;
        var root = new PdfDictionary(document);
        root.Elements.SetName("/Type", "/StructTreeRoot");
        document.Internals.AddObject(root);
        catalog["/StructTreeRoot"] = root.Reference;
    }
}
