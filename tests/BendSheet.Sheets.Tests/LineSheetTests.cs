using System.Globalization;
using System.Text.RegularExpressions;
using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Tests;

public partial class LineSheetTests
{
    /// <summary>Notes and hardware leave so little of the first page that the picture of this line would be 13 mm long there.</summary>
    private static readonly string Crowded = Printed.Head + """
          crowded:
            from: {at: front tee on the bulkhead, fitting: an3}
            to: {at: hose bracket, fitting: an3}
            rows:
              - {straight: 120, bend: 20, note: beside the tank strap}
              - {straight: 113, rotate: 180, bend: 75, note: clears the steering column}
              - {straight: 194, rotate: 30, bend: 90, note: beside the frame rail behind the tank strap}
              - {straight: 149, rotate: -135, bend: 75}
              - {straight: 61}
        """;

    /// <summary>The other one would have a picture of less than 15 mm, its bubbles around it.</summary>
    public static TheoryData<string, Paper> TooSmall =>
        new() { { Crowded, Paper.Letter }, { Printed.FewBends(5), Paper.Letter } };

    [Theory]
    [MemberData(nameof(TooSmall))]
    public void A_shape_too_small_to_read_is_drawn_large_on_the_next_page(string yaml, Paper paper)
    {
        var pages = Printed.Pages(Printed.Sheets(yaml, paper));
        Assert.Equal(2, pages.Count);
        Assert.DoesNotContain("Thefinishedshape", Printed.Text([pages[0]]), StringComparison.Ordinal);
        Assert.Contains("Thefinishedshape", Printed.Text([pages[1]]), StringComparison.Ordinal);
    }

    /// <summary>A tube of two fingers' length is drawn no larger than it is.</summary>
    [Fact]
    public void A_shape_that_is_small_itself_needs_no_page_of_its_own() => Assert.Single(Printed.Pages(Printed.Sheets(
        Printed.Head + "  small:\n    - {straight: 20, bend: 30}\n    - {straight: 20}\n")));

    /// <summary>
    /// Lines of 1 to 10 bends, some of them metres long, and two of 19: measured on the page, from the scale that it states.
    /// </summary>
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void No_view_is_a_speck_and_no_page_is_half_blank(Paper paper)
    {
        var random = new Random(1313);
        var lines = Enumerable.Range(0, 62).Select(i => Printed.Contents(AnyLine(random, i < 60 ? (i % 10) + 1 : 19))).ToList();
        Assert.All(lines, line =>
        {
            var sheet = Assert.Single(line);
            var pages = EveryPageTests.Recorded(new(line, paper));
            var heading = pages.SelectMany(one => one.Page.Things).Select(thing => thing.Text).OfType<string>()
                .First(text => text.StartsWith("The finished shape", StringComparison.Ordinal));
            var scale = double.Parse(Scale().Match(heading).Groups["scale"].Value, CultureInfo.InvariantCulture);
            Assert.True(Longest(sheet.Shape) / scale >= LeastView, $"{sheet.Rows.Length} bends: {Longest(sheet.Shape) / scale} mm");
            Assert.All(pages.Index(), page => Assert.InRange(BlankBelow(page.Item.Page, page.Item.Size.HeightMm), 0, MostBlank));
        });
    }

    /// <summary>Three bubbles side by side.</summary>
    private const double LeastView = 15;

    /// <summary>Of the height of the paper.</summary>
    private const double MostBlank = 0.37;

    /// <summary>From the lowest thing that is no foot of the page to the highest of the foot, of the height of the paper.</summary>
    private static double BlankBelow(RecordingPage page, double height)
    {
        var foot = page.Things.Where(thing => thing.Box.Top > height - Foot).Min(thing => thing.Box.Top);
        return (foot - page.Things.Where(thing => thing.Box.Top < foot).Max(thing => thing.Box.Top + thing.Box.Height)) / height;
    }

    /// <summary>From the lower edge of the paper to above the foot of the page.</summary>
    private const double Foot = 14.5;

    /// <summary>The longest side of the flat views, whose sides are along the axes.</summary>
    private static double Longest(TubeCentreline shape)
    {
        Vector3D[] points = [shape.EndA, .. shape.Arcs.Select(arc => arc.Start.Position), shape.EndB];
        return new Func<Vector3D, double>[] { point => point.X, point => point.Y, point => point.Z }.Max(
            axis => points.Max(axis) - points.Min(axis));
    }

    /// <summary>Rows of what is typed, every third line with clips and every other row with a note; one that runs into itself is left.
    /// </summary>
    private static string AnyLine(Random random, int bends)
    {
        while (true)
        {
            int[] straights = random.Next(3) == 0 ? [75, 120, 240, 400, 900, 1400] : [70, 80, 95, 110, 140, 180];
            int[] turns = [15, 30, 45, 60, 75, 90, 90, 120];
            var rows = Enumerable.Range(0, bends).Select(_ => FormattableString.Invariant(
                $"      - {{straight: {straights[random.Next(6)]}, rotate: {15 * random.Next(-11, 12)}, bend: {turns[random.Next(8)]}")
                + (random.Next(2) == 0 ? "}\n" : ", note: over the differential}\n"));
            var yaml = Printed.Head + "  any:\n    from: {at: port A, fitting: an3}\n    to: {at: port B, fitting: an3}\n"
                + (random.Next(3) == 0 ? "    clips: {every: 200, from-ends: 60}\n" : string.Empty)
                + "    rows:\n" + string.Concat(rows) + "      - {straight: 90}\n";
            if (Printed.Solved(yaml) is [{ Plan: not null }])
            {
                return yaml;
            }
        }
    }

    [GeneratedRegex("""1 : (?<scale>[\d.]+)""", RegexOptions.NonBacktracking)]
    private static partial Regex Scale();
}
