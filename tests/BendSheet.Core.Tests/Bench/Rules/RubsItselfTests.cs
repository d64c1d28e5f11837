using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>Tube of 4.7625 mm.</summary>
public class RubsItselfTests
{
    [Fact]
    public void Two_straights_that_pass_nearer_than_a_sixteenth_of_an_inch_rub() => OneFinding.Is(
        MeetsItselfTests.Pigtail(rise: 5.5),
        Severity.Warning,
        RubsItself.Rule,
        Lines.StraightAt(4),
        "line front-left: straight 1 and straight 4 pass 0.7 mm (0.029 in) from each other, 50.0 mm (1.969 in) and 297.4 mm (11.710 in) "
        + "along the tube from A, "
        + "and tube that near chafes through; change a leg, a bend or a rotation between them so that 1.6 mm (0.063 in) stay between, or "
        + "clip the two together");

    [Fact]
    public void From_a_sixteenth_of_an_inch_on_they_are_silent()
    {
        Assert.Same(RubsItself.Rule, OneFinding.Of(MeetsItselfTests.Pigtail(rise: 4.7625 + 1.58)).Rule);
        OneFinding.None(MeetsItselfTests.Pigtail(rise: 4.7625 + 1.59));
    }

    [Fact]
    public void A_close_wound_coil_touches_itself()
    {
        var finding = OneFinding.Of(MeetsItselfTests.CoiledLine(pitch: 4.7625));
        Assert.Same(RubsItself.Rule, finding.Rule);
        Assert.Equal(Severity.Warning, finding.Severity);
        // The straight behind it lies along the turn before.
        Assert.Equal(Lines.StraightAt(1), finding.Position);
        Assert.Contains(" touch, ", finding.Message, StringComparison.Ordinal);
        Assert.Contains("give the coil a larger pitch", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(7.7625)]
    [InlineData(40)]
    public void A_coil_with_air_between_its_turns_is_silent(double pitch) => OneFinding.None(MeetsItselfTests.CoiledLine(pitch));
}
