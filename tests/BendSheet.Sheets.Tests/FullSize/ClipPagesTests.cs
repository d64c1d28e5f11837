using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;
using UglyToad.PdfPig.Content;

namespace BendSheet.Sheets.Tests.FullSize;

/// <summary>The drilling strip measured on paper, tile by tile, as somebody would who has glued them together.</summary>
public class ClipPagesTests
{
    /// <summary>A hole must be true to 0.1 mm; what is written in a PDF is far finer.</summary>
    private const double ToleranceMm = 0.01;

    private const double MarkPen = 0.35;
    private const double CutPen = 0.3;

    private const string Metric = Printed.Head
        + "  rail:\n    clips: {every: 300, from-ends: 60, hole: 5}\n    rows: [{straight: 3000, bend: 90}, {straight: 500}]\n";

    private const string AfterABend = Printed.Head
        + "  rail:\n    clips: {every: 90, width: 20}\n    rows: [{straight: 150, bend: 90}, {straight: 1800, bend: 30}, {straight: 80}]\n";

    public const string InInches = """
        units: in
        tube: {od: 3/8}
        bender: {radius: 1 1/4}
        wanted: {miss: 40, askew: 90}
        lines:
          rail:
            clips: {every: 6, from-ends: 2, hole: 3/16, width: 1/2}
            rows: [{straight: 5, bend: 90}, {straight: 40, bend: 45}, {straight: 30}]

        """;

    public static TheoryData<string, Paper> Lines() => new()
    {
        { Metric, Paper.A4 }, { Metric, Paper.Letter }, { AfterABend, Paper.A4 }, { AfterABend, Paper.Letter }, { InInches, Paper.A4 },
        { InInches, Paper.Letter },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_cross_lies_at_its_place_from_the_edge_across_all_tiles(string yaml, Paper paper)
    {
        var runs = ClipRun.Of(Printed.Solved(yaml)[0]);
        Assert.NotEmpty(runs);
        var strips = Strips(OnPaper.Pages(yaml, FullSizePages.Clips, paper));
        Assert.Equal(runs.Length, strips.Count);
        foreach (var (run, strip) in runs.Zip(strips))
        {
            Assert.Equal(run.Holes.Length, strip.Count);
            Assert.All(run.Holes.Zip(strip), pair => Assert.Equal(
                (run.FirstAlongTube - run.Begins + pair.First).Millimetres, pair.Second, ToleranceMm));
            Assert.All(run.Holes.Zip(strip), pair => Assert.Equal(pair.First.Millimetres, pair.Second - strip[0], ToleranceMm));
        }
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Each_hole_has_its_number_and_its_distance_from_the_edge_and_no_distance_from_another(Paper paper)
    {
        var text = Printed.Text(OnPaper.Pages(Metric, FullSizePages.Clips, paper));
        var run = ClipRun.Of(Printed.Solved(Metric)[0])[0];
        Assert.All(run.Holes.Select((hole, i) => $"{i + 1}{Rounded((run.FirstAlongTube + hole).Millimetres)}"), hole =>
            Assert.Contains(hole, text, StringComparison.Ordinal));
        Assert.Contains("edge:thefinishedendAofrail", text, StringComparison.Ordinal);
        Assert.Contains("Drill5mm.", text, StringComparison.Ordinal);

        static string Rounded(double mm) => (Math.Round(mm * 2) / 2).ToString("0.0", CultureInfo.InvariantCulture);
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_tile_has_a_bar_of_a_hundred_millimetres(string yaml, Paper paper) => Assert.All(
        OnPaper.Pages(yaml, FullSizePages.Clips, paper),
        page =>
        {
            Assert.NotEmpty(OnPaper.Bars(page));
            Assert.All(OnPaper.Bars(page), bar => Assert.Equal(100, bar.Width, ToleranceMm));
        });

    [Theory]
    [MemberData(nameof(Lines))]
    public void No_joint_cuts_through_a_clip(string yaml, Paper paper)
    {
        var width = Printed.Solved(yaml)[0].Template.Clips!.Width.Millimetres;
        foreach (var tile in OnPaper.Pages(yaml, FullSizePages.Clips, paper).SelectMany(Tiles))
        {
            Assert.All(tile.Crosses, cross => Assert.True(cross > tile.Start + (width / 2) - ToleranceMm || tile.Begins));
            Assert.All(tile.Crosses, cross => Assert.True(tile.End is null || cross < tile.End - (width / 2) + ToleranceMm));
        }
    }

    [Fact]
    public void A_line_without_clips_has_no_page_of_them() =>
        Assert.Empty(OnPaper.Pages(Printed.WorkedExample, FullSizePages.Clips));

    [Fact]
    public void Clips_are_among_all_pages_at_full_size() => Assert.Contains(
        OnPaper.Pages(Metric, FullSizePages.All),
        page => Printed.Text([page]).StartsWith("Full-sizeclipholes", StringComparison.Ordinal));

    [Fact]
    public void No_text_lies_over_another() => Assert.All(
        OnPaper.Pages(AfterABend, FullSizePages.Clips), page => Assert.Empty(Printed.Overlaps([.. page.Letters])));

    /// <summary>Where the crosses of each strip are, from its edge.</summary>
    private static List<List<double>> Strips(IReadOnlyList<Page> pages)
    {
        List<List<double>> strips = [];
        var before = 0.0;
        foreach (var tile in pages.SelectMany(Tiles))
        {
            if (tile.Begins)
            {
                strips.Add([]);
                before = 0;
            }

            strips[^1].AddRange(tile.Crosses.Select(cross => before + cross - tile.Start));
            before += (tile.End ?? tile.Start) - tile.Start;
        }

        return strips;
    }

    /// <summary>Tiles of a page; a tile's two ends are the only tall lines with their pen.</summary>
    private static IEnumerable<Tile> Tiles(Page page)
    {
        var above = 0.0;
        foreach (var bar in OnPaper.Bars(page))
        {
            bool Inside(DrawnLine line) => line.IsUpright && line.From.Y > above && line.From.Y < bar.Top;
            var ends = OnPaper.Lines(page, CutPen).Where(line => line.Length > 25 && Inside(line))
                .Select(line => line.From.X).Order().ToList();
            var crosses = OnPaper.Lines(page, MarkPen).Where(Inside).Select(line => line.From.X).Order().ToList();
            Assert.InRange(ends.Count, 1, 2);
            var letters = page.Letters.Where(letter => Y(letter) > above && Y(letter) < bar.Top).Select(letter => letter.Value);
            yield return new(
                Printed.WithoutBlanks(string.Concat(letters)).Contains("edge:", StringComparison.Ordinal),
                ends[0],
                ends.Count == 2 ? ends[1] : null,
                crosses);
            above = bar.Top;
        }

        double Y(Letter letter) => (page.Height - letter.Location.Y) * 25.4 / 72;
    }

    private sealed record Tile(bool Begins, double Start, double? End, IReadOnlyList<double> Crosses);
}
