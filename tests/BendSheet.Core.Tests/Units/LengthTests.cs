using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Units;

public class LengthTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_length_that_is_no_number_does_not_exist(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMillimetres(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(value));
    }

    [Fact]
    public void Arithmetic_that_leaves_the_numbers_throws()
    {
        var largest = Length.FromMillimetres(double.MaxValue);
        Assert.Throws<ArgumentOutOfRangeException>(() => largest + largest);
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(double.MaxValue));
        Assert.Throws<ArgumentOutOfRangeException>(() => double.NaN * Length.Zero);
    }

    [Fact]
    public void An_inch_is_25_4_millimetres()
    {
        Assert.Equal(25.4, Length.FromInches(1).Millimetres);
        Assert.Equal(1, Length.FromMillimetres(25.4).Inches);
        Assert.Equal(Lines.NineSixteenths, Length.FromInches(9.0 / 16).Millimetres);
    }

    [Fact]
    public void Sums_differences_multiples_and_ratios()
    {
        Assert.Equal(5.0, (Lines.Mm(2) + Lines.Mm(3)).Millimetres);
        Assert.Equal(-1.0, (Lines.Mm(2) - Lines.Mm(3)).Millimetres);
        Assert.Equal(6.0, (2 * Lines.Mm(3)).Millimetres);
        Assert.Equal(1.5, Lines.Mm(3) / Lines.Mm(2));
    }

    [Fact]
    public void Lengths_have_an_order()
    {
        Assert.True(Lines.Mm(2) < Lines.Mm(3));
        Assert.True(Lines.Mm(3) > Lines.Mm(2));
        Assert.True(Lines.Mm(2) <= Lines.Mm(2));
        Assert.True(Lines.Mm(2) >= Lines.Mm(2));
        Assert.False(Lines.Mm(2) < Lines.Mm(2));
        Assert.Equal([Lines.Mm(1), Lines.Mm(2)], new[] { Lines.Mm(2), Lines.Mm(1) }.Order());
    }

    [Theory]
    [InlineData(LengthUnit.Millimetre, "mm", 1, false)]
    [InlineData(LengthUnit.Centimetre, "cm", 10, false)]
    [InlineData(LengthUnit.Metre, "m", 1000, false)]
    [InlineData(LengthUnit.Inch, "in", 25.4, true)]
    [InlineData(LengthUnit.Foot, "ft", 304.8, true)]
    public void Units_as_they_are_typed(LengthUnit unit, string symbol, double millimetres, bool imperial)
    {
        Assert.Equal(symbol, unit.Symbol());
        AssertGeometry.Equal(millimetres, unit.InMillimetres());
        Assert.Equal(imperial, unit.IsImperial());
    }
}
