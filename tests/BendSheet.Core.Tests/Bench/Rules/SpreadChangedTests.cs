using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class SpreadChangedTests
{
    [Fact]
    public void A_full_turn_does_not_spread_its_legs() =>
        Assert.DoesNotContain(CarPlan.Line(Line(360, wireRadius: 4)).Findings, finding => finding.Rule == SpreadChanged.Rule);

    [Fact]
    public void Three_quarters_of_a_turn_spread_by_the_chord() => OneFinding.Is(
        Line(270, wireRadius: 4, leg: 8),
        Severity.Warning,
        SpreadChanged.Rule,
        Lines.TurnAt(0),
        "the legs beside bend 1 (270°) come out 15.6 mm (0.612 in) further apart in tube than in the wire, because the tool's radius is "
        + "not the wire's: "
        + "check that they still fit");

    [Fact]
    public void On_a_larger_radius_the_legs_come_out_further_apart() => OneFinding.Is(
        Line(180, wireRadius: 4),
        Severity.Warning,
        SpreadChanged.Rule,
        Lines.TurnAt(0),
        "the legs beside bend 1 (180°) come out 22.0 mm (0.866 in) further apart in tube than in the wire, because the tool's radius is "
        + "not the wire's: "
        + "check that they still fit");

    [Fact]
    public void On_a_smaller_radius_they_come_out_closer_together() => OneFinding.Is(
        Line(180, wireRadius: 18.25),
        Severity.Warning,
        SpreadChanged.Rule,
        Lines.TurnAt(0),
        "the legs beside bend 1 (180°) come out 6.5 mm (0.256 in) closer together in tube than in the wire, because the tool's radius is "
        + "not the wire's: "
        + "check that they still fit");

    [Fact]
    public void The_figure_is_how_far_the_legs_really_move()
    {
        var onWire = Line(180, 4).OnTool(Lines.Bender(4)).Centreline();
        var onTube = Line(180, 4).Centreline();
        AssertGeometry.Equal(22, onTube.EndB.Y - onWire.EndB.Y);
        Assert.Equal(22.0, OneFinding.MmAfter("come out", OneFinding.Of(Line(180, 4)).Message));
    }

    [Fact]
    public void On_the_wires_own_radius_a_U_is_silent() => OneFinding.None(Line(180, wireRadius: 15));

    [Fact]
    public void A_bend_with_a_corner_moves_its_tangent_points_not_its_legs() => OneFinding.None(Line(120, wireRadius: 4));

    private static LineTemplate Line(double turn, double wireRadius, double leg = 100) =>
        Lines.Of(Lines.Bender(15), [leg, leg], (0, turn)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(wireRadius)) };
}
