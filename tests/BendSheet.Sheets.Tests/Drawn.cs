using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Fonts;
using BendSheet.Sheets.Pdf;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BendSheet.Sheets.Tests;

/// <summary>Small documents for the tests, and what an independent reader finds in them.</summary>
internal static class Drawn
{
    public const double PointsPerMm = 72 / 25.4;

    /// <summary>One page of A4 with whatever <paramref name="draw"/> puts on it.</summary>
    public static PdfDocument Document(Action<XGraphics> draw)
    {
        var document = new PdfDocument();
        using var graphics = PaperSize.A4.AddPage(document);
        draw(graphics);
        return document;
    }

    /// <summary>A file of one page of A4 with whatever <paramref name="draw"/> puts on its canvas.</summary>
    public static byte[] OnCanvas(double left, double width, Action<Canvas> draw) => BoundParts.Of(
        [DrawnPart.Of("Test", [(PaperSize.A4, null, (ink, reading) => draw(new Canvas(ink, left, width, reading)))], new TextMeasure(), new SyntaxWriter(0x1000))], "Test").ToArray();

    public static byte[] File(Action<XGraphics> draw) => FinishedPdf.Of(Document(draw), "Test");

    /// <summary>A file with all that PDFsharp makes up: fonts, links, bookmarks, transparency.</summary>
    public static PdfDocument Varied()
    {
        var document = new PdfDocument();
        for (var number = 1; number <= 3; number++)
        {
            using var graphics = PaperSize.A4.AddPage(document);
            graphics.DrawString($"Bend {number}: 45°, mark ⅜", Typeface.Inter.Font(4), XBrushes.Black, 20, 30);
            graphics.DrawString($"{number}284.5", Typeface.InterTabular.Font(6), XBrushes.Black, 20, 40);
            graphics.DrawString("Line", Typeface.Inter.Font(6, bold: true), XBrushes.Black, 20, 50);
            graphics.DrawLine(new XPen(XColor.FromArgb(128, 0, 0, 0), 0.2), 20, 60, 120, 60);
            var link = graphics.Transformer.WorldToDefaultPage(new XRect(20, 70, 30, 5));
            document.Pages[number - 1].AddDocumentLink(new PdfRectangle(link), 1);
            document.Outlines.Add($"Page {number} (of 3)", document.Pages[number - 1]);
        }

        return document;
    }

    /// <summary>One page with one text on it, as copied out of the finished file.</summary>
    public static string ReadBack(string text, XFont font)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(File(graphics => graphics.DrawString(text, font, XBrushes.Black, 10, 50)));
        return ContentOrderTextExtractor.GetText(pdf.GetPage(1)).Trim();
    }

    public static IReadOnlyList<Letter> Letters(string text, XFont font)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(File(graphics => graphics.DrawString(text, font, XBrushes.Black, 10, 50)));
        return pdf.GetPage(1).Letters;
    }
}
