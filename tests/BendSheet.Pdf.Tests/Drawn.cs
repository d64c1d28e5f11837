using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Fonts;

using PdfSharp.Drawing;
using PdfSharp.Pdf;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BendSheet.Pdf.Tests;

/// <summary>Small documents for the tests, and what an independent reader finds in them.</summary>
internal static class Drawn
{
    public const double PointsPerMm = 72 / 25.4;

    /// <summary>
    /// A file of one page, A4 where no other paper is named, with whatever <paramref name="draw"/> puts on it, as sheets are drawn.
    /// </summary>
    public static byte[] OnCanvas(
        Action<Canvas> draw, PaperSize? paper = null, double left = 0, double width = 210, bool mirrored = false) =>
            Bound("Test", new PdfPress().Draw(
        "Test",
        [new(paper ?? PaperSize.A4, null, page => draw(new Canvas(page, left, width)))],
        mirrored));

    private static byte[] Bound(string title, IDrawnPart part) => new PdfPress().Bind([part], title).ToArray();

    /// <summary>A file that PDFsharp has drawn alone.</summary>
    public static byte[] File(Action<XGraphics> draw)
    {
        var document = new PdfDocument();
        using (var graphics = NewPage(document))
        {
            draw(graphics);
        }

        return FinishedPdf.Of(document, "Test");
    }

    /// <summary>A file with all that PDFsharp makes up: fonts, bookmarks, transparency.</summary>
    public static PdfDocument Varied()
    {
        var document = new PdfDocument();
        for (var number = 1; number <= 3; number++)
        {
            using var graphics = NewPage(document);
            graphics.DrawString($"Bend {number}: 45°, mark ⅜", Typeface.Font(Face.At(0), 4), XBrushes.Black, 20, 30);
            graphics.DrawString($"{number}284.5", Typeface.Font(Face.At(2), 6), XBrushes.Black, 20, 40);
            graphics.DrawString("Line", Typeface.Font(Face.At(1), 6), XBrushes.Black, 20, 50);
            graphics.DrawLine(new XPen(XColor.FromArgb(128, 0, 0, 0), 0.2), 20, 60, 120, 60);
            document.Outlines.Add($"Page {number} (of 3)", document.Pages[number - 1]);
        }

        return document;
    }

    /// <summary>One page with one text on it, as copied out of the finished file.</summary>
    public static string ReadBack(string text, TextStyle style)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(OnCanvas(canvas => canvas.Text(text, style, 10, 50)));
        return ContentOrderTextExtractor.GetText(pdf.GetPage(1)).Trim();
    }

    /// <summary>The letters of one text on a page.</summary>
    public static IReadOnlyList<Letter> Letters(string text, TextStyle style)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(OnCanvas(canvas => canvas.Text(text, style, 10, 50)));
        return [.. pdf.GetPage(1).Letters.SkipLast(1)]; // without the blank that ends a text
    }

    private static XGraphics NewPage(PdfDocument document) =>
        XGraphics.FromPdfPage(PaperSize.A4.NewPage(document), XGraphicsUnit.Millimeter);
}
