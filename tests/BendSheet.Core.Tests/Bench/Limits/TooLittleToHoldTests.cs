using BendSheet.Core.Bench;
using BendSheet.Core.Bench.Limits;
using BendSheet.Core.Findings;

namespace BendSheet.Core.Tests.Bench.Limits;

public class TooLittleToHoldTests
{
    [Fact]
    public void Just_enough_to_hold_is_silent() =>
        OneFinding.None(Lines.Of(Lines.Bender(10) with { Grip = Lines.Mm(22.3) }, [32.3, 100], (0, 90)));

    [Fact]
    public void What_is_trimmed_off_after_the_bends_is_still_there_to_be_swept()
    {
        var line = Lines.Of(Lines.Bender(10) with { Follow = Lines.Mm(15) }, [100, 15], (0, 90));
        OneFinding.None(line with { To = line.To with { Trim = Lines.Mm(25) } });
    }

    [Fact]
    public void The_held_side_is_the_straight_before_the_bend() => OneFinding.Is(
        Lines.Of(Lines.Bender(10) with { Grip = Lines.Mm(12) }, [100, 30, 100], (0, 90), (90, 90)),
        Severity.Warning,
        TooLittleToHold.Rule,
        Lines.TurnAt(1),
        "bend 2 has 10.0 mm (0.394 in) of straight tube on its held side and bender hand needs 12.0 mm (0.472 in) when the line is bent from A to B: "
        + "try the bend on scrap first, or move the bends apart");

    [Fact]
    public void The_swept_side_is_all_the_tube_up_to_end_B() => OneFinding.Is(
        Lines.Of(Lines.Bender(10) with { Follow = Lines.Mm(15) }, [100, 30, 22], (0, 90), (90, 90)),
        Severity.Warning,
        TooLittleToHold.Rule,
        Lines.TurnAt(1),
        "bend 2 has 12.0 mm (0.472 in) of straight tube on its swept side and bender hand needs 15.0 mm (0.591 in) when the line is bent from A to B: "
        + "try the bend on scrap first, or move the bends apart");

    [Fact]
    public void Bends_still_to_be_made_are_straight_when_an_earlier_bend_is_swept()
    {
        // Behind bend 1 lie 10 and 12 of straight and 15.7 of arc not yet bent: 37.7 in all.
        OneFinding.None(Lines.Of(Lines.Bender(10) with { Follow = Lines.Mm(12) }, [100, 30, 22], (0, 90), (90, 90)));
        var both = SolvedLine.Of(Lines.Of(Lines.Bender(10) with { Follow = Lines.Mm(38) }, [100, 30, 22], (0, 90), (90, 90))).Findings;
        Assert.Equal([Lines.TurnAt(0), Lines.TurnAt(1)], both.Select(finding => finding.Position));
        Assert.Equal(37.7, OneFinding.MmAfter("bend 1 has", both[0].Message));
    }

    [Fact]
    public void Bends_moved_apart_are_silent() => OneFinding.None(
        Lines.Of(Lines.Bender(10) with { Grip = Lines.Mm(12), Follow = Lines.Mm(15) }, [100, 32.5, 25.5], (0, 90), (90, 90)));

    [Fact]
    public void A_warning_does_not_stop_the_plan() =>
        Assert.NotNull(SolvedLine.Of(Lines.Of(Lines.Bender(10) with { Grip = Lines.Mm(12) }, [20, 100], (0, 90))).Plan);

    [Fact]
    public void A_leg_too_short_for_its_bends_is_not_spoken_of_twice() => Assert.Same(
        LegTooShort.Rule, OneFinding.Of(Lines.Of(Lines.Bender(10) with { Grip = Lines.Mm(12) }, [9, 100], (0, 90))).Rule);
}
