using BendSheet.Core.Geometry;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class ViewDirectionTests
{
    public static TheoryData<string> FlatLines() => new(
        // Level, upright along the car, upright across it, and slanting: each seen edge-on from somewhere.
        "    - {straight: 200, bend: 60}\n    - {straight: 200, rotate: 180, bend: 60}\n    - {straight: 200}\n",
        "    - {straight: 200, rotate: 90, bend: 60}\n    - {straight: 200, rotate: 180, bend: 60}\n    - {straight: 200}\n",
        "    - {straight: 200, rotate: 45, bend: 60}\n    - {straight: 200, rotate: 180, bend: 60}\n    - {straight: 200}\n",
        "    - {straight: 200, rotate: -35, bend: 60}\n    - {straight: 200, rotate: 180, bend: 60}\n    - {straight: 200}\n",
        "    measured: straight\n    rows:\n      - {straight: 60, rotate: 20, bend: 180}\n      - {straight: 70}\n");

    [Theory]
    [MemberData(nameof(FlatLines))]
    public void A_flat_line_is_never_seen_edge_on(string rows)
    {
        var shape = Shape(rows);
        var view = ViewDirection.Best(shape, 5);
        Assert.All(shape.Arcs, arc => Assert.True(Math.Abs(arc.Start.Axis.Dot(view.Nearness)) > 0.6));
    }

    [Theory]
    [MemberData(nameof(FlatLines))]
    public void No_leg_is_seen_end_on(string rows)
    {
        var shape = Shape(rows);
        var view = ViewDirection.Best(shape, 5);
        Assert.All(shape.Straights, straight => Assert.True(Math.Abs(straight.Start.Direction.Dot(view.Nearness)) < 0.9));
    }

    [Fact]
    public void A_direction_from_which_the_tube_crosses_itself_is_left_for_one_from_which_it_does_not()
    {
        // From behind and above, the usual place, the last straight passes in front of the first.
        var shape =
            Shape("    - {straight: 300, bend: 90}\n    - {straight: 120, rotate: 90 ccw, bend: 90}\n    - {straight: 150, rotate: 90 "
                + "ccw, bend: 90}\n    - {straight: 60, rotate: 90 ccw, bend: 90}\n    - {straight: 200}\n");
        var lines = Polyline.Of(shape);
        var view = ViewDirection.Best(shape, 5);
        var flat = lines.Points.Select(view.Of).ToArray();
        Assert.Empty(Crossings.Of(flat, [.. lines.Points.Select(point => point.Dot(view.Nearness))]));
    }

    [Fact]
    public void The_axes_of_every_view_are_square_to_each_other_and_of_length_one()
    {
        var view = ViewDirection.Best(
            Shape("    measured: straight\n    rows:\n      - {straight: 60, rotate: 20, bend: 180}\n      - {straight: 70}\n"), 5);
        Assert.Equal(1, view.Right.Norm, 12);
        Assert.Equal(1, view.Up.Norm, 12);
        Assert.Equal(0, (view.Right.Cross(view.Up) - view.Nearness).Norm, 12);
    }

    [Fact]
    public void A_straight_tube_and_one_without_end_in_sight_have_a_direction_too()
    {
        TubeCentreline[] shapes = [Shape("    - {straight: 300}\n"), Printed.Solved(Printed.ManyBends(200))[0].Centreline!];
        foreach (var shape in shapes)
        {
            var view = ViewDirection.Best(shape, 5);
            var longest = shape.Straights.MaxBy(straight => straight.Length)!;

            // Not a default without a direction: both ends of the longest leg are seen apart, neither flat nor from straight above.
            Assert.True((view.Of(longest.End) - view.Of(longest.Start.Position)).Norm > 0.4 * longest.Length.Millimetres);
            Assert.InRange(Math.Abs(view.Nearness.Z), 0.3, 0.8);
        }
    }

    private static TubeCentreline Shape(string rows) =>
        Printed.Solved(
            Printed.Head.Replace("lines:", "wire: {diameter: 2.4, radius: 9/16 in}\nlines:", StringComparison.Ordinal) + "  line:\n"
                + rows)[0].Centreline!;
}
