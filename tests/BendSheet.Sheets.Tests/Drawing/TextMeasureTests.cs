using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Tests.Drawing;

public class TextMeasureTests
{
    [Theory]
    [InlineData("A brake line is a safety part: this sheet gives geometry and nothing else.", 30)]
    [InlineData("Donaudampfschifffahrtsgesellschaftskapitänswitwe has one word that does not fit", 20)]
    [InlineData("Cut it square to 2280.0 mm (89 49/64+ in), leaving 2 mm", 12)]
    [InlineData("90° ccw", 8)]
    [InlineData("x", 1)]
    [InlineData("WWWWWWWWWW", 0.5)]
    public void Wrapping_loses_nothing_and_no_line_is_too_wide(string text, double width)
    {
        var measure = new TextMeasure();
        var lines = measure.Wrap(text, TextStyle.Body, width);
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.True(line.Length == 1 || TextStyle.Body.Width(line) <= width));
    }

    /// <summary>Only where the figure alone fills a line does its unit stand on the next one.</summary>
    [Fact]
    public void A_figure_and_its_unit_share_a_line()
    {
        var measure = new TextMeasure();
        var width = TextStyle.Body.Width("leaving 2 ");
        Assert.Equal(["leaving", "2 mm for", "the flare"], measure.Wrap("leaving 2 mm for the flare", TextStyle.Body, width));
        var narrow = Math.Max(TextStyle.Body.Width("leaving"), TextStyle.Body.Width("2280.0")) + 0.01;
        Assert.Equal(["leaving", "2280.0", "mm"], measure.Wrap("leaving 2280.0 mm", TextStyle.Body, narrow));
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
