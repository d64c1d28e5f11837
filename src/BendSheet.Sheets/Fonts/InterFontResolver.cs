using PdfSharp.Fonts;

namespace BendSheet.Sheets.Fonts;

/// <summary>Gives PDFsharp the faces of the two families, each read when it is first asked for. Holds no state.</summary>
internal sealed class InterFontResolver : IFontResolver
{
    private const string TabularSuffix = "-Tabular";

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic)
    {
        var face = isBold ? InterFace.SemiBold : InterFace.Regular;
        return familyName switch
        {
            Typeface.InterFamily => new FontResolverInfo(face),
            Typeface.InterTabularFamily => new FontResolverInfo(face + TabularSuffix),
            _ => null,
        };
    }

    public byte[] GetFont(string faceName)
    {
        if (!faceName.EndsWith(TabularSuffix, StringComparison.Ordinal))
        {
            return InterFace.Read(faceName);
        }

        var font = InterFace.Read(faceName[..^TabularSuffix.Length]);
        TabularDigits.ApplyTo(font);
        return font;
    }
}
