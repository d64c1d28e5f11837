using BendSheet.Sheets.Fonts;
using PdfSharp.Drawing;
using UglyToad.PdfPig;

namespace BendSheet.Sheets.Tests.Fonts;

public class TypefaceTests
{
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
        foreach (var typeface in new[] { Typeface.Inter, Typeface.InterTabular })
        {
            Assert.Equal(text, Drawn.ReadBack(text, typeface.Font(3)));
            Assert.Equal(text, Drawn.ReadBack(text, typeface.Font(3, bold: true)));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Tabular_digits_are_equally_wide_and_come_back_as_digits(bool bold)
    {
        const string Digits = "0123456789";
        var letters = Drawn.Letters(Digits, Typeface.InterTabular.Font(4, bold));

        Assert.Equal(Digits, string.Concat(letters.Select(letter => letter.Value)));
        Assert.All(letters, letter => Assert.Equal(letters[0].Width, letter.Width, 1e-9));
    }

    [Fact]
    public void Digits_of_words_keep_their_own_widths()
    {
        var letters = Drawn.Letters("14", Typeface.Inter.Font(4));

        Assert.True(letters[1].Width > 1.2 * letters[0].Width);
    }

    [Fact]
    public void A_figure_space_is_as_wide_as_a_tabular_digit()
    {
        using var document = new PdfSharp.Pdf.PdfDocument();
        using var graphics = BendSheet.Sheets.Pdf.PaperSize.A4.AddPage(document);
        var font = Typeface.InterTabular.Font(4);

        Assert.Equal(graphics.MeasureString("1", font).Width, graphics.MeasureString("\u2007", font).Width, 1e-9);
    }

    [Fact]
    public void All_four_faces_are_embedded_under_names_of_their_own()
    {
        using var pdf = PdfDocument.Open(Drawn.File(graphics =>
        {
            graphics.DrawString("1", Typeface.Inter.Font(4), XBrushes.Black, 10, 10);
            graphics.DrawString("1", Typeface.Inter.Font(4, bold: true), XBrushes.Black, 20, 10);
            graphics.DrawString("1", Typeface.InterTabular.Font(4), XBrushes.Black, 30, 10);
            graphics.DrawString("1", Typeface.InterTabular.Font(4, bold: true), XBrushes.Black, 40, 10);
        }));

        var names = pdf.GetPage(1).Letters.Select(letter => letter.FontName!);
        Assert.Equal(["AAAAAA+Inter Regular", "AAAAAB+Inter Semi", "AAAAAC+InTab Regular", "AAAAAD+InTab Semi"], names, StringComparer.Ordinal);
    }

    [Fact]
    public void A_face_is_embedded_once_whatever_its_sizes()
    {
        var file = System.Text.Encoding.Latin1.GetString(Drawn.File(graphics =>
        {
            graphics.DrawString("a", Typeface.Inter.Font(3), XBrushes.Black, 10, 10);
            graphics.DrawString("ж", Typeface.Inter.Font(5), XBrushes.Black, 10, 20);
        }));

        Assert.Equal(2, file.Split("/FontFile2").Length);
    }

    [Fact]
    public void The_same_size_gives_the_same_font() =>
        Assert.Same(Typeface.Inter.Font(2.5), Typeface.Inter.Font(2.5));
}
