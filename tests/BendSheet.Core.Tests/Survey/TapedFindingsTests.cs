using BendSheet.Core.Findings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

/// <summary>What to measure next or again, at the figure that was typed.</summary>
public class TapedFindingsTests
{
    /// <summary>Three edges of a cube, one after the other: a bend of 90° rolled by 90°.</summary>
    private static readonly TapedRoute Cube = new([100, 100, 100], [90, 90], [0, 90]);

    [Fact]
    public void A_good_set_is_silent() => Assert.Empty(Findings(Cube.Needed(), Cube.Sides));

    [Fact]
    public void Nothing_measured_asks_for_the_first_leg() => One(
        [], [], TapedRules.DistanceMissing, TapedRoute.At, "distance 0-1 is missing: measure it next, it gives leg 1");

    [Theory]
    [InlineData(1, 2, "distance 1-2 is missing: measure it next, it gives leg 2")]
    [InlineData(0, 2, "distance 0-2 is missing: measure it next, it gives the bend at corner 1")]
    [InlineData(1, 3, "distance 1-3 is missing: measure it next, it gives the bend at corner 2")]
    [InlineData(0, 3, "distance 0-3 is missing: measure it next, it gives the rotation from bend 1 to bend 2")]
    public void A_missing_distance_is_named_with_what_it_gives(int from, int to, string message) => One(
        [.. Cube.Needed().Where(taped => (taped.From, taped.To) != (from, to))],
        Cube.Sides,
        TapedRules.DistanceMissing,
        TapedRoute.At,
        message);

    [Fact]
    public void Every_missing_distance_is_asked_for_in_one_go_along_the_line()
    {
        var route = new TapedRoute([100, 100, 100, 100], [90, 90, 90], [0, 90, 90]);
        var legs = TapedRoute.Distances(route.Points, 1);
        Assert.Equal(
            ["0-2", "1-3", "0-3", "2-4", "1-4"],
            Findings(legs, route.Sides).Select(finding => finding.Message.Split(' ')[1]),
            StringComparer.Ordinal);
    }

    [Fact]
    public void A_distance_over_more_corners_does_not_stand_for_a_needed_one()
    {
        var route = new TapedRoute([100, 100, 100, 100], [90, 90, 90], [0, 90, 90]);
        One(
            [.. route.All().Where(taped => !string.Equals(taped.Name, "1-3", StringComparison.Ordinal))],
            route.Sides,
            TapedRules.DistanceMissing,
            TapedRoute.At,
            "distance 1-3 is missing: measure it next, it gives the bend at corner 2");
    }

    [Fact]
    public void A_gap_in_the_numbers_is_one_finding() => One(
        [TapedRoute.Taped(0, 1, 100), TapedRoute.Taped(1, 4, 100), TapedRoute.Taped(0, 4, 150)],
        [],
        TapedRules.CornerNumbers,
        TapedRoute.At,
        "no distance names corners 2, 3, but one names corner 4: count the corners from end A (0) without a gap, or measure the "
            + "distances to them");

    [Fact]
    public void A_number_beyond_any_line_is_a_slip() => One(
        [TapedRoute.Taped(0, 1, 100), TapedRoute.Taped(1, 2000, 100)],
        [],
        TapedRules.CornerNumbers,
        TapedRoute.DistanceAt(1, 2000),
        "distance 1-2000 names a corner that cannot be: end A is 0, and no line has more than 100 corners");

    [Fact]
    public void The_same_pair_twice_is_said_at_the_second_whichever_end_is_named_first() => One(
        [.. Cube.Needed(), TapedRoute.Taped(2, 0, 143)],
        Cube.Sides,
        TapedRules.DistanceSaidTwice,
        TapedRoute.DistanceAt(2, 0),
        "distance 0-2 is here a second time: 141.4 mm (5.568 in) before, 143.0 mm (5.630 in) now; keep one, or measure it again");

    [Fact]
    public void A_corner_has_no_distance_to_itself() => One(
        [.. Cube.Needed(), TapedRoute.Taped(2, 2, 10)],
        Cube.Sides,
        TapedRules.NoDistance,
        TapedRoute.DistanceAt(2, 2),
        "distance 2-2 goes from corner 2 to itself: name two different corners");

    [Theory]
    [InlineData(0, "distance 0-1 is 0.0 mm (0.000 in): two corners lie apart, measure it again")]
    [InlineData(-5, "distance 0-1 is -5.0 mm (-0.197 in): two corners lie apart, measure it again")]
    [InlineData(120_000, "distance 0-1 is 120000.0 mm (4724.409 in), longer than any car: measure it again")]
    public void A_distance_that_no_tape_shows_is_measured_again(double millimetres, string message) => One(
        [TapedRoute.Taped(0, 1, millimetres)], [], TapedRules.NoDistance, TapedRoute.DistanceAt(0, 1), message);

    [Fact]
    public void A_side_of_a_triangle_too_long_is_named_with_how_much() => One(
        Changed(Cube, 0, 2, 206.5),
        Cube.Sides,
        TapedRules.TriangleImpossible,
        TapedRoute.DistanceAt(0, 2),
        "distance 0-2 is 206.5 mm (8.130 in), 6.5 mm (0.256 in) too much: with 0-1 of 100.0 mm (3.937 in) and 1-2 of 100.0 mm (3.937 in) "
            + "it is at most 200.0 mm (7.874 in); measure 0-2 again, and if it stays, 0-1 and 1-2");

    [Fact]
    public void A_side_of_a_triangle_too_short_is_named_with_how_much() => One(
        [TapedRoute.Taped(0, 1, 100), TapedRoute.Taped(1, 2, 60), TapedRoute.Taped(0, 2, 30)],
        [],
        TapedRules.TriangleImpossible,
        TapedRoute.DistanceAt(0, 2),
        "distance 0-2 is 30.0 mm (1.181 in), 10.0 mm (0.394 in) too little: with 0-1 of 100.0 mm (3.937 in) and 1-2 of 60.0 mm (2.362 "
            + "in) it is more than 40.0 mm (1.575 in); measure 0-2 again, and if it stays, 0-1 and 1-2");

    [Theory]
    [InlineData(200)]
    [InlineData(202.5)]
    public void A_corner_without_a_bend_is_to_be_left_out(double over)
    {
        var finding = Assert.Single(Findings(
            [TapedRoute.Taped(0, 1, 120), TapedRoute.Taped(1, 2, 80), TapedRoute.Taped(0, 2, over)], []));
        Assert.Same(TapedRules.CornerInLine, finding.Rule);
        Assert.Equal(TapedRoute.DistanceAt(0, 2), finding.Position);
        Assert.StartsWith(
            $"the line goes straight on at corner 1: distance 0-2 is {over:0.0} mm", finding.Message, StringComparison.Ordinal);
        Assert.EndsWith("leave this corner out and number the later ones one lower", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(230, "distance 0-3 is 230.0 mm (9.055 in), 6.4 mm (0.252 in) too much")]
    [InlineData(90, "distance 0-3 is 90.0 mm (3.543 in), 10.0 mm (0.394 in) too little")]
    public void A_distance_over_two_bends_that_no_rotation_gives_is_named_with_the_limits(double millimetres, string start) => One(
        Changed(Cube, 0, 3, millimetres),
        Cube.Sides,
        TapedRules.RotationImpossible,
        TapedRoute.DistanceAt(0, 3),
        start + ": bends 1 and 2 allow 100.0 mm (3.937 in) to 223.6 mm (8.803 in), however they are rolled; measure 0-3 again, and if it "
            + "stays, 0-2 and 1-3");

    [Fact]
    public void All_mistakes_are_reported_in_one_run()
    {
        var route = new TapedRoute([100, 100, 100, 100], [90, 90, 90], [0, 90, 90]);
        TapedDistance[] taped =
        [
            .. Changed(route, 0, 2, 300)
            .Where(one => !string.Equals(one.Name, "1-4", StringComparison.Ordinal)), TapedRoute.Taped(1, 0, 100),
        ];
        Assert.Equal(
            [TapedRules.DistanceSaidTwice, TapedRules.DistanceMissing, TapedRules.SideOutOfPlace, TapedRules.TriangleImpossible],
            Findings(taped, [TapedRoute.Seen(9, Side.Left)]).Select(finding => finding.Rule));
    }

    /// <summary>
    /// A hair beyond what a flat shape gives is the tape, not a mistake: the shape is flat and the hair is spread over all distances.
    /// </summary>
    [Theory]
    [InlineData(224.6)]
    [InlineData(226.0)]
    public void A_little_beyond_flat_is_reconciled(double millimetres)
    {
        var zigzag = Cube with { Rotations = [0, 180] };
        var (fit, findings) = TapedCorners.Solve(Changed(zigzag, 0, 3, millimetres), [], TapedRoute.At);
        Assert.Empty(findings);
        Assert.All(fit!.Corners, corner => AssertGeometry.Equal(0, corner.Z));
        Assert.Equal("0-3", fit.Worst!.Measured.Name);
        Assert.InRange(fit.Worst.Residual.Millimetres, 0.1, millimetres - 223.6);
        Assert.All(fit.Residuals, residual => Assert.InRange(Math.Abs(residual.Residual.Millimetres), 0.01, 1.5));
    }

    [Fact]
    public void Too_few_distances_to_tell_which_is_wrong_are_all_named()
    {
        var route = new TapedRoute([200, 180, 220, 190], [80, 95, 70], [0, 70, 85]);
        var finding = Assert.Single(Findings(Changed(route, 0, 4, route.Points[0].DistanceTo(route.Points[4]) + 25), route.Sides));
        Assert.Same(TapedRules.DistanceMisfit, finding.Rule);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(TapedRoute.At, finding.Position);
        Assert.Contains("too few check each other to tell which is wrong: measure ", finding.Message, StringComparison.Ordinal);
        Assert.Contains("0-4", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// Whatever is typed, what comes back is either corners with figures or a finding that stops, and never an exception.
    /// </summary>
    [Fact]
    public void Anything_at_all_gives_corners_or_a_reason() => Gen.Select(
        Gen.Select(
            Gen.Int[0, 6],
            Gen.Int[0, 6],
            Gen.OneOf(Gen.Double[-1, 500], Gen.Double[90, 110], Gen.Const(100.0), Gen.Const(double.MaxValue))).Array[0, 40],
        Gen.Select(Gen.Int[-1, 8], Gen.Bool).Array[0, 4]).Sample(
        (distances, sides) =>
        {
            // Each pair once, and most often all that are needed: otherwise nothing but missing ones would be tried.
            var taped = distances.Select(one => TapedRoute.Taped(one.Item1, one.Item2, one.Item3));
            var padded = TapedRoute.Distances(new TapedRoute([100, 100, 100, 100], [60, 60, 60], [0, 60, 60]).Points);
            foreach (var set in new[]
            {
                [.. taped],
                taped.Concat(padded).DistinctBy(one => one.Name, StringComparer.Ordinal)
                    .Where(one => one.From != one.To && one.To < 5 && one.From < 5).ToArray(),
            })
            {
                var (fit, findings) = TapedCorners.Solve(
                    set, [.. sides.Select(side => TapedRoute.Seen(side.Item1, side.Item2 ? Side.Left : Side.Right))], TapedRoute.At);
                Assert.Equal(fit is null, findings.Any(finding => finding.Severity == Severity.Error));
                Assert.All(fit?.Corners ?? [], corner => Assert.True(double.IsFinite(corner.X + corner.Y + corner.Z)));
            }
        },
        iter: 5000);

    internal static IReadOnlyList<Finding> Findings(IReadOnlyList<TapedDistance> distances, IReadOnlyList<TapedSide> sides)
    {
        var (fit, findings) = TapedCorners.Solve(distances, sides, TapedRoute.At);
        Assert.Equal(fit is null, findings.Any(finding => finding.Severity == Severity.Error));
        return findings;
    }

    internal static void One(
        IReadOnlyList<TapedDistance> distances,
        IReadOnlyList<TapedSide> sides,
        Rule rule,
        SourcePosition position,
        string message,
        Severity severity = Severity.Error)
    {
        var finding = Assert.Single(Findings(distances, sides));
        Assert.Equal(message, finding.Message);
        Assert.Same(rule, finding.Rule);
        Assert.Equal(position, finding.Position);
        Assert.Equal(severity, finding.Severity);
    }

    /// <summary>All distances of a route with one of them another.</summary>
    internal static TapedDistance[] Changed(TapedRoute route, int from, int to, double millimetres) =>
        [.. route.All().Select(taped => taped.From == from && taped.To == to ? TapedRoute.Taped(from, to, millimetres) : taped)];
}
