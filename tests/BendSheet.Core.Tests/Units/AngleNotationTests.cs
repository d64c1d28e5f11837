using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Units;

public class AngleNotationTests
{
    [Theory]
    [InlineData(0, "12:00")]
    [InlineData(1.2, "12:00")]
    [InlineData(1.3, "12:05")]
    [InlineData(15, "12:30")]
    [InlineData(89.7, "3:00")]
    [InlineData(135, "4:30")]
    [InlineData(269.4, "9:00")]
    [InlineData(358.7, "11:55")]
    [InlineData(358.8, "12:00")]
    [InlineData(-90, "9:00")]
    public void A_direction_reads_as_on_a_clock_to_five_minutes(double degrees, string text) =>
        Assert.Equal(text, AngleNotation.Clock(Angle.FromDegrees(degrees)));

    [Theory]
    [InlineData(45, "45°")]
    [InlineData(22.5, "22.5°")]
    [InlineData(22.54, "22.5°")]
    [InlineData(22.55, "22.6°")] // a tie goes away from zero, whatever its last bit
    [InlineData(0.05, "0.1°")]
    [InlineData(89.96, "90°")]
    [InlineData(360, "360°")]
    public void A_bend_is_shown_to_a_tenth(double degrees, string text) =>
        Assert.Equal(text, AngleNotation.Figure(Angle.FromDegrees(degrees)));

    [Theory]
    [InlineData(0, "0°")]
    [InlineData(90, "90° cw")]
    [InlineData(-45, "45° ccw")]
    [InlineData(12.25, "12.3° cw")]
    [InlineData(-12.25, "12.3° ccw")]
    [InlineData(0.04, "0°")] // no sense of rotation where none is shown
    [InlineData(-0.04, "0°")]
    [InlineData(-0.06, "0.1° ccw")]
    public void A_rotation_says_which_way(double degrees, string text) =>
        Assert.Equal(text, AngleNotation.Rotation(Angle.FromDegrees(degrees)));

    [Theory]
    [InlineData(0, "0°")]
    [InlineData(359.94, "359.9°")]
    [InlineData(359.96, "0°")] // rounded up to a full turn
    [InlineData(-45, "315°")]
    [InlineData(405, "45°")]
    public void A_dial_has_no_360(double degrees, string text) => Assert.Equal(text, AngleNotation.Dial(Angle.FromDegrees(degrees)));
}
