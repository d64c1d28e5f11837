using System.Globalization;
using System.Text;

namespace BendSheet.Files.Yaml;

/// <summary>Characters that no editor shows, whether typed as they are or as an escape inside quotes.</summary>
internal static class InvisibleCharacter
{
    /// <summary>A control character other than the tab, a line end of Unicode (U+2028, U+2029), a space without width (U+200B, U+FEFF), or
    /// a turn of the direction of writing (U+202A to U+202E, U+2066 to U+2069).</summary>
    public static bool Is(char c) =>
        (char.IsControl(c) && c != '\t')
        || c is '\u2028' or '\u2029' or '\u200B' or '\uFEFF' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>
    /// Nothing of the text can be seen: only spaces, characters that shape others, letters that are empty by their meaning (the
    /// property Default_Ignorable_Code_Point of the Unicode Character Database), and the Braille pattern without dots.
    /// </summary>
    public static bool IsAllOf(string text) => text.EnumerateRunes().All(IsUnseen);

    private static bool IsUnseen(Rune rune) => Rune.IsWhiteSpace(rune)
        || Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format
        || rune.Value is 0x034F or (>= 0x115F and <= 0x1160) or (>= 0x17B4 and <= 0x17B5) or (>= 0x180B and <= 0x180F) or 0x2065 or 0x2800
            or 0x3164 or (>= 0xFE00 and <= 0xFE0F) or 0xFFA0 or (>= 0xFFF0 and <= 0xFFF8) or (>= 0xE0000 and <= 0xE0FFF);
}
