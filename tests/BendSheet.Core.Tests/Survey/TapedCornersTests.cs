using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

public class TapedCornersTests
{
    [Fact]
    public void The_needed_distances_and_the_sides_give_the_corners() => TapedRoute.Any.Sample(
        route => AssertGeometry.Equal(route.Points, Corners(route.Needed(), route.Sides)),
        iter: 3000);

    [Fact]
    public void However_near_to_flat_the_corners_found_have_the_distances_measured() => TapedRoute.OfAnyRotation.Sample(
        route => Assert.All(
            Solved(route.Needed(), route.Sides).Residuals,
            residual => AssertGeometry.Equal(residual.Measured.Distance, residual.Reconciled, residual.Measured.Name)),
        iter: 3000);

    [Fact]
    public void Distances_that_agree_leave_nothing_to_reconcile() => TapedRoute.Any.Sample(
        route =>
        {
            var fit = Solved(route.Needed(), route.Sides);
            Assert.Null(fit.Worst);
            AssertGeometry.Equal(0, fit.RootMeanSquare.Millimetres);
            Assert.Equal(route.Needed(), fit.Residuals.Select(residual => residual.Measured));
        },
        iter: 300);

    [Fact]
    public void In_which_order_they_are_measured_and_from_which_end_makes_no_difference() => TapedRoute.Any.Sample(
        route =>
        {
            var turned = route.Needed().Reverse().Select(taped => taped with { From = taped.To, To = taped.From }).ToArray();
            AssertGeometry.Equal(route.Points, Corners(turned, [.. route.Sides.Reverse()]));
        },
        iter: 300);

    [Fact]
    public void A_straight_line_is_one_distance() =>
        AssertGeometry.Equal([default, new(321, 0, 0)], Corners([TapedRoute.Taped(0, 1, 321)], []));

    [Fact]
    public void One_bend_is_three_distances_and_turns_to_the_left() => AssertGeometry.Equal(
        [default, new(30, 0, 0), new(30, 40, 0)],
        Corners([TapedRoute.Taped(0, 1, 30), TapedRoute.Taped(1, 2, 40), TapedRoute.Taped(0, 2, 50)], []));

    /// <summary>Along three edges of a cube: the distances are 1, √2 and √3 edges. Looking along +Y with −X, where the line came from, held
    /// up, +Z is on the right and −Z on the left.</summary>
    [Theory]
    [InlineData(Side.Right, 100)]
    [InlineData(Side.Left, -100)]
    public void Right_is_right_looking_along_the_leg_with_the_side_of_the_bend_before_held_up(Side side, double z)
    {
        TapedDistance[] cube =
        [
            TapedRoute.Taped(0, 1, 100), TapedRoute.Taped(1, 2, 100), TapedRoute.Taped(2, 3, 100),
            TapedRoute.Taped(0, 2, 100 * Math.Sqrt(2)),
            TapedRoute.Taped(1, 3, 100 * Math.Sqrt(2)),
            TapedRoute.Taped(0, 3, 100 * Math.Sqrt(3)),
        ];
        AssertGeometry.Equal([default, new(100, 0, 0), new(100, 100, 0), new(100, 100, z)], Corners(cube, [TapedRoute.Seen(2, side)]));
    }

    /// <summary>The worked example of the trade's mathematics, its points to four decimals: the tape gives them back as exactly.</summary>
    [Fact]
    public void The_worked_example_comes_back()
    {
        var route = new TapedRoute([120, 60, 200, 80], [45, 30, 90], [0, 90, -45]);
        var corners = Corners(route.Needed(), route.Sides);
        string[][] printed =
        [
            ["0.0000", "0.0000", "0.0000"], ["120.0000", "0.0000", "0.0000"], ["162.4264", "42.4264", "0.0000"],
            ["284.9009", "164.9009", "100.0000"], ["224.9009", "184.9009", "148.9898"],
        ];
        Assert.Equal(printed.Length, corners.Count);
        for (var i = 0; i < printed.Length; i++)
        {
            AssertGeometry.Printed(printed[i][0], corners[i].X);
            AssertGeometry.Printed(printed[i][1], corners[i].Y);
            AssertGeometry.Printed(printed[i][2], corners[i].Z);
        }
    }

    [Fact]
    public void Flat_bends_need_no_side() => Gen.Select(TapedRoute.Any, Gen.Bool.Array[9]).Sample(
        (route, against) =>
        {
            var flat = route with { Rotations = [.. route.Rotations.Select((_, i) => i > 0 && against[i] ? 180.0 : 0)] };
            AssertGeometry.Equal(flat.Points, Corners(flat.Needed(), []));
        },
        iter: 1000);

    [Fact]
    public void Forty_corners_are_found() => Gen.Double[30, 150].Array[40].Sample(
        angles =>
        {
            var route = new TapedRoute(
                [.. Enumerable.Repeat(100.0, 41)], angles, [.. angles.Select((angle, i) => i == 0 ? 0 : i % 2 == 0 ? angle : -angle)]);
            AssertGeometry.Equal(route.Points, Corners(route.Needed(), route.Sides));
        },
        iter: 50);

    internal static TapedFit Solved(IReadOnlyList<TapedDistance> distances, IReadOnlyList<TapedSide> sides)
    {
        var (fit, findings) = TapedCorners.Solve(distances, sides, TapedRoute.At);
        Assert.True(findings.IsEmpty, string.Join(Environment.NewLine, findings));
        return fit!;
    }

    internal static IReadOnlyList<Vector3D> Corners(IReadOnlyList<TapedDistance> distances, IReadOnlyList<TapedSide> sides) =>
        Solved(distances, sides).Corners;
}
