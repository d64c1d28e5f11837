using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class BendBeyondToolTests
{
    private static Bender UpTo90 { get; } = Lines.Bender(10) with { LargestBend = Lines.Deg(90) };

    [Fact]
    public void A_bend_larger_than_the_tool_makes_is_an_error_at_the_bend() => OneFinding.Is(
        Lines.Of(UpTo90, [100, 100, 100], (0, 45), (90, 90.5)),
        Severity.Error,
        BendBeyondTool.Rule,
        Lines.TurnAt(1),
        "bend 2 is 90.5° and bender hand makes at most 90°: use another tool, or make it as two bends with a straight between them");

    [Fact]
    public void A_bend_whose_pull_alone_is_larger_than_the_tool_makes_is_a_warning() => OneFinding.Is(
        Lines.Of(UpTo90 with { Tests = [TestBends.Pulled(93, 90)] }, [100, 100, 100], (0, 45), (90, 90)),
        Severity.Warning,
        BendBeyondTool.Rule,
        Lines.TurnAt(1),
        "bend 2 is 90° and has to be pulled to 93°, and bender hand makes at most 90°: it comes back too far open; use another tool, or "
            + "make it as two bends with a straight between them");

    [Fact]
    public void A_bend_that_is_too_large_itself_is_the_error_and_no_warning_besides() => Assert.Equal(
        Severity.Error, OneFinding.Of(Lines.Of(UpTo90 with { Tests = [TestBends.Pulled(93, 90)] }, [100, 100], (0, 91))).Severity);

    [Fact]
    public void A_pull_that_the_tool_just_makes_is_silent() =>
        OneFinding.None(Lines.Of(UpTo90 with { Tests = [TestBends.Pulled(90, 87)] }, [100, 100], (0, 87)));

    [Fact]
    public void Two_bends_with_a_straight_between_them_are_silent() =>
        OneFinding.None(Lines.Of(UpTo90, [100, 100, 100], (0, 45), (0, 45.5)));

    [Fact]
    public void The_largest_bend_itself_is_silent() => OneFinding.None(Lines.Of(UpTo90, [100, 100], (0, 90)));

    [Fact]
    public void Another_tool_is_silent() => OneFinding.None(Lines.Of(Lines.Bender(10), [100, 100], (0, 120)));

    [Theory]
    [InlineData(180, 180, true)]
    [InlineData(180, 179, false)]
    [InlineData(360, 180, false)]
    [InlineData(360, 360, true)]
    public void U_bends_and_full_turns_are_held_to_it_too(double turn, double largest, bool silent)
    {
        var template = Lines.Of(Lines.Bender(10) with { LargestBend = Lines.Deg(largest) }, [100, 100], (0, turn)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(10)),
        };
        Assert.Equal(silent ? 0 : 1, CarPlan.Line(template).Findings.Count(finding => finding.Rule == BendBeyondTool.Rule));
    }
}
