using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Rules;
using BendSheet.Core.Tests.Geometry;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Templates;

public class RouteLayoutTests
{
    [Theory]
    [InlineData(180, "180°")]
    [InlineData(270.5, "270.5°")]
    [InlineData(360, "360°")]
    public void From_half_a_turn_on_there_is_no_corner_to_measure_to(double turn, string text) => OneFinding.Is(
        Lines.Of(Lines.Bender(10), [100, 100, 100], (0, 45), (90, turn)),
        Severity.Error,
        RouteLayout.NoCorner,
        Lines.TurnAt(1),
        $"a bend of {text} has no corner to measure to: measure the flat parts beside it and say `measured: straight` for this line");

    [Fact]
    public void It_is_a_fault_of_the_file_and_nothing_can_be_laid_out()
    {
        var solved = CarPlan.Line(Lines.Of(Lines.Bender(10), [100, 100], (0, 180)));
        Assert.Equal(RuleSubject.File, RouteLayout.NoCorner.Subject);
        Assert.Null(solved.Layout);
        Assert.Null(solved.Plan);
    }

    [Fact]
    public void Measured_straight_as_the_finding_says_it_is_silent() => OneFinding.None(
        Lines.Of(Lines.Bender(10), [100, 100], (0, 180)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(10)) });

    /// <summary>
    /// The setback factor of 45° is 0.41421 (FAA AC 43.13-1B, Table 4-7): the corner lies r·K beyond the wire's flat part, and R·K before
    /// it the tube's bend begins.
    /// </summary>
    [Theory]
    [InlineData(4, 14.2875, 140 + ((4 - 14.2875) * 0.41421))]
    [InlineData(20, 14.2875, 140 + ((20 - 14.2875) * 0.41421))]
    [InlineData(14.2875, 14.2875, 140)]
    public void A_corner_beside_a_U_bend_stays_where_the_wire_has_it(double wire, double tool, double expected)
    {
        var template = Lines.Of(Lines.Bender(tool), [300, 140, 120], (0, 180), (90, 45)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(wire))
        };
        var legs = RouteLayout.Of(template).Layout!.Legs;
        Assert.Equal(expected, legs[1].StraightLeft.Millimetres, 1e-4);
        AssertGeometry.Equal(300, legs[0].StraightLeft.Millimetres, "at a free end nothing moves");
        Assert.Equal([false, false, true], legs.Select(leg => leg.HasCorners));
    }

    [Fact]
    public void A_bend_too_near_to_a_U_bend_is_said()
    {
        var template = Lines.Of(Lines.Bender(15), [100, 3, 100], (0, 180), (90, 90)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(4))
        };
        var error = Assert.Single(CarPlan.Line(template).Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(Lines.StraightAt(1), error.Position);
        Assert.Equal(
            "leg 2 is 8.0 mm (0.315 in) too short for its two bends (180° and 90°): they need 15.0 mm (0.591 in) and the leg is 7.0 mm "
                + "(0.276 in) from the U-bend to the other corner; the largest radius that would fit is 7.0 mm (0.275 in); measure "
                + "again, use a smaller bend or move the corners apart",
            error.Message);
    }

    [Fact]
    public void Just_below_half_a_turn_there_is_a_corner_far_away() =>
        Assert.Equal("leg-too-short", Assert.Single(CarPlan.Line(Lines.Of(Lines.Bender(10), [100, 1e7], (0, 179.99))).Findings).Rule.Name);

    [Fact]
    public void A_leg_is_what_stays_straight_and_the_setbacks_at_its_ends() => Shape.Roomy.Sample(
        shape =>
        {
            var layout = RouteLayout.Of(shape.Template()).Layout!;
            for (var i = 0; i < shape.Straights.Length; i++)
            {
                AssertGeometry.Equal(shape.Straights[i], layout.Legs[i].StraightLeft.Millimetres, "straight");
                AssertGeometry.Equal(shape.Legs[i], layout.Legs[i].CornerToCorner!.Value.Millimetres, "leg");
                Assert.Equal(Lines.StraightAt(i), layout.Legs[i].At);
            }

            for (var i = 0; i < shape.Turns.Length; i++)
            {
                var bend = layout.Bends[i];
                AssertGeometry.Equal(shape.Setback(i), bend.Setback!.Value.Millimetres, "setback");
                AssertGeometry.Equal((2 * shape.Setback(i)) - bend.Arc.Millimetres, bend.Gain!.Value.Millimetres, "gain");
            }
        },
        iter: 500);
}
