using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class NoOrderTests
{
    private static Fitting An3 { get; } = new(
        "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));

    [Fact]
    public void Just_enough_to_hold_is_silent() =>
        OneFinding.None(Lines.Of(Tool(22.3, 22.3), [32.3, 100], (0, 90)));

    [Fact]
    public void What_is_trimmed_off_after_the_bends_is_still_there_for_the_tool()
    {
        var line = Lines.Of(Tool(15, 15), [100, 15], (0, 90));
        OneFinding.None(line with { To = line.To with { Trim = Lines.Mm(25) } });
        Assert.Same(NoOrder.Rule, OneFinding.Of(line).Rule);
    }

    [Fact]
    public void A_bend_too_near_to_end_A_says_how_far_to_move_it() => OneFinding.Is(
        Lines.Of(Tool(12, 11), [20, 100], (0, 90)),
        Severity.Error,
        NoOrder.Rule,
        Lines.StraightAt(0),
        "bend 1 has 10.0 mm (0.394 in) of straight tube towards end A and bender hand needs at least 11.0 mm (0.434 in) there for its "
        + "grip, follow or mark, from whichever side it is held: "
        + "move the bend 1.0 mm (0.040 in) further from the end, or use a tool that needs less");

    [Fact]
    public void At_end_B_there_is_also_the_trim() => OneFinding.Is(
        Lines.Of(Tool(12, 15), [100, 50, 21], (0, 90), (90, 90)),
        Severity.Error,
        NoOrder.Rule,
        Lines.StraightAt(2),
        "bend 2 has 11.0 mm (0.433 in) of straight tube towards end B and bender hand needs at least 12.0 mm (0.473 in) there for its "
        + "grip, follow or mark, from whichever side it is held: "
        + "move the bend 1.0 mm (0.040 in) further from the end, leave `trim` on end B to be cut off later, or use a tool that needs less");

    [Fact]
    public void Between_two_bends_whichever_is_made_second_needs_its_room() => OneFinding.Is(
        Lines.Of(Tool(12, 11), [100, 30, 100], (0, 90), (90, 90)),
        Severity.Error,
        NoOrder.Rule,
        Lines.StraightAt(1),
        "bends 1 and 2 have 10.0 mm (0.394 in) of straight tube between them, and whichever is made second needs at least 11.0 mm (0.434 "
        + "in) there for the tool's grip, follow or mark: "
        + "move them 1.0 mm (0.040 in) further apart, or use a tool that needs less");

    [Fact]
    public void Every_straight_that_is_too_short_is_said() => Assert.Equal(
        [Lines.StraightAt(0), Lines.StraightAt(1), Lines.StraightAt(2), Lines.StraightAt(3)],
        CarPlan.Line(Lines.Of(Tool(12, 11), [20, 30, 30, 20], (0, 90), (90, 90), (90, 90))).Findings.Select(finding => finding.Position));

    [Fact]
    public void A_bend_with_room_for_the_swept_side_on_both_sides_but_nowhere_to_hold_is_named() => OneFinding.Is(
        Lines.Of(Tool(30, 10), [35, 35], (0, 90)),
        Severity.Error,
        NoOrder.Rule,
        Lines.TurnAt(0),
        "bend 1 finds no room in any order: it has 25.0 mm (0.984 in) of straight tube towards A and "
        + "25.0 mm (0.984 in) towards B, "
        + "and bender hand needs 30.0 mm (1.182 in) on the side that is held and 10.0 mm (0.394 in) on the side that is swept, for its "
        + "grip or follow and up to its mark: move the bends apart, look at the tool's `offset`, or use one that needs less");

    [Fact]
    public void Bends_still_to_be_made_are_straight_when_an_earlier_bend_is_made()
    {
        // Behind bend 1 lie 10 and 12 of straight and 15.7 of arc not yet bent, 37.7 in all, so that it can be made first.
        OneFinding.None(Lines.Of(Tool(0, 37), [100, 30, 22], (0, 90), (90, 90)).OnTool(Lines.Bender(10)).FirstBendOn(Tool(0, 37)));
        Assert.NotEmpty(CarPlan.Line(Lines.Of(Lines.Bender(10), [100, 30, 22], (0, 90), (90, 90)).FirstBendOn(Tool(38, 38))).Findings);
    }

    [Fact]
    public void Hardware_on_a_flared_end_takes_room_from_the_tool()
    {
        // 34 of straight: too short for the flaring bar (35), so that A must be flared first; the nut and sleeve (26) then leave 8.
        var line = Lines.Of(Tool(8, 8), [44, 200], (0, 90));
        OneFinding.None(line with { From = line.From with { Fitting = An3 } });
        var tight = Lines.Of(Tool(9, 9), [44, 200], (0, 90));
        OneFinding.Is(
            tight with { From = tight.From with { Fitting = An3 } },
            Severity.Error,
            NoOrder.Rule,
            Lines.StraightAt(0),
            "end A cannot be flared. After bending, fitting an3 needs 35.0 mm (1.378 in) of straight tube and 34.0 mm (1.339 in) is left. "
            + "Before bending, its hardware covers 26.0 mm (1.024 in) and leaves 8.0 mm (0.315 in), too little for the tool at bend 1. "
            + "Move the bend further from the end, or use a tool that needs less");
    }

    [Fact]
    public void A_mark_off_the_tube_or_on_a_bend_that_is_made_is_no_place_to_hold()
    {
        // The mark lies 25.5 from the bend on the held side: more than the straight of 20 towards A, but not more than the 90 towards B.
        var tool = Lines.Bender(10) with { Offset = Lines.Mm(-25.5) };
        Assert.Equal(TubeEnd.B, Lines.Of(tool, [30, 100], (0, 90)).Plan().Bends[0].Held);
        OneFinding.Is(
            Lines.Of(tool, [30, 30], (0, 90)),
            Severity.Error,
            NoOrder.Rule,
            Lines.TurnAt(0),
            "bend 1 finds no room in any order: it has 20.0 mm (0.787 in) of straight tube towards A "
            + "and 20.0 mm (0.787 in) towards B, "
            + "and bender hand needs 25.5 mm (1.004 in) on the side that is held and 0.0 mm (0.000 in) on the side that is swept, for "
            + "its grip or follow and up to its mark: move the bends apart, look at the tool's `offset`, or use one that needs less");
    }

    [Fact]
    public void Figures_are_given_all_the_same_bent_from_A_to_B()
    {
        var plan = CarPlan.Line(Lines.Of(Tool(12, 12), [20, 100], (0, 90))).Plan!;
        Assert.Equal([TubeEnd.A], plan.Order.Steps.Select(step => step.Held));
    }

    [Fact]
    public void A_leg_too_short_for_its_bends_is_not_spoken_of_twice() => Assert.Same(
        LegTooShort.Rule, OneFinding.Of(Lines.Of(Tool(12, 12), [9, 100], (0, 90))).Rule);

    private static Bender Tool(double grip, double follow) => Lines.Bender(10) with { Grip = Lines.Mm(grip), Follow = Lines.Mm(follow) };
}
