using BendSheet.Sheets.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BendSheet.Pdf;

/// <summary>A sheet of paper as a page of a PDF, which counts in points from the lower left corner.</summary>
internal static class PdfPaper
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>
    /// Begins the content of a page: what is drawn afterwards counts in millimetres from the upper left corner, y downwards; pens and fonts
    /// too.
    /// </summary>
    /// <param name="size">Of the paper.</param>
    /// <param name="content">Empty.</param>
    /// <param name="mirrored">Left and right exchanged.</param>
    public static void InMillimetres(this PaperSize size, SyntaxWriter content, bool mirrored)
    {
        _ = mirrored
            ? content.Raw("-2.834645669 0 0 -2.834645669 "u8).Number(size.WidthMm * PointsPerMillimetre)
            : content.Raw("2.834645669 0 0 -2.834645669 0 "u8);
        content.Number(size.HeightMm * PointsPerMillimetre).Raw("cm\n"u8);
    }

    /// <summary>Appends an empty page. PDFsharp's own A4 is a tenth of a millimetre off.</summary>
    public static PdfPage NewPage(this PaperSize size, PdfDocument document)
    {
        var page = document.AddPage();
        page.Width = XUnitPt.FromMillimeter(size.WidthMm);
        page.Height = XUnitPt.FromMillimeter(size.HeightMm);
        return page;
    }
}
