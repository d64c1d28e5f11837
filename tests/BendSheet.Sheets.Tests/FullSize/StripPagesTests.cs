using System.Globalization;
using System.Text.RegularExpressions;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Tests.FullSize;

/// <summary>The straight tube measured on paper, tile by tile, as somebody would who has glued them together.</summary>
public partial class StripPagesTests
{
    /// <summary>A mark must be true to 0.1 mm; what is written in a PDF is far finer.</summary>
    private const double ToleranceMm = 0.01;

    private const double MarkPen = 0.35;
    private const double TubePen = 0.3;

    public static TheoryData<string, Paper> Lines()
    {
        string[] files =
        [
            Printed.WorkedExample,
            Printed.ManyBends(60),
            Printed.Head + "  nine metres:\n    - {straight: 4500, bend: 90}\n    - {straight: 4500}\n",
            Printed.Head + "  forty millimetres:\n    - {straight: 20, bend: 20}\n    - {straight: 20}\n",
            Printed.Head + "  straight tube:\n    - {straight: 600}\n",
            InInches,
        ];
        var cases = new TheoryData<string, Paper>();
        foreach (var file in files)
        {
            cases.Add(file, Paper.A4);
            cases.Add(file, Paper.Letter);
        }

        return cases;
    }

    private const string InInches = """
        units: in
        tube: {od: 3/8}
        bender: {radius: 1 1/4}
        lines:
          front:
            - {straight: 1 ft 9 1/2 in, bend: 90}
            - {straight: 12-5/16 in, rotate: 90 ccw, bend: 45}
            - {straight: 7 in}

        """;

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_mark_lies_at_its_place_from_the_cut_end_across_all_tiles(string yaml, Paper paper)
    {
        var line = Printed.Solved(yaml)[0];
        var tiles = Tiles(yaml, paper);
        var marks = tiles.SelectMany(tile => tile.Marks).Order().ToList();
        Assert.Equal(line.Plan!.Bends.Length, marks.Count);
        Assert.All(
            line.Plan.Bends.Select(bend => bend.Mark.Millimetres).Order()
                .Zip(marks), pair => Assert.Equal(pair.First, pair.Second, ToleranceMm));
        Assert.Equal(line.Plan.CutLength.Millimetres, tiles[^1].End, ToleranceMm);
        Assert.All(tiles, tile => Assert.Equal(line.Template.Tube.OutsideDiameter.Millimetres, tile.Diameter, ToleranceMm));
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Every_tile_has_a_bar_of_a_hundred_millimetres(string yaml, Paper paper) => Assert.All(
        OnPaper.Pages(yaml, FullSizePages.Strips, paper),
        page =>
        {
            Assert.Equal(TileTitles(Printed.Text([page])).Count, OnPaper.Bars(page).Count);
            Assert.All(OnPaper.Bars(page), bar => Assert.Equal(100, bar.Width, ToleranceMm));
            Assert.Contains(
                Printed.WithoutBlanks("Check the print: this bar must measure 100 mm"), Printed.Text([page]), StringComparison.Ordinal);
        });

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Each_joint_has_its_distance_from_where_the_marks_count_printed_on_both_tiles(Paper paper)
    {
        var yaml = Printed.Head
            + "  nine metres: {from: {at: tee, fitting: an3}, rows: [{straight: 4500, bend: 90}, {straight: 4500}]}\n";
        const double FlareFace = 0.5;
        var text = Printed.Text(OnPaper.Pages(yaml, FullSizePages.Strips, paper));
        var tiles = Tiles(yaml, paper);
        var joints = Connection().Matches(text).Select(match => (
            Tile: int.Parse(match.Groups["tile"].ValueSpan, CultureInfo.InvariantCulture),
            At: double.Parse(match.Groups["at"].ValueSpan, CultureInfo.InvariantCulture))).ToList();
        Assert.True(tiles.Count > 30);
        Assert.Equal(2 * (tiles.Count - 1), joints.Count);
        Assert.All(joints, joint => Assert.Equal(tiles[joint.Tile - 1].End - FlareFace, joint.At, ToleranceMm));
        Assert.All(
            Enumerable.Range(1, tiles.Count),
            number => Assert.Contains(FormattableString.Invariant($"tile{number}of{tiles.Count}"), text, StringComparison.Ordinal));
        Assert.All(
            Enumerable.Range(2, tiles.Count - 1),
            number => Assert.Contains(FormattableString.Invariant($"–glueontojoint{number - 1}|{number}"), text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_tile_says_what_is_on_it()
    {
        var text = Printed.Text(OnPaper.Pages(
            Printed.WorkedExample.Replace("lines:", "clips: {every: 200, from-ends: 60}\nlines:", StringComparison.Ordinal)
                .Replace("hose bracket, fitting: an3", "hose bracket, fitting: an3, trim: 25", StringComparison.Ordinal),
            FullSizePages.Strips));
        string[] said =
        [
            "1114.0lineat1:3045°,heldA", "2175.5lineat10:30315°,heldA", "3365.0lineat12:000°,heldA",
            "laythefinishedflarefaceofAhere", "cutendofB", "trimhereonthecar", "sleeve", "nut", "clip",
        ];
        Assert.All(said, words => Assert.Contains(words, text, StringComparison.Ordinal));
    }

    [Fact]
    public void The_strip_lies_along_the_longer_side_of_the_paper() =>
        Assert.All(OnPaper.Pages(Printed.WorkedExample, FullSizePages.Strips), page => Assert.True(page.Width > page.Height));

    /// <summary>
    /// The tiles from A to B. Each begins where the one before ends; the tube's two sides are the only long level lines with its pen.
    /// </summary>
    private static List<Tile> Tiles(string yaml, Paper paper)
    {
        var tiles = new List<Tile>();
        foreach (var page in OnPaper.Pages(yaml, FullSizePages.Strips, paper))
        {
            var above = 0.0;
            foreach (var bar in OnPaper.Bars(page))
            {
                bool Inside(DrawnLine line) => line.From.Y > above && line.From.Y < bar.Top;
                var sides = OnPaper.Lines(page, TubePen).Where(line => line.IsLevel && line.Length > 30 && Inside(line)).ToList();
                Assert.Equal(2, sides.Count);
                Assert.Equal(sides[0].Left, sides[1].Left, ToleranceMm);
                var start = tiles.Count == 0 ? 0 : tiles[^1].End;
                tiles.Add(new(
                    start + sides[0].Length,
                    Math.Abs(sides[0].From.Y - sides[1].From.Y),
                    [.. OnPaper.Lines(page, MarkPen).Where(line => line.IsUpright && Inside(line))
                        .Select(line => start + line.From.X - sides[0].Left)]));
                above = bar.Top;
            }
        }

        return tiles;
    }

    private static MatchCollection TileTitles(string text) => TileTitle().Matches(text);

    [GeneratedRegex(@"tile\d+of\d+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex TileTitle();

    [GeneratedRegex(@"joint(?<tile>\d+)\|\d+:(?<at>[\d.]+)mmfromthefinishedflarefaceofA", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Connection();

    private sealed record Tile(double End, double Diameter, IReadOnlyList<double> Marks);
}
