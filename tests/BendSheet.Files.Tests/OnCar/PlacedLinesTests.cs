using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Placing;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>Lines between ports whose places were typed lie where a person finds them.</summary>
public class PlacedLinesTests
{
    private const string Flat = "rows: [{straight: 100, bend: 90}, {straight: 80}]";

    /// <summary>Its end lies 100 ahead and 80 aside; the port says on which side, and the line is rolled there.</summary>
    [Theory]
    [InlineData("forward", 100, 80, 0)]
    [InlineData("forward", 100, -80, 0)]
    [InlineData("forward", 100, 0, 80)]
    [InlineData("forward", 100, 48, -64)]
    [InlineData("up", 48, -64, 100)]
    [InlineData("right", 0, -100, 80)]
    [InlineData("[0, 3, 4]", 0, 124, 32)]
    public void A_port_that_faces_some_way_rolls_the_line_until_its_end_lies_at_its_port(string faces, double x, double y, double z)
    {
        var line = Between($"{{at: {Place(1000, 200, 300)}, faces: {faces}}}", $"{{at: {Place(1000 + x, 200 + y, 300 + z)}}}", Flat);
        Near(new(1000, 200, 300), line.Centreline!.EndA);
        Near(new(1000 + x, 200 + y, 300 + z), line.Centreline.EndB);
    }

    /// <summary>
    /// Three dimensions. In the frame of A: 100 ahead; 80 to the side; then 60 square to both. By hand: the end lies at 100, 80, ∓60, and
    /// a quarter turn about the way ahead makes left up, and up right.
    /// </summary>
    [Theory]
    [InlineData("cw")]
    [InlineData("ccw")]
    public void A_line_that_leaves_its_plane_keeps_its_hand(string sense)
    {
        var rows = $"rows: [{{straight: 100, bend: 90}}, {{straight: 80, rotate: 90 {sense}, bend: 90}}, {{straight: 60}}]";
        var alone = TypedCars.Plan(TypedCars.Top + $"lines: {{l: {{{rows}}}}}\n").Lines[0].Centreline!.EndB;
        Assert.Equal(60, Math.Abs(alone.Z), 1e-9);

        // Turned by a quarter: left becomes up, up becomes right.
        Vector3D port = new(alone.X, -alone.Z, alone.Y);
        var line = Between($"{{at: {Place(0, 0, 0)}, faces: forward}}", $"{{at: {Place(port.X, port.Y, port.Z)}}}", rows);
        Near(port, line.Centreline!.EndB);
        Near(new(0, 0, 1), line.Centreline.Straights[1].Start.Direction);
    }

    [Fact]
    public void The_place_of_B_alone_says_where_a_line_lies_whose_ways_are_known()
    {
        var line = Between("{}", $"{{at: {Place(500, 600, 700)}}}", "start: {heading: forward, towards: left}, " + Flat);
        Assert.True(line.Template.HasPlace);
        Near(new(400, 520, 700), line.Centreline!.EndA);
        Near(new(500, 600, 700), line.Centreline.EndB);
    }

    [Fact]
    public void The_place_of_B_alone_says_nothing_of_a_line_that_may_lie_anyhow() =>
        Assert.False(Between("{}", $"{{at: {Place(500, 600, 700)}}}", Flat).Template.HasPlace);

    [Theory]
    [InlineData("corners: [[0, 0, 0], [100, 0, 0], [100, 80, 0]]")]
    [InlineData("corners: [[2000, 50, 60], [2100, 50, 60], [2100, 130, 60]]")]
    [InlineData("legs: [{forward: 100}, {left: 80}]")]
    public void Corners_and_moves_lie_at_their_ports(string route)
    {
        var line = Between($"{{at: {Place(1000, 200, 300)}}}", $"{{at: {Place(1100, 280, 300)}}}", route);
        Near(new(1000, 200, 300), line.Centreline!.EndA);
        Near(new(1100, 280, 300), line.Centreline.EndB);
        Assert.Empty(line.Findings.Where(finding => finding.Rule == PortRules.TemplateOffPort));
    }

    /// <summary>The finding names a `within` that makes a sheet of it: that has to hold, however far off and whichever way.</summary>
    [Theory]
    [InlineData(30, 0, 0)]
    [InlineData(-25, 12, 0)]
    [InlineData(0, 45, 10)]
    [InlineData(60, -60, 60)]
    [InlineData(0, 0, 200)]
    public void The_within_that_is_named_is_enough(double x, double y, double z)
    {
        const string A = "{at: {forward: 0}, faces: forward}";
        const string Start = "start: {heading: forward, towards: left}, ";
        var port = Place(100 + x, 80 + y, z);
        var finding = Assert.Single(
            Between(A, $"{{at: {port}}}", Start + Flat).Findings, one => one.Rule == PortRules.TemplateOffPort);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Contains("retype what is wrong", finding.Message, StringComparison.Ordinal);
        var within = finding.Message.Split("`within: ")[1].Split(" mm`")[0];
        Assert.Equal(Math.Ceiling(Math.Sqrt((x * x) + (y * y) + (z * z)) / 2).ToString(CultureInfo.InvariantCulture), within);
        var widened = Between(A, $"{{at: {port[..^1]}, within: {within}}}}}", Start + Flat);
        Assert.NotNull(widened.Plan);
        Assert.DoesNotContain(widened.Findings, one => one.Rule == PortRules.TemplateOffPort);
    }

    /// <summary>
    /// Two ports typed to 1 mm are 1.4 mm sure together, and two legs typed to 1.5 mm with a bend of 2°, 80 mm before the end, 3.5 mm:
    /// twice the root of both squares is 7.6.
    /// </summary>
    [Theory]
    [InlineData(4.5, "no more than both may be out")]
    [InlineData(8, "correct what is wrong")]
    public void What_both_may_be_out_by_is_no_mistake_yet(double off, string said)
    {
        var line = Between(
            "{at: {forward: 0, within: 1}, faces: forward}",
            $"{{at: {Place(100 + off, 80, 0)[..^1]}, within: 1}}}}",
            "start: {heading: forward, towards: left}, " + Flat);
        var finding = Assert.Single(line.Findings, one => one.Rule == PortRules.TemplateOffPort);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains(said, finding.Message, StringComparison.Ordinal);
    }

    private static SolvedLine Between(string a, string b, string route) => Assert.Single(TypedCars.Plan(
        TypedCars.Top
            + $"parts:\n  one: {{kind: other, ports: {{a: {a}}}}}\n  two: {{kind: other, ports: {{b: {b}}}}}\n"
            + $"lines: {{l: {{from: one.a, to: two.b, {route}}}}}\n").Lines);

    private static string Place(double x, double y, double z) =>
        string.Create(CultureInfo.InvariantCulture, $"{{forward: {x:0.######}, left: {y:0.######}, up: {z:0.######}}}");

    private static void Near(Vector3D expected, Vector3D found) => Assert.True(
        expected.DistanceTo(found) < 1e-3, $"expected {expected}, found {found}");
}
