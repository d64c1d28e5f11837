using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;
using UglyToad.PdfPig.Content;

namespace BendSheet.Sheets.Tests.FullSize;

/// <summary>The dial measured on paper.</summary>
public class DialPagesTests
{
    private const double ToleranceMm = 0.01;

    /// <summary>A circle is drawn as four curves that leave it by up to 3 parts in 10,000.</summary>
    private const double ArcToleranceMm = 0.03;
    private const double ToleranceDegrees = 0.02;
    private const double Rim = 72;
    private const double Medium = 0.3;
    private const double Thin = 0.2;

    [Theory]
    [InlineData(Paper.A4, "3/16 in", 4.7625)]
    [InlineData(Paper.Letter, "3/16 in", 4.7625)]
    [InlineData(Paper.A4, "25", 25)]
    public void The_hole_is_as_wide_as_the_tube_and_the_rim_lies_around_it(Paper paper, string typed, double diameter)
    {
        var page = Dial(
            Printed.WorkedExample.Replace("3/16 in", typed, StringComparison.Ordinal)
                .Replace("9/16 in", "30", StringComparison.Ordinal), paper);
        var circles = OnPaper.Arcs(page, Medium).OrderBy(arc => arc.Radius).ToList();
        Assert.Equal(2, circles.Count);
        Assert.Equal(diameter / 2, circles[0].Radius, ToleranceMm);
        Assert.Equal(Rim, circles[1].Radius, ArcToleranceMm);
        Assert.InRange(circles[0].Centre.To(circles[1].Centre), 0, ArcToleranceMm);
        Assert.All(circles, circle => Assert.Equal(360, circle.Sweep, 0.1));
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void There_is_a_tick_for_each_degree_longer_at_five_and_ten(Paper paper)
    {
        var page = Dial(Printed.WorkedExample, paper);
        var centre = Centre(page);
        var ticks = OnPaper.Lines(page, Medium).Concat(OnPaper.Lines(page, Thin))
            .Where(line => Math.Abs(line.From.To(centre) - Rim) < ToleranceMm && line.Length < 10)
            .OrderBy(line => centre.Bearing(line.From))
            .ToList();
        Assert.Equal(360, ticks.Count);
        Assert.All(Enumerable.Range(0, 360), degree =>
        {
            Assert.Equal(degree, centre.Bearing(ticks[degree].From), ToleranceDegrees);
            Assert.Equal(degree, centre.Bearing(ticks[degree].To), ToleranceDegrees);
            Assert.Equal(degree % 10 == 0 ? 6 : degree % 5 == 0 ? 4.5 : 2.8, ticks[degree].Length, ToleranceMm);
        });
    }

    [Fact]
    public void Its_figures_run_against_the_clock_because_it_turns_with_the_tube()
    {
        var page = Dial(Printed.WorkedExample, Paper.A4);
        var centre = Centre(page);
        var words = page.GetWords().Where(word => word.Text.All(char.IsAsciiDigit)).ToList();
        Assert.All(Enumerable.Range(1, 35).Select(i => i * 10), degree => Assert.Contains(words, word =>
        {
            var middle = word.BoundingBox.Centroid;
            var point = new Point(middle.X / 72 * 25.4, (page.Height - middle.Y) / 72 * 25.4);
            return string.Equals(word.Text, FormattableString.Invariant($"{degree}"), StringComparison.Ordinal)
                && Math.Abs(centre.Bearing(point) - (360 - degree)) < 1;
        }));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(60)]
    public void Each_stop_stands_at_its_reading(int bends)
    {
        var yaml = Printed.ManyBends(bends);
        var page = Dial(yaml, Paper.A4);
        var centre = Centre(page);
        var stops = OnPaper.Lines(page, Medium)
            .Where(line => Math.Abs(line.From.To(centre) - (Rim - 13)) < ToleranceMm && line.Length > 2.9)
            .Select(line => centre.Bearing(line.From)).Order().ToList();
        var wanted = Printed.Solved(yaml)[0].Plan!.Bends
            .Select(bend => Math.Round((360 - bend.LineAt.Degrees) % 360, 1)).Distinct().Order().ToList();
        Assert.Equal(wanted.Count, stops.Count);
        Assert.All(wanted.Zip(stops), pair => Assert.Equal(pair.First, pair.Second, ToleranceDegrees));
    }

    [Fact]
    public void Bends_at_one_reading_share_a_stop()
    {
        var text = Printed.Text(
            [Dial(Printed.Head
                + "  flat:\n    - {straight: 60, bend: 30}\n    - {straight: 80, rotate: 180, bend: 30}\n    - {straight: 80, rotate: "
                + "180, bend: 30}\n    - {straight: 60}\n", Paper.A4)]);
        Assert.Contains("Allstops0°:bends1,3;180°:bend2.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_from_where_it_is_looked_at_and_which_line_it_is_for()
    {
        var content = Printed.Contents(Printed.WorkedExample)[0];
        var text = Printed.Text([Dial(Printed.WorkedExample, Paper.A4)]);
        Assert.Contains("lookfromtheheldend", text, StringComparison.Ordinal);
        Assert.Contains(Printed.WithoutBlanks($"{content.Line} sheet {content.Fingerprint}"), text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_bar_is_a_hundred_millimetres() =>
        Assert.Equal(100, Assert.Single(OnPaper.Bars(Dial(Printed.WorkedExample, Paper.A4))).Width, ToleranceMm);

    private static Page Dial(string yaml, Paper paper) => Assert.Single(OnPaper.Pages(yaml, FullSizePages.Dial, paper));

    private static Point Centre(Page page) => OnPaper.Arcs(page, Medium).MinBy(arc => arc.Radius)!.Centre;
}
