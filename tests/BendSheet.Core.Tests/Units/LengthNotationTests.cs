using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Units;

public class LengthNotationTests
{
    private static LengthNotation Metric { get; } = new(Imperial: false, FractionsOf: 32);

    [Theory]
    [InlineData(0, "0.0")]
    [InlineData(114.5819, "114.5")]
    [InlineData(114.75, "115.0")] // a tie goes away from zero
    [InlineData(114.25, "114.5")]
    [InlineData(114.2499, "114.0")]
    [InlineData(114.24999999999, "114.5")] // a tie but for what doubles lose
    [InlineData(-3.3, "-3.5")]
    [InlineData(-114.25, "-114.5")]
    [InlineData(12345.6, "12345.5")]
    public void Millimetres_are_shown_to_a_half(double millimetres, string text) =>
        Assert.Equal(text, Metric.Figure(Length.FromMillimetres(millimetres)));

    [Theory]
    [InlineData(0, 32, "0")]
    [InlineData(4, 32, "4")] // whole
    [InlineData(4.5, 32, "4 1/2")] // in lowest terms
    [InlineData(0.1875, 32, "3/16")] // below an inch
    [InlineData(0.03125, 32, "1/32")]
    [InlineData(0.03125, 16, "1/16−")] // half a step: rounded up, so the exact value lies below
    [InlineData(1.0078125, 32, "1")] // just a quarter step above: no sign
    [InlineData(1.0079, 32, "1+")] // more than a quarter step above
    [InlineData(0.9921875, 32, "1")] // just a quarter step below
    [InlineData(0.9921, 32, "1−")] // more than a quarter step below
    [InlineData(1.015624, 32, "1+")] // a hair less than half a step above
    [InlineData(1.015625, 32, "1 1/32−")] // half a step: goes away from zero
    [InlineData(0.999, 2, "1")] // carries into the whole inch
    [InlineData(0.7, 2, "1/2+")] // 1.4 steps
    [InlineData(12.3125, 128, "12 5/16")]
    [InlineData(-4.5, 32, "-4 1/2")]
    [InlineData(-4.51, 32, "-4 1/2−")] // further below zero than the fraction
    [InlineData(-0.01, 32, "0−")]
    public void Inches_are_shown_as_fractions_with_a_sign_where_they_are_not_near(double inches, int fractions, string text) =>
        Assert.Equal(text, new LengthNotation(true, fractions).Figure(Length.FromInches(inches)));

    [Theory]
    [InlineData(true, 3.0 / 16, "3/16 in")]
    [InlineData(true, 0.028, "0.028 in")]
    [InlineData(true, 0.5625, "9/16 in")]
    [InlineData(true, 1.5, "1 1/2 in")]
    [InlineData(true, 2, "2 in")]
    [InlineData(true, 10 / 25.4, "10 mm")]
    [InlineData(true, 10.123 / 25.4, "0.3985 in")]
    [InlineData(false, 0.5625, "9/16 in")]
    [InlineData(false, 3.0 / 16, "3/16 in")]
    [InlineData(false, 0.25, "1/4 in")] // 6.35 mm to the last digit
    [InlineData(false, 0.3125, "5/16 in")]
    [InlineData(false, 0.5, "1/2 in")] // 12.7 mm
    [InlineData(false, 0.75, "3/4 in")]
    [InlineData(false, 1, "1 in")]
    [InlineData(false, 300, "7620 mm")] // whole in both
    [InlineData(false, 4.76 / 25.4, "4.76 mm")]
    [InlineData(false, 0.028, "0.028 in")]
    [InlineData(false, 4.75 / 25.4, "4.75 mm")]
    [InlineData(false, 10 / 25.4, "10 mm")]
    [InlineData(false, 10.123 / 25.4, "10.123 mm")]
    public void A_size_is_given_exactly_and_in_the_unit_it_is_round_in(bool imperial, double inches, string text) =>
        Assert.Equal(text, new LengthNotation(imperial, 32).Size(Length.FromInches(inches)));

    [Fact]
    public void A_size_does_not_follow_the_sheets_fractions() =>
        Assert.Equal("3/16 in", new LengthNotation(true, 2).Size(Length.FromInches(3.0 / 16)));

    [Fact]
    public void The_other_unit_stands_in_brackets()
    {
        var length = Length.FromMillimetres(114.3);
        Assert.Equal("114.5 mm", Metric.WithUnit(length));
        Assert.Equal("114.5 mm (4 1/2 in)", Metric.InBoth(length));
        Assert.Equal("4 1/2 in (114.5 mm)", Metric.Other.InBoth(length));
        Assert.Equal(Metric, Metric.Other.Other);
        Assert.Equal("mm", Metric.Symbol);
        Assert.Equal("in", Metric.Other.Symbol);
    }

    [Theory]
    [InlineData(6.7375, "6.7 mm", "0.265 in")]
    [InlineData(0.04, "0.0 mm", "0.002 in")]
    [InlineData(-0.04, "0.0 mm", "-0.002 in")]
    [InlineData(-0.004, "0.0 mm", "0.000 in")]
    [InlineData(-0.26, "-0.3 mm", "-0.010 in")]
    public void A_small_reckoned_length_keeps_its_tenths_or_thousandths(double millimetres, string metric, string imperial)
    {
        Assert.Equal(metric, new LengthNotation(Imperial: false, 32).Fine(Length.FromMillimetres(millimetres)));
        Assert.Equal(imperial, new LengthNotation(Imperial: true, 32).Fine(Length.FromMillimetres(millimetres)));
    }

    [Theory]
    [InlineData(6.7375, "+6.7 mm", "+0.265 in")]
    [InlineData(0.04, "0.0 mm", "+0.002 in")]
    [InlineData(0, "0.0 mm", "0.000 in")]
    [InlineData(-0.04, "0.0 mm", "-0.002 in")]
    [InlineData(-2.8, "-2.8 mm", "-0.110 in")]
    public void A_difference_has_a_sign_unless_it_shows_as_nothing(double millimetres, string metric, string imperial)
    {
        Assert.Equal(metric, new LengthNotation(Imperial: false, 32).Difference(Length.FromMillimetres(millimetres)));
        Assert.Equal(imperial, new LengthNotation(Imperial: true, 32).Difference(Length.FromMillimetres(millimetres)));
    }
}
