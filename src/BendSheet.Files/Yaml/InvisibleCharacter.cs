namespace BendSheet.Files.Yaml;

/// <summary>Characters that no editor shows, whether typed as they are or as an escape inside quotes.</summary>
internal static class InvisibleCharacter
{
    /// <summary>A control character other than the tab, a line end of Unicode (U+2028, U+2029), a space without width (U+200B, U+FEFF), or
    /// a turn of the direction of writing (U+202A to U+202E, U+2066 to U+2069).</summary>
    public static bool Is(char c) =>
        (char.IsControl(c) && c != '\t')
        || c is '\u2028' or '\u2029' or '\u200B' or '\uFEFF' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
