using BendSheet.Sheets.Fonts;
using PdfSharp.Drawing;

namespace BendSheet.Pdf.Tests;

public class FaceTests
{
    public static TheoryData<bool, bool> Faces => new() { { false, false }, { true, false }, { false, true }, { true, true } };

    [Theory]
    [MemberData(nameof(Faces))]
    public void A_text_is_as_wide_as_the_library_that_embeds_the_face_measures_it(bool bold, bool tabular)
    {
        using var graphics = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Millimeter, XPageDirection.Downwards);
        var face = Face.Of(bold, tabular);
        var font = Typeface.Font(face, 4);
        Assert.All(
            [
                "A", "284.5 mm (11 13/64 in)", "45° ± 0.5° × −1 Ø4.75 ⅜ ⁵⁄₁₆ ↻ □ →", "Γραμμή φρένου", "Тормозная трубка ё", "Łódź čšž ő ñ",
                "1\u2007234",
            ],
            text => Assert.Equal(graphics.MeasureString(text, font).Width, 4.0 * face.Width(text) / face.UnitsPerEm, 1e-6));
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void All_faces_have_the_same_characters(bool bold, bool tabular) => Assert.All(
        Enumerable.Range(' ', 0xD800 - ' '),
        character => Assert.Equal(
            Face.Of(bold: false, tabular: false).Glyph((char)character) == 0, Face.Of(bold, tabular).Glyph((char)character) == 0));

    [Fact]
    public void A_character_without_a_glyph_has_none() => Assert.Equal(0, Face.At(0).Glyph('管'));
}
