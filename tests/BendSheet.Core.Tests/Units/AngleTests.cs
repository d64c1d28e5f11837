using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Units;

public class AngleTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void An_angle_that_is_no_number_does_not_exist(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromDegrees(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromRadians(value));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(359.9, 359.9)]
    [InlineData(360, 0)]
    [InlineData(361, 1)]
    [InlineData(725, 5)]
    [InlineData(-1, 359)]
    [InlineData(-45, 315)]
    [InlineData(-360, 0)]
    [InlineData(-361, 359)]
    [InlineData(-1e-20, 0)] // 360 less a hair is 360 itself in doubles, and 360 is no reading
    public void On_a_dial_an_angle_reads_from_0_to_below_360(double degrees, double reading)
    {
        var dial = Angle.FromDegrees(degrees).OnDial().Degrees;
        AssertGeometry.Equal(reading, dial);
        Assert.InRange(dial, 0, Math.BitDecrement(360));
    }

    [Fact]
    public void Half_a_turn_is_pi() => AssertGeometry.Equal(Math.PI, Angle.FromDegrees(180).Radians);

    [Fact]
    public void Radians_and_back() => AssertGeometry.Equal(57.3, Angle.FromRadians(Angle.FromDegrees(57.3).Radians).Degrees);

    [Fact]
    public void The_other_way_round_nothing_stays_nothing()
    {
        Assert.Equal(-30.0, (-Angle.FromDegrees(30)).Degrees);
        Assert.False(double.IsNegative((-Angle.Zero).Degrees));
    }

    [Fact]
    public void Angles_have_an_order()
    {
        Assert.True(Lines.Deg(2) < Lines.Deg(3));
        Assert.True(Lines.Deg(3) > Lines.Deg(2));
        Assert.True(Lines.Deg(2) <= Lines.Deg(2));
        Assert.True(Lines.Deg(2) >= Lines.Deg(2));
        Assert.False(Lines.Deg(2) > Lines.Deg(2));
        Assert.Equal([Lines.Deg(-1), Lines.Deg(2)], new[] { Lines.Deg(2), Lines.Deg(-1) }.Order());
    }
}
