namespace BendSheet.Sheets.Fonts;

/// <summary>
/// Characters that are typed for another one. Some share its glyph, and text copied out of the PDF would give whichever
/// came first; the others have no glyph, though one that means the same is there.
/// </summary>
internal static class LookAlike
{
    /// <summary>The text to print instead; null for all other characters.</summary>
    public static string? Of(char character) => character switch
    {
        // A glyph of another character.
        '\u00A0' => " ", // no-break space
        '\u2011' => "-", // no-break hyphen
        '\u0269' => "ι",
        '\u2126' => "Ω", // ohm
        '\u2206' => "Δ", // increment
        '\u25C4' => "◀",
        '\u25BA' => "▶",
        '\u25C5' => "◁",
        '\u25BB' => "▷",
        >= '\u2780' and <= '\u2788' => ((char)('①' + (character - '\u2780'))).ToString(), // circled sans-serif digits

        // No glyph of its own.
        '\u2300' => "Ø", // diameter
        '\u2610' => "□", // ballot box
        '\u2154' => "²⁄₃",
        '\u2215' => "/", // division slash
        '\u223C' => "~", // tilde operator
        '\u339C' => "mm",
        '\uFB01' => "fi",
        '\uFB02' => "fl",
        >= '\uFF01' and <= '\uFF5E' => ((char)(character - '\uFF01' + '!')).ToString(), // full-width forms
        _ => null,
    };
}
