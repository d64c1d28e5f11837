using System.Text;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// Inter with digits that are all equally wide, so that columns of figures line up. Inter carries such digits for
/// OpenType's <c>tnum</c> feature, which PDFsharp does not do, and maps them to private characters, which nobody
/// wants to copy out of a PDF. So the map of the ordinary digits is made to point at them.
/// </summary>
internal static class TabularDigits
{
    private const char FirstTabularDigit = '\uE071';

    /// <summary>The font, changed in place; it gets another name too, because PDFsharp keeps faces apart by it.</summary>
    public static byte[] In(byte[] font)
    {
        var map = new CharacterMap(font);
        var width = AdvanceWidth(font, map[FirstTabularDigit]);
        for (var digit = 0; digit <= 9; digit++)
        {
            var glyph = map[(char)(FirstTabularDigit + digit)];
            map.Replace((char)('0' + digit), glyph);
            width.CopyTo(AdvanceWidth(font, glyph)); // the semi-bold 4 is a thousandth narrower than the others
        }

        Rename(font);
        return font;
    }

    /// <summary>The place of a glyph's width in the <c>hmtx</c> table; Inter has an entry for every glyph.</summary>
    private static Span<byte> AdvanceWidth(byte[] font, ushort glyph) =>
        font.AsSpan(TrueType.TableOffset(font, "hmtx"u8) + (4 * glyph), sizeof(ushort));

    /// <summary>
    /// "Inter" becomes "InTab" in the names that programs go by. Copyright, trademark and licence stay as they are.
    /// </summary>
    private static void Rename(byte[] font)
    {
        var name = TrueType.TableOffset(font, "name"u8);
        var recordCount = TrueType.UInt16(font, name + 2);
        var strings = name + TrueType.UInt16(font, name + 4);
        var oldName = Encoding.BigEndianUnicode.GetBytes("Inter");
        var newName = Encoding.BigEndianUnicode.GetBytes("InTab");

        for (var record = name + 6; record < name + 6 + (12 * recordCount); record += 12)
        {
            // Family, unique name, full name, PostScript name, typographic family, compatible full name.
            if (TrueType.UInt16(font, record + 6) is 1 or 3 or 4 or 6 or 16 or 18)
            {
                var text = font.AsSpan(strings + TrueType.UInt16(font, record + 10), TrueType.UInt16(font, record + 8));
                if (text.IndexOf(oldName) is >= 0 and var at)
                {
                    newName.CopyTo(text[at..]);
                }
            }
        }
    }
}
