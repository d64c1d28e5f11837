using BendSheet.Core.Findings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

/// <summary>Left and right: seen, told by distances over several bends, or asked for.</summary>
public class TapedSidesTests
{
    private static readonly TapedRoute Line = new([200, 180, 220, 190, 210], [80, 95, 70, 85], [0, 70, -85, 100]);

    [Fact]
    public void Each_side_that_no_distance_tells_is_asked_for()
    {
        var findings = TapedFindingsTests.Findings(Line.Needed(), []);
        Assert.All(
            findings,
            finding => Assert.Equal(
                (TapedRules.SideMissing, TapedRoute.At, Severity.Error), (finding.Rule, finding.Position, finding.Severity)));
        Assert.Equal(
            [
                "the tape cannot tell which way bend 2 turns: look along leg 2 from end A with the side that bend 1 turned to held "
                    + "upwards, and say `side: {2: left}` or `side: {2: right}`",
                "the tape cannot tell which way bend 3 turns: look along leg 3 from end A with the side that bend 2 turned to held "
                    + "upwards, and say `side: {3: left}` or `side: {3: right}`",
                "the tape cannot tell which way bend 4 turns: look along leg 4 from end A with the side that bend 3 turned to held "
                    + "upwards, and say `side: {4: left}` or `side: {4: right}`",
            ],
            findings.Select(finding => finding.Message),
            StringComparer.Ordinal);
    }

    [Fact]
    public void One_missing_side_of_several_is_asked_for_alone() => TapedFindingsTests.One(
        Line.Needed(),
        [.. Line.Sides.Where(side => side.Bend != 3)],
        TapedRules.SideMissing,
        TapedRoute.At,
        "the tape cannot tell which way bend 3 turns: look along leg 3 from end A with the side that bend 2 turned to held upwards, and "
            + "say `side: {3: left}` or `side: {3: right}`");

    [Fact]
    public void All_distances_still_leave_one_side_to_be_seen() => TapedFindingsTests.One(
        Line.All(),
        [],
        TapedRules.SideMissing,
        TapedRoute.At,
        "the tape cannot tell which way bend 2 turns: look along leg 2 from end A with the side that bend 1 turned to held upwards, and "
            + "say `side: {2: left}` or `side: {2: right}`");

    /// <summary>One side seen, at any bend, and every distance: the others follow. In a few lines two shapes are so alike that the tape
    /// cannot tell them apart, and then it is asked; a wrong hand is never given.</summary>
    [Fact]
    public void All_distances_and_one_side_give_the_right_hand()
    {
        var (lines, asked) = (0, 0);
        Gen.Select(TapedRoute.ClearOf(2, 8), Gen.Int[0, 1000]).Sample(
            (route, which) =>
            {
                var (fit, findings) = TapedCorners.Solve(route.All(), [route.Sides[which % route.Sides.Length]], TapedRoute.At);
                Interlocked.Increment(ref lines);
                if (fit is null)
                {
                    Interlocked.Increment(ref asked);
                    Assert.All(findings, finding => Assert.Same(TapedRules.SideMissing, finding.Rule));
                    return;
                }

                AssertGeometry.Equal(route.Points, fit.Corners);
            },
            iter: 1000);
        Assert.InRange(asked, 0, lines / 50);
    }

    [Theory]
    [InlineData("0-4", "1-5")]
    [InlineData("0-5")]
    public void A_few_distances_over_several_bends_are_enough(params string[] further)
    {
        TapedDistance[] taped = [.. Line.All().Where(one => one.To - one.From <= 3 || further.Contains(one.Name, StringComparer.Ordinal))];
        AssertGeometry.Equal(Line.Points, TapedCornersTests.Corners(taped, [TapedRoute.Seen(2, Side.Right)]));
    }

    /// <summary>Over bends 1 to 3 nothing is tied to bend 4.</summary>
    [Fact]
    public void A_distance_tells_only_of_the_bends_it_goes_over()
    {
        TapedDistance[] taped =
        [
            .. Line.All().Where(one => one.To - one.From <= 3 || string.Equals(one.Name, "0-4", StringComparison.Ordinal)),
        ];
        Assert.StartsWith(
            "the tape cannot tell which way bend 4 turns",
            Assert.Single(TapedFindingsTests.Findings(taped, [TapedRoute.Seen(2, Side.Right)])).Message,
            StringComparison.Ordinal);
    }

    /// <summary>Bends 1 to 3 alike and square, bend 3 rolled so that 0-4 is nearly the same on both sides.</summary>
    [Fact]
    public void Where_both_sides_fit_alike_the_side_is_asked_for_with_what_both_miss_by()
    {
        var route = new TapedRoute([200, 200, 200, 200], [90, 90, 90], [0, 90, 90]);
        var mirrored = route with { Rotations = [0, 90, -90] };
        var middle = (route.Points[0].DistanceTo(route.Points[4]) + mirrored.Points[0].DistanceTo(mirrored.Points[4])) / 2;
        var finding = Assert.Single(
            TapedFindingsTests.Findings(TapedFindingsTests.Changed(route, 0, 4, middle), [TapedRoute.Seen(2, Side.Right)]));
        Assert.Same(TapedRules.SideMissing, finding.Rule);
        Assert.Equal(TapedRoute.At, finding.Position);
        Assert.Matches(
            @"^the distances do not tell which way bend 3 turns \(left or right, they miss by [0-9.]+ mm \([0-9.]+ in\) "
                + @"or [0-9.]+ mm \([0-9.]+ in\), "
                + @"root of the sum of squares\): look along leg 3 ",
            finding.Message);
    }

    [Fact]
    public void A_side_that_the_distances_contradict_is_named_where_it_was_typed()
    {
        TapedSide[] wrong = [.. Line.Sides.Select(side => side.Bend == 4 ? side with { Side = Side.Left } : side)];
        var finding = Assert.Single(TapedFindingsTests.Findings(Line.All(), wrong));
        Assert.Same(TapedRules.SideContradicted, finding.Rule);
        Assert.Equal(TapedRoute.SideAt(4), finding.Position);
        Assert.StartsWith(
            "bend 4 is said to turn left, but with the other sides given the distances over several bends fit clearly better with right "
                + "(off by 0.0 mm (0.000 in) instead of ",
            finding.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_bend_has_no_side() => TapedFindingsTests.One(
        Line.Needed(),
        [.. Line.Sides, TapedRoute.Seen(1, Side.Left)],
        TapedRules.SideOutOfPlace,
        TapedRoute.SideAt(1),
        "there is no bend before bend 1 to count its side from: leave its side out");

    [Fact]
    public void A_bend_that_is_not_there_has_no_side() => TapedFindingsTests.One(
        Line.Needed(),
        [.. Line.Sides, TapedRoute.Seen(5, Side.Left)],
        TapedRules.SideOutOfPlace,
        TapedRoute.SideAt(5),
        "there is no bend 5 to give a side for: the distances name 4 bends, and the second is the first with a side");

    [Fact]
    public void A_bend_has_one_side() => TapedFindingsTests.One(
        Line.Needed(),
        [.. Line.Sides, TapedRoute.Seen(3, Side.Right)],
        TapedRules.SideOutOfPlace,
        TapedRoute.SideAt(3),
        "bend 3 has its side here a second time: keep one");

    [Fact]
    public void Nearly_flat_without_a_side_is_taken_as_flat_and_said_so()
    {
        var zigzag = new TapedRoute([100, 100, 100], [90, 90], [0, 180]);
        var taped = TapedFindingsTests.Changed(zigzag, 0, 3, 223.1);
        TapedFindingsTests.One(
            taped,
            [],
            TapedRules.TakenAsFlat,
            TapedRoute.DistanceAt(0, 3),
            "bend 2 is taken to lie in one plane with bend 1: distance 0-3 is 223.1 mm (8.783 in), and 223.6 mm (8.803 in) would be "
                + "flat, which a tape can hardly tell apart; if it does leave the plane, say `side: {2: left}` or `side: {2: right}`",
            Severity.Note);
        var fit = TapedCorners.Solve(taped, [], TapedRoute.At).Fit!;
        Assert.All(fit.Corners, corner => AssertGeometry.Equal(0, corner.Z));
        Assert.Equal("0-3", fit.Worst!.Measured.Name);
        AssertGeometry.Equal(223.1 - (100 * Math.Sqrt(5)), fit.Worst.Residual.Millimetres);
    }

    [Fact]
    public void Nearly_flat_with_a_side_is_taken_as_measured()
    {
        var zigzag = new TapedRoute([100, 100, 100], [90, 90], [0, 180]);
        var corners = TapedCornersTests.Corners(TapedFindingsTests.Changed(zigzag, 0, 3, 223.1), [TapedRoute.Seen(2, Side.Left)]);
        Assert.InRange(corners[3].Z, -40, -5);
        AssertGeometry.Equal(223.1, corners[0].DistanceTo(corners[3]));
    }

    [Fact]
    public void A_nearly_flat_bend_among_others_takes_the_side_that_fits_better_and_says_so()
    {
        var route = new TapedRoute([130, 200, 270, 50], [20, 80, 110], [0, 70, 15]);
        TapedFindingsTests.One(
            route.All(),
            [TapedRoute.Seen(2, Side.Right)],
            TapedRules.TakenAsFlat,
            TapedRoute.DistanceAt(1, 4),
            "bend 3 lies so nearly in one plane with bend 2 that the tape can hardly tell its side: right is taken, which fits a little "
                + "better; if that is wrong, say `side: {3: left}`",
            Severity.Note);
        AssertGeometry.Equal(route.Points, TapedCorners.Solve(route.All(), [TapedRoute.Seen(2, Side.Right)], TapedRoute.At).Fit!.Corners);
    }

    /// <summary>
    /// Read to whole millimetres, the shape that is found corner after corner fits worse than one with another side: that one is taken, and
    /// its corners are where they were.
    /// </summary>
    [Fact]
    public void A_shape_that_fits_better_with_another_side_is_taken()
    {
        var route = new TapedRoute([145, 85, 75, 230, 255, 360], [115, 20, 115, 85, 35], [0, -30, -155, -100, -170]);
        TapedDistance[] read =
            [.. route.All().Select(one => one with { Distance = Lines.Mm(Math.Round(one.Distance.Millimetres)) })];
        var (fit, findings) = TapedCorners.Solve(read, [TapedRoute.Seen(3, Side.Left)], TapedRoute.At);
        Assert.Empty(findings);
        Assert.All(route.Points.Zip(fit!.Corners), pair => Assert.InRange(pair.First.DistanceTo(pair.Second), 0, 3));
    }

    /// <summary>
    /// Lines on which a shape with other sides fits nearly as well, until the corners before it are held against every distance: what was
    /// taped without an error and one side that was seen give each corner where it is.
    /// </summary>
    [Theory]
    [InlineData(
        new double[] { 320, 195, 265, 345, 185, 320, 285, 130 },
        new double[] { 80, 120, 70, 75, 65, 110, 75 },
        new double[] { 0, -125, 45, -25, 60, 125, -95 },
        3)]
    [InlineData(
        new double[] { 215, 350, 360, 220, 75, 105, 260, 270 },
        new double[] { 20, 50, 100, 85, 35, 65, 50 },
        new double[] { 0, -95, -115, -40, -40, 145, 85 },
        2)]
    [InlineData(
        new double[] { 105, 120, 390, 145, 80, 230, 265, 400, 90 },
        new double[] { 100, 90, 95, 105, 75, 75, 45, 95 },
        new double[] { 0, -85, 110, 70, -50, -55, 125, -60 },
        8)]
    public void Every_distance_is_heard_while_the_corners_are_found(double[] legs, double[] bends, double[] rotations, int seen)
    {
        var route = new TapedRoute(legs, bends, rotations);
        var (fit, findings) = TapedCorners.Solve(route.All(), [route.Sides.Single(side => side.Bend == seen)], TapedRoute.At);
        Assert.Empty(findings);
        AssertGeometry.Equal(route.Points, fit!.Corners);
    }

    /// <summary>The same with a tape too short for the whole line: what was taped over so many corners and no more.</summary>
    [Theory]
    [InlineData(
        new double[] { 305, 205, 190, 50, 345, 155, 325, 220 },
        new double[] { 100, 70, 100, 25, 50, 90, 80 },
        new double[] { 0, 60, 95, -40, 100, -55, 60 },
        4,
        6)]
    [InlineData(
        new double[] { 245, 215, 75, 285, 180, 345, 155, 175, 190, 130 },
        new double[] { 90, 70, 50, 75, 90, 90, 40, 60, 100 },
        new double[] { 0, 25, 85, 25, 30, -150, 130, 170, -155 },
        2,
        5)]
    [InlineData(
        new double[] { 280, 160, 160, 355, 135, 385, 195, 350, 290, 175, 390, 75, 360, 280 },
        new double[] { 120, 95, 35, 120, 85, 50, 85, 70, 115, 25, 50, 40, 65 },
        new double[] { 0, -80, -60, 145, -160, 135, -35, -55, -90, -140, -140, -105, 165 },
        10,
        4)]
    public void Distances_over_a_few_corners_are_enough_for_a_long_line(
        double[] legs, double[] bends, double[] rotations, int seen, int apart)
    {
        var route = new TapedRoute(legs, bends, rotations);
        var (fit, findings) = TapedCorners.Solve(
            TapedRoute.Distances(route.Points, apart), [route.Sides.Single(side => side.Bend == seen)], TapedRoute.At);
        Assert.Empty(findings);
        AssertGeometry.Equal(route.Points, fit!.Corners);
    }

    /// <summary>Five sides in a row that nothing tells before the distances to end B: the right ones are still there then.</summary>
    [Theory]
    [InlineData(
        new double[] { 400, 110, 100, 130, 270, 130, 290, 320 },
        new double[] { 110, 35, 60, 95, 90, 50, 110 },
        new double[] { 0, -145, -60, -75, -120, 130, 135 })]
    [InlineData(
        new double[] { 360, 100, 340, 400, 320, 320, 280, 240 },
        new double[] { 90, 105, 90, 40, 45, 30, 105 },
        new double[] { 0, -50, -95, 55, -115, -75, -55 })]
    public void Only_the_distances_to_end_B_tell_the_sides(double[] legs, double[] bends, double[] rotations)
    {
        var route = new TapedRoute(legs, bends, rotations);
        TapedDistance[] taped = [.. route.All().Where(one => one.To - one.From <= 3 || one.To == legs.Length)];
        var (fit, findings) = TapedCorners.Solve(taped, [route.Sides[0]], TapedRoute.At);
        Assert.Empty(findings);
        AssertGeometry.Equal(route.Points, fit!.Corners);
    }

    /// <summary>Sides that a flat bend needs not are no harm: what was seen a little out of the plane may be flat to the tape.</summary>
    [Fact]
    public void A_side_at_a_flat_bend_is_let_be()
    {
        var flat = Line with { Rotations = [0, 0, 180, 0] };
        AssertGeometry.Equal(
            flat.Points, TapedCornersTests.Corners(flat.Needed(), [TapedRoute.Seen(2, Side.Left), TapedRoute.Seen(3, Side.Right)]));
    }

    /// <summary>
    /// One side of several seen wrongly, at a bend from nearly flat to well out of the plane, and every distance right: where the distances
    /// then miss by more than three readings of a tape, 3 mm, it is said; with less a tape would not show it.
    /// </summary>
    [Fact]
    public void A_wrong_side_is_never_passed_over_where_the_distances_miss_by_more_than_a_tape_hides()
    {
        var random = new Random(20261126);
        var (said, hidden) = (0, 0);
        for (var i = 0; i < 200; i++)
        {
            double Between(double from, double to) => from + ((to - from) * random.NextDouble());
            var route = new TapedRoute(
                [.. Enumerable.Range(0, 5).Select(_ => Between(120, 250))],
                [.. Enumerable.Range(0, 4).Select(_ => Between(40, 90))],
                [0, Between(40, 90), Between(6, 25), Between(-90, -40)]);
            var sides = route.Sides.Select(side => side.Bend == 3 ? side with { Side = Side.Left } : side).ToArray();
            var (fit, findings) = TapedCorners.Solve(route.All(), sides, TapedRoute.At);
            if (findings.Any(finding => finding.Rule == TapedRules.SideContradicted))
            {
                said++;
                continue;
            }

            hidden++;
            Assert.NotNull(fit);
            var missed = Math.Sqrt(fit.Residuals.Sum(one => one.Residual.Millimetres * one.Residual.Millimetres));
            Assert.InRange(missed, 0, Core.Units.Tolerances.TapeSlip.Millimetres + 1e-6);
        }

        Assert.InRange(said, 20, 190);
        Assert.InRange(hidden, 10, 180);
    }
}
