using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Tests.Drawing;

public class TextMeasureTests
{
    [Theory]
    [InlineData("A brake line is a safety part: this sheet gives geometry and nothing else.", 30)]
    [InlineData("Donaudampfschifffahrtsgesellschaftskapitänswitwe has one word that does not fit", 20)]
    [InlineData("x", 1)]
    [InlineData("WWWWWWWWWW", 0.5)]
    public void Wrapping_loses_nothing_and_no_line_is_too_wide(string text, double width)
    {
        var measure = new TextMeasure();
        var lines = measure.Wrap(text, TextStyle.Body, width);
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.True(line.Length == 1 || TextStyle.Body.Width(line) <= width));
    }

    [Fact]
    public void Empty_text_is_one_empty_line()
    {
        var measure = new TextMeasure();
        Assert.Equal([string.Empty], measure.Wrap(" ", TextStyle.Body, 10));
    }

    [Fact]
    public void A_text_too_wide_is_set_smaller_but_never_below_eight_points()
    {
        Assert.Equal(TextStyle.Mark, TextStyle.Mark.Fitting("114.5", 100));
        var smaller = TextStyle.Mark.Fitting("114.5", 10);
        Assert.True(smaller.Width("114.5") <= 10.001 && smaller.Points > 8);
        Assert.Equal(8, TextStyle.Mark.Fitting("114.5", 1).Points);
    }
}
