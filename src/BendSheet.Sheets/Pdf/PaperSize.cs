using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BendSheet.Sheets.Pdf;

/// <summary>A sheet of paper. Its sides are exact: a PDF page of PDFsharp's own A4 is a tenth of a millimetre off.</summary>
public sealed record PaperSize
{
    private const double MmPerInch = 25.4;
    private const double PointsPerMillimetre = 72 / MmPerInch;

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

    /// <summary>Begins the content of a page: what is drawn afterwards counts in millimetres from the upper left corner, y downwards; pens and fonts too.</summary>
    /// <param name="content">Empty.</param>
    /// <param name="mirrored">Left and right exchanged.</param>
    internal void InMillimetres(SyntaxWriter content, bool mirrored)
    {
        _ = mirrored
            ? content.Raw("-2.834645669 0 0 -2.834645669 "u8).Number(WidthMm * PointsPerMillimetre)
            : content.Raw("2.834645669 0 0 -2.834645669 0 "u8);
        content.Number(HeightMm * PointsPerMillimetre).Raw("cm\n"u8);
    }

    /// <summary>Appends an empty page.</summary>
    internal PdfPage NewPage(PdfDocument document)
    {
        var page = document.AddPage();
        page.Width = XUnitPt.FromMillimeter(WidthMm);
        page.Height = XUnitPt.FromMillimeter(HeightMm);
        return page;
    }
}
