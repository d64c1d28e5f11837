using System.Collections.Concurrent;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// The two typefaces that sheets are set in. Every font comes from here, so that PDFsharp has its font resolver before it
/// needs one, and every text is embedded as Unicode. Safe for several threads.
/// </summary>
public sealed class Typeface
{
    internal const string InterFamily = "Inter";
    internal const string InterTabularFamily = "Inter Tabular";

    private readonly string _family;
    private readonly ConcurrentDictionary<(double Size, bool Bold), XFont> _fonts = new();

    // Explicit, so that the resolver is set before the first font and not at some time before it.
    static Typeface()
    {
        GlobalFontSettings.FontResolver = new InterFontResolver();
        Inter = new Typeface(InterFamily);
        InterTabular = new Typeface(InterTabularFamily);
    }

    private Typeface(string family) => _family = family;

    /// <summary>For words.</summary>
    public static Typeface Inter { get; }

    /// <summary>For columns of figures: digits and the figure space (U+2007) are all equally wide. Otherwise as <see cref="Inter"/>.</summary>
    public static Typeface InterTabular { get; }

    /// <summary>The font in one size; the same object for the same size.</summary>
    /// <param name="size">Height of the em square, in the unit of the page's <see cref="XGraphics"/>: millimetres on pages of <see cref="Pdf.PaperSize"/>.</param>
    /// <param name="bold">Semi-bold, to be exact.</param>
    public XFont Font(double size, bool bold = false) => _fonts.GetOrAdd((size, bold), Make, _family);

    /// <summary>A face in some size, to be embedded.</summary>
    internal static XFont Font(Face face)
    {
        const int AnySize = 10;
        return (face.Tabular ? InterTabular : Inter).Font(AnySize, face.Bold);
    }

    private static XFont Make((double Size, bool Bold) key, string family) =>
        new(family, key.Size, key.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, new XPdfFontOptions(PdfFontEncoding.Unicode));
}
