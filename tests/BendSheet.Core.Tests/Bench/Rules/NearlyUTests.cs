using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class NearlyUTests
{
    [Fact]
    public void A_bend_just_short_of_a_U_moves_far_along_its_legs() => OneFinding.Is(
        Line(178, wireRadius: 4),
        Severity.Warning,
        NearlyU.Rule,
        Lines.TurnAt(0),
        "bend 1 (178°) begins 630.2 mm (24.811 in) further from its corner in tube than in the wire, because a bend so near to 180° has "
        + "its corner far out; "
        + "if it is a U-bend that stays where the wire has it, type `bend: 180`: its legs then come out 22.0 mm (0.866 in) further apart");

    [Fact]
    public void What_it_says_of_the_legs_is_what_a_U_bend_says()
    {
        var nearly = OneFinding.Of(Line(179, wireRadius: 18.25)).Message;
        Assert.EndsWith("its legs then come out 6.5 mm (0.256 in) closer together", nearly, StringComparison.Ordinal);
        Assert.Contains(" nearer to its corner", nearly, StringComparison.Ordinal);
        Assert.Equal(6.5, OneFinding.MmAfter("come out", OneFinding.Of(Line(180, wireRadius: 18.25)).Message));
    }

    [Fact]
    public void The_figure_is_how_far_the_bend_really_moves()
    {
        var wire = Line(176, 4).OnTool(Lines.Bender(4));
        var tube = Line(176, 4);
        var moved = CarPlan.Line(wire).Layout!.Legs[0].StraightLeft - CarPlan.Line(tube).Layout!.Legs[0].StraightLeft;
        AssertGeometry.Equal(Math.Round(moved.Millimetres, 1), OneFinding.MmAfter("begins", OneFinding.Of(tube).Message), "moved");
    }

    [Fact]
    public void Below_175_degrees_it_is_no_U_bend_and_another_wire_is_the_cure() => OneFinding.Is(
        Line(170, wireRadius: 4),
        Severity.Warning,
        NearlyU.Rule,
        Lines.TurnAt(0),
        "bend 1 (170°) begins 125.7 mm (4.950 in) further from its corner in tube than in the wire, because a bend so near to 180° has "
        + "its corner far out; "
        + "if that does not fit, bend the wire round something of the tool's radius, 15.0 mm (0.591 in), and measure it again");

    [Fact]
    public void From_150_degrees_on()
    {
        Assert.Equal(NearlyU.Rule, OneFinding.Of(Line(150, wireRadius: 4)).Rule);
        OneFinding.None(Line(149.9, wireRadius: 4));
    }

    [Fact]
    public void What_a_tape_does_not_show_is_not_said() => OneFinding.None(Line(160, wireRadius: 14.5));

    [Fact]
    public void On_the_wires_own_radius_it_is_silent() => OneFinding.None(Line(178, wireRadius: 15));

    [Fact]
    public void Where_the_legs_are_too_short_for_it_only_they_are_told_and_the_cure_is_the_same()
    {
        var findings = CarPlan.Line(Line(175, wireRadius: 4, leg: 100)).Findings;
        Assert.Equal([LegTooShort.Rule, LegTooShort.Rule], findings.Select(finding => finding.Rule));
        Assert.All(
            findings,
            finding => Assert.EndsWith("far out: if it is a U-bend, type `bend: 180`", finding.Message, StringComparison.Ordinal));
    }

    private static LineTemplate Line(double turn, double wireRadius, double leg = 2000) =>
        Lines.Of(Lines.Bender(15), [leg, leg], (0, turn)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(wireRadius)) };
}
