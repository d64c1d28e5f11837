using BendSheet.Core.Fittings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

public class FlareStepTests
{
    private static LengthNotation Inches { get; } = FullLine.Metric.Other;

    [Fact]
    public void A_single_flare_is_made_by_the_tools_own_stop_and_measured() => Assert.Equal(
        "make the 37° single flare (uses up 0.5 mm) by the tool's own stop; practise until it is 7.42 "
            + "to 7.67 mm across (MS33584, from "
            + "memory: check your fitting's standard)",
        Step(FullLine.An3, FullLine.Metric));

    /// <summary>The slant is 0.0951 in, 2.42 mm; 1.2 mm of it is gripped no longer in the countersink.</summary>
    [Fact]
    public void With_the_bars_countersink_it_says_how_far_the_tube_stands_out() => Assert.Equal(
        "make the 37° single flare (uses up 0.5 mm), 1.2 mm of tube standing out of the bar; practise until "
            + "it is 7.42 to 7.67 mm across "
            + "(MS33584, from memory: check your fitting's standard)",
        Step(FullLine.An3 with { Countersink = Lines.Mm(1.2) }, FullLine.Metric));

    [Fact]
    public void A_file_in_inches_has_it_in_thousandths() => Assert.Equal(
        "make the 37° single flare (uses up 0.02 in), 0.045 in of tube standing out of the bar; practise "
            + "until it is 0.292 to 0.302 in "
            + "across (MS33584, from memory: check your fitting's standard)",
        Step(FullLine.An3 with { FlareAllowance = Length.FromInches(0.02), Countersink = Length.FromInches(0.05) }, Inches));

    /// <summary>6.7 and 7.1 mm are 0.2638 and 0.2795 in.</summary>
    [Fact]
    public void Limits_are_rounded_inwards() => Assert.Equal(
        "make the 45° double flare (uses up 2 mm) by the tool's gauge, on a practice piece first: 0.264 to 0.279 in across (SAE J533, "
            + "second-hand: check your fitting's standard)",
        Step(FullLine.Inverted, Inches));

    [Fact]
    public void What_geometry_takes_is_said_where_the_file_does_not_say_it() => Assert.EndsWith(
        "standard). By geometry it uses up 0.5 mm: measure yours, and put that in the file",
        Step(FullLine.An3 with { FlareAllowance = Length.Zero }, FullLine.Metric),
        StringComparison.Ordinal);

    [Fact]
    public void A_folded_flare_is_measured() => Assert.Equal(
        "make the bubble flare by the tool's gauge, on a practice piece first. Measure on it how much tube the flare uses up, and put "
            + "that in the file",
        Step(FullLine.Inverted with { Flare = Flare.Bubble, FlareAllowance = Length.Zero }, FullLine.Metric));

    [Fact]
    public void On_tube_of_a_size_that_nobody_publishes_there_is_nothing_to_add() => Assert.Equal(
        "make the 37° single flare (uses up 0.5 mm) by the tool's own stop, on a practice piece first",
        FlareStep.Of(FullLine.An3, FullLine.Template.Tube with { OutsideDiameter = Lines.Mm(6) }, FullLine.Metric, alikeAt: null));

    [Fact]
    public void The_second_of_two_alike_points_to_the_first()
    {
        var template = FullLine.Template;
        var order = FullLine.Content(template with { To = template.To with { Fitting = FullLine.An3 } }).Order;
        Assert.Single(order, step => step.Contains("MS33584", StringComparison.Ordinal));
        Assert.Single(order, step => step.StartsWith("End B:", StringComparison.Ordinal)
            && step.EndsWith("make the 37° single flare as at A.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Flare.Single37)]
    [InlineData(Flare.Single45)]
    [InlineData(Flare.Double45)]
    [InlineData(Flare.Bubble)]
    public void No_step_has_more_than_two_sentences(Flare flare)
    {
        foreach (var takes in new[] { 0, 0.5 })
        {
            var step = Step(FullLine.An3 with { Flare = flare, FlareAllowance = Lines.Mm(takes) }, FullLine.Metric);
            Assert.InRange(step.Split(". ").Length, 1, 2);
        }
    }

    private static string Step(Fitting fitting, LengthNotation notation) =>
        FlareStep.Of(fitting, FullLine.Template.Tube, notation, alikeAt: null);
}
