using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Order;

/// <summary>Where the tube lies round the tool, of shapes that can be reckoned by hand.</summary>
public class ToolClearanceTests
{
    private const double Radius = 15;

    /// <summary>
    /// Points on a leg lie no further apart than this, so that the nearest of them is no further from the nearest there is.
    /// </summary>
    private const double Apart = 0.25;

    /// <summary>
    /// A flat hook: behind a bend of 150° the first leg comes back past the tool while the second bend is made. Held tube lies as on the
    /// finished tube, so that it is as far from the former's middle as that leg is from the middle of the second arc.
    /// </summary>
    [Theory]
    [InlineData(TubeEnd.A)]
    [InlineData(TubeEnd.B)]
    public void A_leg_that_hooks_back_is_as_far_from_the_middle_of_the_former_as_on_the_finished_tube(TubeEnd held)
    {
        double[] legs = [200, 60 + Radius + (Radius * Math.Tan(75 * Math.PI / 180)), 200];
        (double, double)[] bends = held == TubeEnd.A ? [(0, 150), (0, 90)] : [(0, 90), (0, 150)];
        var (hook, made) = held == TubeEnd.A ? (0, 1) : (2, 0);
        var clearance = ToolClearance.Of(Swings(legs, bends), new(made, held, default), bend => bend != made, Lines.Mm(Radius));

        var finished = Lines.Of(Lines.Bender(Radius), legs, bends).Centreline();
        var (leg, middle) = (finished.Straights[hook], finished.Arcs[made].Centre);
        var along = (middle - leg.Start.Position).Dot(leg.Start.Direction);
        Assert.InRange(along, 1, leg.Length.Millimetres - 1);
        var expected = (leg.Start.Position + (along * leg.Start.Direction)).DistanceTo(middle);
        foreach (var side in new[] { 1, -1 })
        {
            AssertGeometry.Equal(
                expected, clearance.Nearest(side, Lines.Mm(500), Lines.Mm(4.75))!.Value.Millimetres, $"side {side}");
            AssertGeometry.Equal(0, clearance.Beyond(side).Millimetres);
        }
    }

    /// <summary>
    /// A hook that crosses the plane of the bend: against ten thousand points of the finished tube, on which what is held lies already. The
    /// former's axis points as the bend's does, seen from the held end.
    /// </summary>
    [Theory]
    [InlineData(TubeEnd.A, 20, 4.75)]
    [InlineData(TubeEnd.A, 75, 4.75)]
    [InlineData(TubeEnd.A, -35, 4.75)]
    [InlineData(TubeEnd.A, -35, 40)]
    [InlineData(TubeEnd.A, 160, 12)]
    [InlineData(TubeEnd.B, 20, 4.75)]
    [InlineData(TubeEnd.B, -60, 30)]
    public void A_hook_across_the_plane_is_as_near_as_the_nearest_of_its_points(TubeEnd held, double roll, double diameter)
    {
        var isA = held == TubeEnd.A;
        double[] legs = [200, 60 + Radius + (Radius * Math.Tan(75 * Math.PI / 180)), 200];
        (double, double)[] bends = isA ? [(0, 150), (roll, 90)] : [(0, 90), (roll, 150)];
        var bend = isA ? 1 : 0;
        var clearance = ToolClearance.Of(Swings(legs, bends), new(bend, held, default), other => other != bend, Lines.Mm(Radius));

        var finished = Lines.Of(Lines.Bender(Radius), legs, bends).Centreline();
        var (hook, made) = isA ? (finished.Arcs[0], finished.Arcs[1]) : (finished.Arcs[1], finished.Arcs[0]);
        var axis = isA ? made.Start.Axis : -1 * made.Start.Axis;
        var points = Dense([.. OnBend(hook), isA ? finished.EndA : finished.EndB], startsAtTool: !isA).ToList();
        foreach (var side in new[] { 1, -1 })
        {
            double Height(Vector3D point) => side * (point - made.Centre).Dot(axis);
            var level = points.Where(point => Height(point) >= -diameter / 2).Select(point => FromAxis(point - made.Centre, axis)).ToList();
            var nearest = clearance.Nearest(side, Lines.Mm(500), Lines.Mm(diameter));
            Assert.Equal(level.Count > 0, nearest is not null);
            if (nearest is { } known)
            {
                Assert.InRange(known.Millimetres, level.Min() - Apart, level.Min() + 0.001);
            }

            Assert.Equal(Math.Max(0, points.Max(Height)), clearance.Beyond(side).Millimetres, 1e-6);
        }
    }

    /// <summary>
    /// The swept side: made, it lies as on the finished tube; before that it lies as if the bend's own tube were still straight in front of
    /// it.
    /// </summary>
    [Theory]
    [InlineData(60, 150, 0)]
    [InlineData(110, 150, 25)]
    [InlineData(150, 120, 0)]
    [InlineData(75, 170, -15)]
    public void What_is_swept_is_looked_at_at_both_ends_of_its_sweep(double straight, double turn, double roll)
    {
        double[] legs = [200, straight + Radius + (Radius * Math.Tan(turn * Math.PI / 360)), 250];
        (double, double)[] bends = [(0, 90), (roll, turn)];
        var clearance = ToolClearance.Of(Swings(legs, bends), new(0, TubeEnd.A, default), other => other == 1, Lines.Mm(Radius));

        var finished = Lines.Of(Lines.Bender(Radius), legs, bends).Centreline();
        var made = finished.Arcs[0];
        var end = made.End;
        var points = Dense([.. OnBend(finished.Arcs[1]), finished.EndB], startsAtTool: true)
            .Where(point => (point - made.Centre).Dot(made.Start.Axis) >= -2.375).ToList();
        var after = points.Min(point => FromAxis(point - made.Centre, made.Start.Axis));
        var before = points.Min(point => double.Hypot(
            (point - end.Position).Dot(end.Direction) + (Radius * Math.PI / 2), (point - end.Position).Dot(end.Side) - Radius));
        var expected = Math.Min(before, after);
        Assert.InRange(
            clearance.Nearest(1, Lines.Mm(500), Lines.Mm(4.75))!.Value.Millimetres, expected - Apart, expected + 0.001);
    }

    /// <summary>
    /// A tip that points down at the tool: three square bends beyond the one being made, legs corner to corner. Made, the tip is
    /// 15 + 210 - 200 behind the former's middle and 150 - 90 - 15 above it. Before that the tube of the bend is straight, and the tip
    /// nearer by its length.
    /// </summary>
    [Theory]
    [InlineData(TubeEnd.A)]
    [InlineData(TubeEnd.B)]
    public void A_tip_that_points_at_the_tool_is_nearest_before_the_pull(TubeEnd held)
    {
        double[] legs = [300, 200, 150, 210, 90];
        (double, double)[] bends = [(0, 90), (0, 90), (0, 90), (0, 90)];
        var made = held == TubeEnd.A ? 0 : 3;
        var swings = Swings(held == TubeEnd.A ? legs : [.. legs.Reverse()], bends);
        var clearance = ToolClearance.Of(swings, new(made, held, default), bend => bend != made, Lines.Mm(Radius));
        var expected = double.Hypot(25 - (Radius * Math.PI / 2), 45);
        foreach (var side in new[] { 1, -1 })
        {
            AssertGeometry.Equal(expected, clearance.Nearest(side, Lines.Mm(500), Lines.Mm(4.75))!.Value.Millimetres, $"side {side}");
        }
    }

    /// <summary>
    /// A leg that comes back to the plane of the bend from one side of it and ends 2 mm short, which is less than half of the tube: its tip
    /// is level with the tool whichever face is down, and leans towards it.
    /// </summary>
    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    public void A_tip_that_ends_just_short_of_the_plane_is_level_with_the_tool(double roll)
    {
        double[] legs = [300, 200, 80, 100, 78];
        (double, double)[] bends = [(0, 90), (roll, 90), (0, 90), (0, 89.5)];
        var clearance = ToolClearance.Of(Swings(legs, bends), new(0, TubeEnd.A, default), bend => bend != 0, Lines.Mm(Radius));

        var finished = Lines.Of(Lines.Bender(Radius), legs, bends).Centreline();
        var expected = FromAxis(finished.EndB - finished.Arcs[0].Centre, finished.Arcs[0].Start.Axis);
        foreach (var side in new[] { 1, -1 })
        {
            AssertGeometry.Equal(expected, clearance.Nearest(side, Lines.Mm(500), Lines.Mm(4.75))!.Value.Millimetres, $"side {side}");
        }
    }

    /// <summary>Legs that stand up from the plane of the bend between them, on one side of it or on both.</summary>
    [Theory]
    [InlineData(90, 90)]
    [InlineData(90, -90)]
    [InlineData(-90, 90)]
    [InlineData(-90, -60)]
    [InlineData(30, 120)]
    public void Tube_reaches_beyond_the_plane_as_far_as_its_ends_stand_up_on_the_finished_tube(double first, double second)
    {
        double[] legs = [200, 120, 120, 260];
        (double, double)[] bends = [(0, 90), (first, 90), (second, 90)];
        var finished = Lines.Of(Lines.Bender(Radius), legs, bends).Centreline();
        var made = finished.Arcs[1];
        foreach (var (held, towards) in new[] { (TubeEnd.A, 1), (TubeEnd.B, -1) })
        {
            var clearance = ToolClearance.Of(Swings(legs, bends), new(1, held, default), other => other != 1, Lines.Mm(Radius));
            foreach (var side in new[] { 1, -1 })
            {
                double Height(Vector3D point) => towards * side * (point - made.Centre).Dot(made.Start.Axis);
                var expected = Math.Max(0, Math.Max(Height(finished.EndA), Height(finished.EndB)));
                Assert.Equal(expected, clearance.Beyond(side).Millimetres, 1e-6);
            }
        }
    }

    /// <summary>As the search has a bend: points 15° apart.</summary>
    private static IEnumerable<Vector3D> OnBend(Arc arc)
    {
        var steps = (int)Math.Ceiling(arc.Turn.Degrees / 15);
        return Enumerable.Range(0, steps + 1).Select(i => arc.PointAt(Lines.Deg(arc.Turn.Degrees * i / steps)));
    }

    private static IEnumerable<Vector3D> Dense(Vector3D[] corners, bool startsAtTool)
    {
        // From A the hook's points run towards the tool, and the leg at its other side ends in the first of them.
        Vector3D[] line = startsAtTool ? corners : [corners[^1], .. corners[..^1]];
        return line.Zip(line.Skip(1)).SelectMany(piece => Enumerable.Range(0, 1001).Select(
            i => piece.First + (i / 1000.0 * (piece.Second - piece.First))));
    }

    private static double FromAxis(Vector3D fromCentre, Vector3D axis) => (fromCentre - (fromCentre.Dot(axis) * axis)).Norm;

    /// <summary>Made, the bend has turned the arm about the former's middle by the pull: as far from it as before, and as high.</summary>
    [Theory]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(135)]
    public void Sweeping_turns_the_arm_about_the_middle_of_the_former(double pull)
    {
        var arm = Swings([200, 150, 200], (0, pull), (40, 60)).ArmOf(0, TubeEnd.B);
        var rolled = Radius * pull * Math.PI / 180;
        foreach (var point in arm.Points())
        {
            var before = new Vector3D(point.X - rolled, point.Y - Radius, 0);
            var swept = arm.Swept(point);
            var after = swept with { Z = 0 };
            AssertGeometry.Equal(point.Z, swept.Z);
            AssertGeometry.Equal(before.Norm, after.Norm);
            AssertGeometry.Equal(Math.Cos(pull * Math.PI / 180), before.Dot(after) / (before.Norm * after.Norm));
            AssertGeometry.Equal(Math.Sin(pull * Math.PI / 180), before.Cross(after).Z / (before.Norm * after.Norm));
        }
    }

    private static SweepReach Swings(double[] legs, params (double, double)[] bends)
    {
        var template = Lines.Of(Lines.Bender(Radius), legs, bends);
        var layout = RouteLayout.Of(template).Layout!;
        return new(layout, StraightTube.Of(template, layout), [.. layout.Bends.Select(bend => bend.Bend.Turn)]);
    }
}
