using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>One shape typed in several forms is one centreline.</summary>
public class RouteFormsTests
{
    private const string Start = "    start: {heading: forward, towards: left}\n";

    /// <summary>The worked example of the project's conventions.</summary>
    private const string Example =
        "    rows:\n      - {straight: 120, bend: 45}\n      - {straight: 60, rotate: 90 cw, bend: 30}\n      - {straight: 200, rotate: "
            + "45 ccw, bend: 90}\n      - {straight: 80}\n";

    [Fact]
    public void Corner_points_moves_taped_distances_and_rows_of_one_shape_are_one_centreline()
    {
        var random = new Random(20261125);
        for (var round = 0; round < 200; round++)
        {
            var rows = RandomRows(random);
            var wanted = Solved($"lines:\n  a:\n{Start}    rows:\n{rows}");
            var points = wanted.Centreline!.Corners.Select(corner => corner!.Value).ToList();
            var corners = string.Join(", ", points.Select(point => $"[{Figure(point.X)}, {Figure(point.Y)}, {Figure(point.Z)}]"));
            var moves = string.Join(", ", points.Zip(points.Skip(1), (from, to) => Move(to - from)));
            Same(wanted, Solved($"lines:\n  a:\n    corners: [{corners}]\n"), round);
            Same(wanted, Solved($"lines:\n  a:\n    legs: [{moves}]\n"), round);
            Same(
                wanted,
                Solved($"lines:\n  a:\n    distances: {{{string.Join(", ", Taped(points))}}}\n{Sides(wanted.Template.Route)}"),
                round);
        }
    }

    [Fact]
    public void A_mirrored_line_is_the_mirror_image_with_the_other_ones_fittings()
    {
        var file = Read(
            Top + "fittings:\n  f: {flare: bubble, takes: 1}\nlines:\n  right: {mirror: left, to: {at: right hose, fitting: f}}\n  left:\n"
            + "    from: {at: tee, fitting: f}\n" + Start + Example);
        Assert.Empty(file.Findings);
        Assert.Equal(["right", "left"], file.Lines.Select(line => line.Name), StringComparer.Ordinal);
        var (right, left) = (CarPlan.Line(file.Lines[0]), CarPlan.Line(file.Lines[1]));
        Assert.Equal(
            left.Centreline!.Corners.Select(corner => corner!.Value with { Y = 0 - corner.Value.Y }), right.Centreline!.Corners
                .Select(corner => corner!.Value));
        Assert.Equal("f", file.Lines[0].From.Fitting!.Name);
        Assert.Null(file.Lines[0].From.At);
        Assert.Equal("right hose", file.Lines[0].To.At);
        Assert.Equal(left.Template.Route.Legs[0].At, right.Template.Route.Legs[0].At);
    }

    [Theory]
    [InlineData("", null, "f", null, "g", 15)]
    [InlineData(", from: tee, to: hose", "tee", "f", "hose", "g", 15)]
    [InlineData(", from: {at: tee}, to: {at: hose}", "tee", "f", "hose", "g", 15)]
    [InlineData(", from: {fitting: g}, to: {at: hose, trim: 0}", null, "g", "hose", "g", 0)]
    [InlineData(", to: {trim: 5, fitting: f}", null, "f", null, "f", 5)]
    public void A_mirrored_end_has_all_that_it_does_not_say_itself_but_for_where_it_leads(
        string said, string? fromAt, string from, string? toAt, string to, double trim)
    {
        var file = Read(Top + "fittings:\n  f: {flare: bubble, takes: 1}\n  g: {flare: bubble, takes: 2}\nlines:\n  left:\n"
            + "    from: {at: other tee, fitting: f}\n    to: {at: other hose, fitting: g, trim: 15}\n" + Start + Example
            + $"  right: {{mirror: left{said}}}\n");
        Assert.Empty(file.Findings);
        var right = file.Lines[1];
        Assert.Equal(
            (fromAt, from, toAt, to, trim),
            (right.From.At, right.From.Fitting?.Name, right.To.At, right.To.Fitting?.Name, right.To.Trim.Millimetres));
    }

    [Fact]
    public void A_template_that_is_used_is_its_rows_typed_in_its_place()
    {
        const string Templates =
            "templates:\n  hook:\n    - {straight: 70, bend: 30}\n    - {straight: 45, rotate: 20 cw, bend: 60}\n    - {straight: 30}\n";
        var used = Solved(
            Templates
                + "lines:\n  a:\n    rows:\n      - {straight: 100, bend: 20}\n      - {use: hook, rotate: 90 cw}\n      - {straight: "
                + "500}\n");
        var typed =
            Solved("lines:\n  a:\n    rows:\n      - {straight: 100, bend: 20}\n      - {straight: 70, rotate: 90 cw, bend: 30}\n      - "
                + "{straight: 45, rotate: 20 cw, bend: 60}\n      - {straight: 530}\n");
        Same(typed, used, 0);
        Assert.Equal((6, 28), (used.Template.Route.Bends[1].TurnAt.Line, used.Template.Route.Bends[1].TurnAt.Column));

        // Read from its other end and mirrored: straights and bends in reverse, the rotation between them the other way.
        var turned = Solved(
            Templates
                + "lines:\n  a:\n    rows:\n      - {straight: 100, bend: 20}\n      - {use: hook, rotate: 90 cw, reverse: true, mirror: "
                + "true}\n      - {straight: 500}\n");
        var typedTurned =
            Solved("lines:\n  a:\n    rows:\n      - {straight: 100, bend: 20}\n      - {straight: 30, rotate: 90 cw, bend: 60}\n      - "
                + "{straight: 45, rotate: 20 ccw, bend: 30}\n      - {straight: 570}\n");
        Same(typedTurned, turned, 0);
    }

    [Theory]
    [InlineData("offset: 40, bend: 30", 80, 30)]
    [InlineData("offset: 40, run: 40", 56.568542494923804, 45)]
    public void An_offset_is_two_bends_with_its_travel_between_them(string typed, double travel, double bend)
    {
        var line = Solved($"lines:\n  a:\n    - {{straight: 100, {typed}, rotate: 15 ccw}}\n    - {{straight: 90}}\n");
        Assert.Equal([100, travel, 90], line.Layout!.Legs.Select(leg => Math.Round(leg.CornerToCorner!.Value.Millimetres, 9)), new Near());
        Assert.Equal(
            [(bend, -15.0), (bend, 180.0)], line.Template.Route.Bends
                .Select(one => (Math.Round(one.Turn.Degrees, 9), one.Rotation.Degrees)));

        // Parallel, and the height apart.
        var corners = line.Centreline!.Corners;
        Assert.Equal(40, Math.Sqrt(Math.Pow(corners[3]!.Value.Y, 2) + Math.Pow(corners[3]!.Value.Z, 2)), 9);
    }

    [Theory]
    [InlineData("saddle: 30, bends: 3, bend: 22.5", 3, 30)]
    [InlineData("saddle: 30, bends: 3, width: 120", 3, 30)]
    [InlineData("saddle: 40, bends: 4, bend: 45, width: 100", 4, 40)]
    public void A_saddle_rises_to_its_height_and_comes_back_to_its_run(string typed, int bends, double height)
    {
        var line = Solved($"lines:\n  a:\n    - {{straight: 100, {typed}}}\n    - {{straight: 90}}\n");
        var corners = line.Centreline!.Corners.Select(corner => corner!.Value).ToList();
        Assert.Equal(bends, line.Template.Route.Bends.Length);
        Assert.Equal(height, corners.Max(corner => corner.Y), 9);
        Assert.Equal(0, corners[^1].Y, 9);
        Assert.Equal(0, corners[^2].Y, 9);
        Assert.All(corners, corner => Assert.Equal(0, corner.Z, 9));
    }

    [Theory]
    [InlineData(3, 25, 8)]
    [InlineData(1.5, 40, 0)]
    [InlineData(2, 30, 60)]
    public void A_coil_takes_up_the_length_of_its_helix_and_goes_its_way(double turns, double radius, double pitch)
    {
        var line = Solved(
            string.Create(
                CultureInfo.InvariantCulture,
                $"lines:\n  a:\n    - {{straight: 50, coil: {turns}, radius: {radius}, pitch: {pitch}}}\n    - {{straight: 60}}\n"));
        Assert.Equal(
            110 + (turns * Math.Sqrt(Math.Pow(2 * Math.PI * radius, 2) + (pitch * pitch))), line.Centreline!.Length.Millimetres, 9);
        Assert.All(line.Centreline.Straights[1..^1], straight => Assert.Equal(0, straight.Length.Millimetres, 9));
    }

    [Theory]
    [InlineData("start: {heading: up, towards: left}", true)]
    [InlineData("start: {heading: forward, towards: up}", false)]
    [InlineData("start: {heading: forward, towards: left}", false)]
    public void Where_up_is_known_a_hump_that_holds_air_is_a_warning(string start, bool humps)
    {
        var line =
            Solved($"lines:\n  a:\n    {start}\n    rows:\n      - {{straight: 100, bend: 90}}\n      - {{straight: 100, bend: 90}}\n    "
                + $"  - {{straight: 100}}\n");
        var air = line.Findings.Where(finding => finding.Rule == HoldsAir.Rule).ToList();
        Assert.Equal(humps, air.Count == 1);
        Assert.DoesNotContain(
            Solved("lines:\n  a:\n    - {straight: 100, bend: 90}\n    - {straight: 100, bend: 90}\n    - {straight: 100}\n").Findings,
            finding => finding.Rule == HoldsAir.Rule);
        if (humps)
        {
            // Up 100, over and down again: the top of the tube's bends at the upper run.
            Assert.StartsWith("line a has a hump 100.0 mm (3.937 in) high", air[0].Message, StringComparison.Ordinal);
        }
    }

    private static SolvedLine Solved(string lines)
    {
        var file = Read(Top + lines);
        Assert.Empty(file.Findings);
        return CarPlan.Line(Assert.Single(file.Lines));
    }

    private static void Same(SolvedLine wanted, SolvedLine line, int round)
    {
        var (a, b) = (wanted.Centreline!, line.Centreline!);
        var size = a.Length.Millimetres;
        Assert.True(
            Math.Abs(a.Length.Millimetres - b.Length.Millimetres) <= 1e-9 * size, $"round {round}: lengths {a.Length} and {b.Length}");
        Assert.Equal(a.Corners.Length, b.Corners.Length);
        Assert.All(
            a.Corners.Zip(b.Corners),
            pair => Assert.True(
                pair.First!.Value.DistanceTo(pair.Second!.Value) <= 1e-9 * size, $"round {round}: {pair.First} and {pair.Second}"));
        Assert.All(
            a.Arcs.Zip(b.Arcs),
            pair => Assert.True(
                pair.First.Centre.DistanceTo(pair.Second.Centre) <= 1e-9 * size,
                $"round {round}: centres {pair.First.Centre} and {pair.Second.Centre}"));
    }

    private static string RandomRows(Random random)
    {
        var rows = new List<string>();
        for (var bends = random.Next(0, 8); bends > 0; bends--)
        {
            var rotate = rows.Count == 0 ? 0 : random.Next(-1790, 1800) / 10.0;
            rows.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"      - {{straight: {random.Next(900, 4000) / 10.0}, rotate: {rotate}, bend: {random.Next(50, 1350) / 10.0}}}\n"));
        }

        return string.Concat(rows) + "      - {straight: 90}\n";
    }

    /// <summary>Neighbours, over one corner and over two: what the tape needs at least.</summary>
    private static IEnumerable<string> Taped(List<Vector3D> points) =>
        from over in Enumerable.Range(1, 3)
        from corner in Enumerable.Range(0, Math.Max(0, points.Count - over))
        select string.Create(
            CultureInfo.InvariantCulture, $"{corner}-{corner + over}: {Figure(points[corner].DistanceTo(points[corner + over]))}");

    private static string Sides(Route route)
    {
        var sides = route.Bends.Skip(1)
            .Select((bend, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 2}: {(bend.Rotation.Degrees > 0 ? "right" : "left")}"))
            .ToList();
        return sides.Count == 0 ? string.Empty : $"    side: {{{string.Join(", ", sides)}}}\n";
    }

    private static string Move(Vector3D way) => string.Create(
        CultureInfo.InvariantCulture,
        $"{{{(way.X < 0 ? "back" : "forward")}: {Figure(Math.Abs(way.X))}, {(way.Y < 0 ? "right" : "left")}: {Figure(Math.Abs(way.Y))}, "
            + $"{(way.Z < 0 ? "down" : "up")}: {Figure(Math.Abs(way.Z))}}}");

    private static string Figure(double value) => value.ToString("F17", CultureInfo.InvariantCulture);

    private sealed class Near : IEqualityComparer<double>
    {
        public bool Equals(double x, double y) => Math.Abs(x - y) < 1e-8;

        public int GetHashCode(double obj) => 0;
    }
}
