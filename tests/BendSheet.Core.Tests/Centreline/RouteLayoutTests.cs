using BendSheet.Core.Bench;
using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Tests.Bench.Limits;
using CsCheck;

namespace BendSheet.Core.Tests.Centreline;

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
        var solved = SolvedLine.Of(Lines.Of(Lines.Bender(10), [100, 100], (0, 180)));
        Assert.Equal(RuleSubject.File, RouteLayout.NoCorner.Subject);
        Assert.Null(solved.Layout);
        Assert.Null(solved.Plan);
    }

    [Fact]
    public void Measured_straight_as_the_finding_says_it_is_silent() => OneFinding.None(
        Lines.Of(Lines.Bender(10), [100, 100], (0, 180)) with { Habit = MeasuringHabit.Straight, Wire = new(null, Lines.Mm(10)) });

    [Fact]
    public void Just_below_half_a_turn_there_is_a_corner_far_away() =>
        Assert.Equal("leg-too-short", Assert.Single(SolvedLine.Of(Lines.Of(Lines.Bender(10), [100, 1e7], (0, 179.99))).Findings).Rule.Name);

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
