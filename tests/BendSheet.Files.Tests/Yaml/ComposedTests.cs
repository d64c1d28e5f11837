using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>Unicode Standard Annex 15, figures 3 to 6 and section 1.3 (Hangul), and the examples beside them.</summary>
public class ComposedTests
{
    [Theory]
    [InlineData("\u212B", "\u00C5")] // ångström sign, figure 3
    [InlineData("\u2126", "\u03A9")] // ohm sign, figure 3
    [InlineData("\u00C5", "\u00C5")] // figure 4
    [InlineData("\u00F4", "\u00F4")] // figure 4
    [InlineData("A\u030A", "\u00C5")] // the same, typed as two
    [InlineData("\u1E69", "\u1E69")] // figure 5
    [InlineData("\u1E0B\u0323", "\u1E0D\u0307")] // figure 5: the dot below goes first
    [InlineData("q\u0307\u0323", "q\u0323\u0307")] // figure 5: nothing to compose, and still one order
    [InlineData("\uFB01", "\uFB01")] // figure 6: a ligature is no composition
    [InlineData("2\u2075", "2\u2075")] // figure 6
    [InlineData("\u017F\u0323\u0307", "\u1E9B\u0323")] // figure 6: the long s
    [InlineData("\u1E9B\u0323", "\u1E9B\u0323")] // figure 6
    [InlineData("\u1100\u1161\u11A8", "\uAC01")] // Hangul: 가 and its tail
    [InlineData("\uAC00\u11A8", "\uAC01")]
    [InlineData("\u1100\u1161", "\uAC00")]
    [InlineData("\u0915\u093C", "\u0915\u093C")] // excluded from composition
    [InlineData("\u0958", "\u0915\u093C")] // and taken apart, CompositionExclusions.txt
    [InlineData("e\u0301\u0301", "\u00E9\u0301")]
    [InlineData("a\u0315\u0300\u05AE\u0300\u0062", "\u00E0\u05AE\u0300\u0315b")] // NormalizationTest.txt, part 1, canonical order
    [InlineData("\uD834\uDD5E", "\uD834\uDD57\uD834\uDD65")] // outside of the first 65,536
    public void A_text_has_one_form_however_it_was_typed(string typed, string composed)
    {
        Assert.Equal(composed, Composed.Of(typed));
        Assert.Equal(composed, Composed.Of(composed));
    }

    [Theory]
    [InlineData("")]
    [InlineData("front-left")]
    [InlineData("öÄß 90° ± 3 × ½ →")]
    [InlineData("前左")]
    [InlineData("한글")]
    public void What_is_composed_already_comes_back_as_it_was(string typed) => Assert.Same(typed, Composed.Of(typed));

    /// <summary>Half of a pair is no character; it is shown as one that is lost.</summary>
    [Fact]
    public void A_broken_text_does_no_harm() => Assert.Equal("\u00E9\uFFFD", Composed.Of("e\u0301\uD834"));
}
