using System.Globalization;
using BendSheet.Sheets.Fonts;
using PdfSharp.Fonts;

namespace BendSheet.Pdf;

/// <summary>Gives PDFsharp the faces of the two families, under their numbers. Holds no state.</summary>
internal sealed class InterFontResolver : IFontResolver
{
    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) => familyName switch
    {
        Typeface.InterFamily => Info(Face.Of(isBold, tabular: false)),
        Typeface.InterTabularFamily => Info(Face.Of(isBold, tabular: true)),
        _ => null,
    };

    public byte[] GetFont(string faceName) => Face.At(int.Parse(faceName, CultureInfo.InvariantCulture)).File;

    private static FontResolverInfo Info(Face face) => new(face.Number.ToString(CultureInfo.InvariantCulture));
}
