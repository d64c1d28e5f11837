using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>Tube of 4.7625 mm.</summary>
public class MeetsItselfTests
{
    [Fact]
    public void A_pigtail_that_passes_by_less_than_the_tube_is_thick_cannot_be_made() => OneFinding.Is(
        Pigtail(rise: 3),
        Severity.Error,
        MeetsItself.Rule,
        Lines.StraightAt(4),
        // Up to the last crossing 310.1 over the corners, less three gains of 20 − 5π.
        "line front-left runs into itself: straight 1 and straight 4 come 1.8 mm (0.070 in) nearer than the tube is thick, "
        + "50.0 mm (1.969 in) and 297.2 mm (11.701 in) along the tube from A; change a leg, a bend or a rotation between them so that "
        + "they pass 3.4 mm (0.132 in) further apart");

    [Fact]
    public void A_flat_loop_passes_through_itself()
    {
        var finding = OneFinding.Of(Flat(360));
        Assert.Same(MeetsItself.Rule, finding.Rule);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal(4.8, OneFinding.MmAfter("come", finding.Message));
        Assert.Contains("make the large bend between them a `coil` with a pitch", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(179)]
    [InlineData(10)]
    public void A_U_bend_and_smaller_bends_are_silent(double turn) => OneFinding.None(Flat(turn));

    [Fact]
    public void Legs_that_come_together_behind_more_than_a_U_meet()
    {
        var finding = OneFinding.Of(Flat(200));
        Assert.Same(MeetsItself.Rule, finding.Rule);
        Assert.Contains("straight 1 and straight 2", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Turns_of_a_coil_that_lie_in_each_other_need_a_larger_pitch()
    {
        var finding = OneFinding.Of(CoiledLine(pitch: 4));
        Assert.Same(MeetsItself.Rule, finding.Rule);
        Assert.Contains("give the coil a larger pitch", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_radius_that_no_tube_can_follow_is_one_finding() =>
        Assert.Same(
            BendTooTight.Rule,
            OneFinding.Of(
                Lines.Of(Lines.Bender(2), [20, 20], (0, 360)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(2)) }).Rule);

    /// <summary>Three square corners: the last straight passes over the first at (50, 0), so much higher.</summary>
    internal static LineTemplate Pigtail(double rise)
    {
        Vector3D[] corners = [new(0, 0, 0), new(100, 0, 0), new(100, 80, 0), new(50, 80, rise), new(50, -60, rise)];
        var bender = Lines.Bender(10);
        var (line, findings) = CornerRoute.Read(
            [.. corners.Select((corner, i) => new CornerPoint(corner, Lines.StraightAt(i)))], bender);
        Assert.Empty(findings);
        return Lines.Of(bender, [10]) with { Route = line!.Route };
    }

    internal static LineTemplate CoiledLine(double pitch)
    {
        var coil = new Coil(3, Lines.Mm(25), Lines.Mm(pitch), RightHanded: true);
        var former = new Bender("former", coil.CurveRadius, Lines.RadiusAt);
        var rows = coil.Rows(new(Lines.Mm(10), Lines.StraightAt(0), null), Lines.Deg(0), former, Lines.TurnAt(0), null);
        return Lines.OfRows(Lines.Bender(10), [.. rows, new(Lines.Mm(10), Lines.StraightAt(1), null)]);
    }

    private static LineTemplate Flat(double turn) =>
        Lines.Of(Lines.Bender(14), [100, 100], (0, turn)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(14)) };
}
