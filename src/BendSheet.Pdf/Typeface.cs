using BendSheet.Sheets.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace BendSheet.Pdf;

/// <summary>
/// The faces as PDFsharp embeds them. Every font comes from here, so that PDFsharp has a font resolver in time, and every text is
/// embedded as Unicode.
/// </summary>
internal static class Typeface
{
    /// <summary>For words.</summary>
    public const string InterFamily = "Inter";

    /// <summary>For columns of figures.</summary>
    public const string InterTabularFamily = "Inter Tabular";

    // Explicit, so that the resolver is set before the first font and not at some time before it.
    static Typeface() => GlobalFontSettings.FontResolver = new InterFontResolver();

    /// <summary>A face in some size.</summary>
    /// <param name="face">Which.</param>
    /// <param name="size">Height of the em square, in the unit of the page; what is embedded does not depend on it.</param>
    public static XFont Font(Face face, double size = 10) => new(
        face.Tabular ? InterTabularFamily : InterFamily,
        size,
        face.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
        new XPdfFontOptions(PdfFontEncoding.Unicode));
}
