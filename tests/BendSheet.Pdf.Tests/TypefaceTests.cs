using System.Globalization;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Fonts;
using UglyToad.PdfPig;

namespace BendSheet.Pdf.Tests;

public class TypefaceTests
{
    private static readonly TextStyle[] Styles = [new(9), new(9, Bold: true), new(9, Tabular: true), new(9, Bold: true, Tabular: true)];

    [Theory]
    [InlineData("45° ± 0.5° × −1 Ø4.75 ∅")]
    [InlineData("⅛ ¼ ⅜ ½ ⅝ ¾ ⅞ ⅓ ⁵⁄₁₆")]
    [InlineData("A → B ← C ↑ ↓ ↻ ↺ □ ■ ○ ● ▲ ▶ ✓ ✗ 3′ 2″")]
    [InlineData("Γραμμή φρένου ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ")]
    [InlineData("Тормозная трубка, задняя левая ёЁйЙ")]
    [InlineData("Çağrı Łódź Ærø Straße čšž ő ñ")]
    public void Text_comes_back_as_it_was_typed(string text)
    {
        Assert.Empty(PrintableText.Of(text).Replaced);
        Assert.All(Styles, style => Assert.Equal(text, Drawn.ReadBack(text, style)));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Tabular_digits_are_equally_wide_and_come_back_as_digits(bool bold)
    {
        const string Digits = "0123456789";
        var letters = Drawn.Letters(Digits, new(10, bold, Tabular: true));

        Assert.Equal(Digits, string.Concat(letters.Select(letter => letter.Value)));
        Assert.All(letters, letter => Assert.Equal(letters[0].Width, letter.Width, 1e-9));
    }

    [Fact]
    public void Digits_of_words_keep_their_own_widths()
    {
        var letters = Drawn.Letters("14", new(10));

        Assert.True(letters[1].Width > 1.2 * letters[0].Width);
    }

    [Fact]
    public void A_figure_space_is_as_wide_as_a_tabular_digit()
    {
        var letters = Drawn.Letters("1\u2007", new(10, Tabular: true));
        Assert.Equal(letters[0].Width, letters[1].Width, 1e-9);
    }

    [Fact]
    public void All_four_faces_are_embedded_under_names_of_their_own()
    {
        using var pdf = PdfDocument.Open(Drawn.OnCanvas(canvas =>
        {
            foreach (var style in Styles)
            {
                canvas.Text("1", style, 10, 10);
            }
        }));

        var names = pdf.GetPage(1).Letters.Where(letter => letter.Value is "1").Select(letter => letter.FontName!);
        Assert.Equal(
            ["AAAAAA+Inter Regular", "AAAAAB+Inter Semi", "AAAAAC+InTab Regular", "AAAAAD+InTab Semi"], names, StringComparer.Ordinal);
    }

    [Fact]
    public void A_face_is_embedded_once_whatever_its_sizes()
    {
        var file = System.Text.Encoding.Latin1.GetString(Drawn.OnCanvas(canvas =>
        {
            canvas.Text("a", new(9), 10, 10);
            canvas.Text("ж", new(14), 10, 20);
        }));

        Assert.Equal(2, file.Split("/FontFile2").Length);
    }

    [Fact]
    public void Every_printable_character_comes_back_as_itself()
    {
        var all = Enumerable.Range(0x21, 0xFFFF - 0x21)
            .Select(code => (char)code)
            .Where(character => PrintableText.Of(character.ToString()) is { Replaced: [], Text.Length: 1 } text
            && text.Text[0] == character)
            .Where(character => !char.IsWhiteSpace(character))
            .Where(character => char.GetUnicodeCategory(character) != UnicodeCategory.NonSpacingMark) // the reader joins them to a letter
            .ToArray();

        Assert.InRange(all.Length, 1900, 2474); // the font's map has 2474 characters
        var letters = Drawn.Letters(new string(all), new TextStyle(0.14));
        Assert.Equal(all.Select(character => character.ToString()), letters.Select(letter => letter.Value), StringComparer.Ordinal);
    }
}
