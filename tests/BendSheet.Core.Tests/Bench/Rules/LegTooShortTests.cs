using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Bench.Rules;

public class LegTooShortTests
{
    [Fact]
    public void A_flat_part_of_nothing_on_the_wires_own_radius_fits() => OneFinding.None(
        Lines.Of(Lines.Bender(6), [50, 0, 50], (0, 15), (90, 90)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(6)) });

    [Fact]
    public void A_leg_between_two_bends_needs_both_setbacks() => OneFinding.Is(
        Lines.Of(Lines.Bender(Lines.NineSixteenths), [120, 20, 100], (0, 90), (180, 90)),
        Severity.Error,
        LegTooShort.Rule,
        Lines.StraightAt(1),
        "leg 2 is 8.6 mm (0.338 in) too short for its two bends (90° and 90°): they need 28.6 mm (1.125 in) and the leg is 20.0 mm "
        + "(0.787 in) corner to corner; "
        + "the largest radius that would fit is 10.0 mm (0.393 in); measure again, use a smaller bend or move the corners apart");

    [Fact]
    public void The_first_leg_needs_the_setback_of_its_one_bend() => OneFinding.Is(
        Lines.Of(Lines.Bender(Lines.NineSixteenths), [10, 100], (0, 90)),
        Severity.Error,
        LegTooShort.Rule,
        Lines.StraightAt(0),
        "leg 1 is 4.3 mm (0.169 in) too short for its bend (90°): it needs 14.3 mm (0.563 in) and the leg is 10.0 mm (0.394 in) corner "
        + "to corner; "
        + "the largest radius that would fit is 10.0 mm (0.393 in); measure again, use a smaller bend or move the corners apart");

    [Fact]
    public void So_does_the_last_leg() =>
        Assert.Equal(Lines.StraightAt(1), OneFinding.Of(Lines.Of(Lines.Bender(20), [100, 10], (0, 90))).Position);

    [Fact]
    public void A_leg_of_nothing_fits_no_radius() => OneFinding.Is(
        Lines.Of(Lines.Bender(10), [100, 0, 100], (0, 90), (180, 90)),
        Severity.Error,
        LegTooShort.Rule,
        Lines.StraightAt(1),
        "leg 2 is 20.0 mm (0.788 in) too short for its two bends (90° and 90°): they need 20.0 mm (0.788 in) and the leg is 0.0 mm "
        + "(0.000 in) corner to corner; "
        + "no radius would fit; measure again");

    [Fact]
    public void Each_leg_that_is_too_short_is_one_finding_and_there_is_no_plan()
    {
        var solved = CarPlan.Line(Lines.Of(Lines.Bender(20), [10, 200, 10], (0, 90), (180, 90)));
        Assert.Equal([Lines.StraightAt(0), Lines.StraightAt(2)], solved.Findings.Select(finding => finding.Position));
        Assert.NotNull(solved.Layout);
        Assert.Null(solved.Centreline);
        Assert.Null(solved.Plan);
    }

    [Fact]
    public void A_leg_that_just_fits_is_silent() =>
        OneFinding.None(Lines.Of(Lines.Bender(10), [10, 20, 10], (0, 90), (180, 90)));

    [Fact]
    public void Beside_a_U_bend_a_flat_part_of_nothing_is_long_enough() => OneFinding.None(
        Lines.Of(Lines.Bender(10), [0, 0, 0], (0, 180), (180, 180)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(10)) });

    [Fact]
    public void A_straight_tube_has_no_bend_to_be_too_short_for() => OneFinding.None(Lines.Of(Lines.Bender(10), [0]));

    [Fact]
    public void The_largest_radius_that_would_fit_fits_and_so_does_the_leg_longer_by_what_is_missing() =>
        Gen.Select(Gen.Double[30, 40], Gen.Double[30, 60], Gen.Double[70, 140], Gen.Double[70, 140]).Sample(
            (leg, radius, first, second) =>
            {
                var template = Lines.Of(Lines.Bender(radius), [500, leg, 500], (0, first), (90, second)) with
                {
                    Tube = Lines.Tube with { SmallestRadius = Lines.Mm(0.1) },
                };
                var message = OneFinding.Of(template).Message;
                var largest = OneFinding.MmAfter("the largest radius that would fit is", message);
                Assert.True(largest < radius);
                OneFinding.None(template.OnTool(Lines.Bender(largest)));
                var longer = leg + OneFinding.MmAfter("leg 2 is", message);
                OneFinding.None(Lines.Of(Lines.Bender(radius), [500, longer, 500], (0, first), (90, second)));
            },
            iter: 1000);

    /// <summary>30° needs 14.3 + 3.8 = 18.1 mm of the 40; 150° needs 14.3 + 53.3.</summary>
    [Fact]
    public void The_angle_between_the_legs_typed_as_bend_is_recognized() => OneFinding.Is(
        Lines.Of(Lines.Bender(Lines.NineSixteenths), [120, 40, 100], (0, 90), (180, 150)),
        Severity.Error,
        LegTooShort.Rule,
        Lines.StraightAt(1),
        "leg 2 is 27.7 mm (1.087 in) too short for its two bends (90° and 150°): they need 67.7 mm (2.662 in) and the leg is 40.0 mm "
            + "(1.575 in) corner to corner; a bend of 30° would fit: if 150° is the angle between the legs, type `included: 150`; "
            + "otherwise the largest radius that would fit is 8.4 mm (0.332 in); measure again, use a smaller bend or move the corners "
            + "apart");

    [Fact]
    public void Where_the_other_angle_would_not_fit_either_nothing_is_said_of_it() => Assert.DoesNotContain(
        "included", OneFinding.Of(Lines.Of(Lines.Bender(20), [120, 22, 100], (0, 90), (180, 150))).Message, StringComparison.Ordinal);
}
