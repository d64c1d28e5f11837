using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;
using UglyToad.PdfPig.Content;

namespace BendSheet.Sheets.Tests.FullSize;

/// <summary>Curves and wedges measured on paper.</summary>
public class GaugePagesTests
{
    private const double ToleranceMm = 0.02;
    private const double ToleranceDegrees = 0.05;
    private const double FacePen = 0.3;
    private const double WedgePen = 0.4;
    private const double ThinPen = 0.2;
    private const double Diameter = 4.7625;
    private const double Radius = 14.2875;

    private static string Bent(double turn, string tests = "") => string.Create(
        CultureInfo.InvariantCulture,
        $"units: mm\ntube: {{od: 4.7625}}\nwire: {{diameter: 2.4, radius: 14.2875}}\nbender: {{radius: 14.2875{tests}}}\n"
            + $"lines:\n  one:\n    measured: straight\n    rows:\n      - {{straight: {(turn > 180 ? 9 : 60)}, bend: {turn}}}\n"
            + $"      - {{straight: {(turn > 180 ? 9 : 60)}}}\n");

    public static TheoryData<double, Paper> Turns()
    {
        var cases = new TheoryData<double, Paper>();
        foreach (var turn in new[] { 1, 10, 22.5, 90, 135, 179, 180, 270 })
        {
            cases.Add(turn, Paper.A4);
            cases.Add(turn, Paper.Letter);
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Turns))]
    public void The_curve_has_both_faces_and_the_centreline_of_the_bend(double turn, Paper paper)
    {
        var page = Gauges(Bent(turn), paper);
        var centreline = Assert.Single(OnPaper.Arcs(page, ThinPen));
        var arcs = OnPaper.Arcs(page, FacePen).Append(centreline).OrderBy(arc => arc.Start.To(arc.End)).ToList();
        Assert.Equal(3, arcs.Count);
        Assert.Same(centreline, arcs[1]);
        Assert.All(arcs.Zip([Radius - (Diameter / 2), Radius, Radius + (Diameter / 2)]), pair =>
        {
            var (arc, radius) = pair;
            Assert.Equal(2 * radius * Math.Sin(turn * Math.PI / 360), arc.Start.To(arc.End), ToleranceMm);

            // Through an arc of a few degrees any circle goes; its chord and its legs have to do.
            if (turn > 20)
            {
                Assert.Equal(radius, arc.Radius, ToleranceMm);
                Assert.Equal(turn, arc.Sweep, ToleranceDegrees);
                Assert.InRange(arc.WorstMiss, 0, ToleranceMm);
            }
        });
    }

    [Theory]
    [MemberData(nameof(Turns))]
    public void The_legs_go_on_from_the_ends_of_the_bend_and_enclose_its_angle(double turn, Paper paper)
    {
        var page = Gauges(Bent(turn), paper);
        var outer = OnPaper.Arcs(page, FacePen).MaxBy(arc => arc.Radius)!;
        var legs = new[] { outer.Start, outer.End }
            .Select(
                end => Assert.Single(
                    OnPaper.Lines(page, FacePen), line => line.From.To(end) < ToleranceMm || line.To.To(end) < ToleranceMm))
            .Select(line => line.From.To(outer.Centre) < line.To.To(outer.Centre) ? line.From.Bearing(line.To) : line.To.Bearing(line.From))
            .ToList();

        // Both bearings are outwards, so one leg turned about is the direction in which the other was entered.
        var apart = Math.Abs(legs[0] - legs[1]);
        Assert.Equal((180 - turn + 720) % 360, Math.Abs(apart - ((180 - turn + 720) % 360)) < 1 ? apart : 360 - apart, ToleranceDegrees);
    }

    [Theory]
    [InlineData(22.5)]
    [InlineData(90)]
    [InlineData(150)]
    [InlineData(180)]
    public void The_wedge_goes_between_the_legs(double turn)
    {
        var page = Gauges(Bent(turn), Paper.A4);
        var nose = Assert.Single(OnPaper.Arcs(page, WedgePen));
        Assert.Equal(Radius - (Diameter / 2), nose.Radius, ToleranceMm);
        Assert.Equal(turn, nose.Sweep, ToleranceDegrees);
        var edges = new[] { nose.Start, nose.End }
            .Select(end => Assert.Single(OnPaper.Lines(page, WedgePen), line => line.From.To(end) < ToleranceMm)).ToList();
        var between = edges.Select(edge => edge.From.Bearing(edge.To)).ToList();
        Assert.Equal(
            180 - turn, 360 - Math.Abs(between[0] - between[1]) is var other && other < 180.001 ? other : 360 - other, ToleranceDegrees);
    }

    [Fact]
    public void No_wedge_goes_into_more_than_a_U_bend() => Assert.Empty(OnPaper.Arcs(Gauges(Bent(270), Paper.A4), WedgePen));

    [Fact]
    public void What_the_tool_is_pulled_to_is_a_second_line_where_it_differs()
    {
        const double Turn = 60;
        var yaml = Bent(Turn, ", tests: [{pull: 95, got: 90}, {pull: 48, got: 45}]");
        var page = Gauges(yaml, Paper.A4);
        var pull = Printed.Solved(yaml)[0].Plan!.Bends[0].Pull.Degrees;
        Assert.True(pull > Turn + 2);
        var centreline = Assert.Single(OnPaper.Arcs(page, ThinPen));
        var pulled = Assert.Single(OnPaper.Lines(page, ThinPen), line => Math.Abs(line.Length - 40) < ToleranceMm);
        Assert.Equal(Radius, pulled.From.To(centreline.Centre), ToleranceMm);
        Assert.Equal(90 + pull - (Turn / 2), pulled.From.Bearing(pulled.To), ToleranceDegrees);
        Assert.Contains("thinline:pulledto", Printed.Text([page]), StringComparison.Ordinal);
        Assert.DoesNotContain("pulledto", Printed.Text([Gauges(Bent(Turn), Paper.A4)]), StringComparison.Ordinal);
    }

    [Fact]
    public void Legs_are_no_longer_than_the_straight_beside_the_bend()
    {
        var page = Gauges(Bent(30).Replace("straight: 60", "straight: 11", StringComparison.Ordinal), Paper.A4);
        Assert.Equal(4, OnPaper.Lines(page, FacePen).Count(line => Math.Abs(line.Length - 11) < ToleranceMm));
    }

    [Fact]
    public void Bends_of_the_same_figures_share_a_gauge()
    {
        var text = Printed.Text(OnPaper.Pages(Printed.ManyBends(60), FullSizePages.Gauges));
        Assert.Contains("curveofbends1,5,9,13,", text, StringComparison.Ordinal);
        Assert.Equal(4, text.Split("curveof").Length - 1);
        Assert.Equal(4, text.Split("wedgefor").Length - 1);
    }

    [Fact]
    public void A_bend_too_large_for_the_paper_is_given_as_a_distance()
    {
        var text = Printed.Text(
            OnPaper.Pages(
                Bent(90).Replace("14.2875", "300", StringComparison.Ordinal)
                    .Replace("straight: 60", "straight: 500", StringComparison.Ordinal), FullSizePages.Gauges));
        Assert.Contains("doesnotfitonthispaper:fromtangentpointtotangentpointmeasure424.5mm", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void Every_page_has_its_bar(Paper paper)
    {
        var yaml = Printed.Head + "  many:\n"
            + string.Concat(Enumerable.Range(1, 30).Select(i => $"    - {{straight: 80, rotate: 40, bend: {3 * i}}}\n"))
            + "    - {straight: 80}\n";
        var pages = OnPaper.Pages(yaml, FullSizePages.Gauges, paper);
        Assert.True(pages.Count > 3);
        Assert.All(pages, page => Assert.Equal(100, Assert.Single(OnPaper.Bars(page)).Width, ToleranceMm));
    }

    private static Page Gauges(string yaml, Paper paper) => Assert.Single(OnPaper.Pages(yaml, FullSizePages.Gauges, paper));
}
