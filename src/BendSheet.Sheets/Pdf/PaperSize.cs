using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BendSheet.Sheets.Pdf;

/// <summary>A sheet of paper. Its sides are exact: a PDF page of PDFsharp's own A4 is a tenth of a millimetre off.</summary>
public sealed record PaperSize
{
    private const double MmPerInch = 25.4;

    private PaperSize(double widthMm, double heightMm)
    {
        WidthMm = widthMm;
        HeightMm = heightMm;
    }

    /// <summary>210 mm × 297 mm (ISO 216), upright.</summary>
    public static PaperSize A4 { get; } = new(210, 297);

    /// <summary>8½ in × 11 in (ANSI A), upright.</summary>
    public static PaperSize Letter { get; } = new(8.5 * MmPerInch, 11 * MmPerInch);

    /// <summary>Left to right.</summary>
    public double WidthMm { get; }

    /// <summary>Top to bottom.</summary>
    public double HeightMm { get; }

    /// <summary>The same sheet turned by a quarter.</summary>
    public PaperSize Turned() => new(HeightMm, WidthMm);

    /// <summary>
    /// Appends a page and gives the drawing on it: millimetres from the upper left corner, y downwards; pens and fonts in
    /// millimetres too. Dispose of it before the next page.
    /// </summary>
    public XGraphics AddPage(PdfDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var page = document.AddPage();
        page.Width = XUnitPt.FromMillimeter(WidthMm);
        page.Height = XUnitPt.FromMillimeter(HeightMm);
        return XGraphics.FromPdfPage(page, XGraphicsUnit.Millimeter);
    }
}
