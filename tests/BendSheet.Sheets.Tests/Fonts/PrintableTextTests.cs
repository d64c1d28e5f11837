using BendSheet.Sheets.Fonts;

namespace BendSheet.Sheets.Tests.Fonts;

public class PrintableTextTests
{
    [Theory]
    [InlineData("")]
    [InlineData("Left front, 1284.5 mm")]
    [InlineData("45° ± ½ Ø Ωμέγα Ёж □")]
    public void What_has_glyphs_stays_as_it_is(string typed)
    {
        var text = PrintableText.Of(typed);

        Assert.Equal(typed, text.Text);
        Assert.Empty(text.Replaced);
    }

    [Theory]
    [InlineData("ブレーキ", "□□□□", "ブ (U+30D6)", "レ (U+30EC)", "ー (U+30FC)", "キ (U+30AD)")]
    [InlineData("管 and 管", "□ and □", "管 (U+7BA1)")]
    [InlineData("a🔧b", "a□b", "🔧 (U+1F527)")]
    [InlineData("bell\u0007", "bell□", "U+0007")]
    [InlineData("\0", "□", "U+0000")]
    [InlineData("a\u0080b", "a□b", "U+0080")]
    [InlineData("\uE071", "□", "\uE071 (U+E071)")]
    [InlineData("∠", "□", "∠ (U+2220)")]
    public void What_has_no_glyph_is_stood_in_for_and_told(string typed, string printed, params string[] replaced)
    {
        var text = PrintableText.Of(typed);

        Assert.Equal(printed, text.Text);
        Assert.Equal(replaced, text.Replaced, StringComparer.Ordinal);
    }

    [Fact]
    public void Half_a_surrogate_pair_is_stood_in_for_too()
    {
        var text = PrintableText.Of("a\ud83d, \udd27b");

        Assert.Equal("a□, □b", text.Text);
        Assert.Equal(["U+D83D", "U+DD27"], text.Replaced, StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("a\tb", "a b")]
    [InlineData("a\nb", "a b")]
    [InlineData("a\r\nb", "a b")]
    [InlineData("a\r", "a ")]
    [InlineData("a\u2028b\u0085c", "a b c")]
    [InlineData("a\u3000b", "a b")]
    public void Tabs_and_line_ends_become_one_blank(string typed, string printed)
    {
        var text = PrintableText.Of(typed);

        Assert.Equal(printed, text.Text);
        Assert.Empty(text.Replaced);
    }

    [Theory]
    [InlineData("10\u00A0mm", "10 mm")]
    [InlineData("A\u20111", "A-1")]
    [InlineData("\u2126\u2206\u0269", "ΩΔι")]
    [InlineData("\u25C4\u25BA\u25C5\u25BB", "◀▶◁▷")]
    [InlineData("\u2780\u2788", "①⑨")]
    [InlineData("⌀6", "Ø6")]
    [InlineData("ﬁx ⅔ ㎜ ☐ 1∕2", "fix ²⁄₃ mm □ 1/2")]
    [InlineData("Ａ～１", "A~1")]
    public void Look_alikes_become_the_usual_character(string typed, string printed)
    {
        var text = PrintableText.Of(typed);

        Assert.Equal(printed, text.Text);
        Assert.Empty(text.Replaced);
    }

    [Theory]
    [InlineData("soft\u00ADhyphen", "softhyphen")]
    [InlineData("a\u200Bb\u200D\uFEFF", "ab")]
    [InlineData("\u202Eabc\u202C\u2066", "abc")]
    [InlineData("✓\uFE0F", "✓")]
    public void Characters_that_are_not_seen_are_left_out(string typed, string printed)
    {
        var text = PrintableText.Of(typed);

        Assert.Equal(printed, text.Text);
        Assert.Empty(text.Replaced);
    }

    [Fact]
    public void Nothing_that_is_left_prints_as_the_missing_glyph()
    {
        var map = new CharacterMap(InterFace.Read(InterFace.SemiBold));
        for (var code = 0; code <= 0xFFFF; code++)
        {
            Assert.All(PrintableText.Of(((char)code).ToString()).Text, printed => Assert.NotEqual(0, map[printed]));
        }
    }
}
