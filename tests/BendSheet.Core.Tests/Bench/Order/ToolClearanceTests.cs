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
