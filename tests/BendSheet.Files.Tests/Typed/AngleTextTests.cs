using BendSheet.Files.Typed;

namespace BendSheet.Files.Tests.Typed;

public class AngleTextTests
{
    private const string NoAngle = "is not an angle: write degrees, such as `45`";
    private const string NoRotation = "is not a rotation: write degrees with cw or ccw, such as `90 cw`";
    private const string NoFraction = "has a fraction that cannot be: write it like `3/16` or `12 5/16`";
    private const string BarePoint = "has a point and no figure after it: type the figure, or leave the point out";

    [Theory]
    [InlineData("45", 45)]
    [InlineData("45 deg", 45)]
    [InlineData("45deg", 45)]
    [InlineData("45 Degrees", 45)]
    [InlineData("1 degree", 1)]
    [InlineData("45°", 45)]
    [InlineData("45 °", 45)]
    [InlineData("45º", 45)] // what some keyboards have beside the digits
    [InlineData("45˚", 45)]
    [InlineData("22.5", 22.5)]
    [InlineData(".5", 0.5)]
    [InlineData("22 1/2", 22.5)]
    [InlineData("22-1/2°", 22.5)]
    [InlineData("-45", -45)]
    [InlineData("−45", -45)]
    [InlineData("+45", 45)]
    public void An_angle_is_read(string typed, double degrees)
    {
        Assert.Null(AngleText.Read(typed, out var read));
        Assert.Equal(degrees, read, 1e-12);
    }

    [Theory]
    [InlineData("", NoAngle)]
    [InlineData("deg", NoAngle)]
    [InlineData("°", NoAngle)]
    [InlineData("NaN", NoAngle)]
    [InlineData(".nan", NoAngle)]
    [InlineData("inf", NoAngle)]
    [InlineData("--45", NoAngle)]
    [InlineData("square", NoAngle)]
    [InlineData("45.", BarePoint)]
    [InlineData("1/0", NoFraction)]
    [InlineData("22 3/2", NoFraction)]
    [InlineData("45 rad", "has `rad` left over: write degrees, such as `45`")]
    [InlineData("45 deg deg", "has `deg` left over: write degrees, such as `45`")]
    [InlineData("45 mm", "has `mm` left over: write degrees, such as `45`")]
    [InlineData("22° 30'", "has `30'` left over: write degrees, such as `45`")]
    [InlineData("1e308", "has `e308` left over: write degrees, such as `45`")]
    [InlineData("45 cw", "says which way round, which only a rotation has: write degrees here, such as `45`, and the way round after "
        + "`rotate`")]
    [InlineData("45° CCW", "says which way round, which only a rotation has: write degrees here, such as `45`, and the way round after "
        + "`rotate`")]
    public void What_is_no_angle_is_told_so(string typed, string words) => Assert.Equal(words, AngleText.Read(typed, out _));

    [Theory]
    [InlineData("90 cw", 90)]
    [InlineData("90cw", 90)]
    [InlineData("90 CW", 90)]
    [InlineData("90° cw", 90)]
    [InlineData("90°cw", 90)]
    [InlineData("90ºcw", 90)]
    [InlineData("90 deg cw", 90)]
    [InlineData("45 ccw", -45)]
    [InlineData("22 1/2 ccw", -22.5)]
    [InlineData("-45", -45)]
    [InlineData("−45°", -45)]
    [InlineData("+45", 45)]
    [InlineData("45", 45)]
    [InlineData("0", 0)]
    public void A_rotation_is_clockwise_positive(string typed, double degrees)
    {
        Assert.Null(AngleText.ReadRotation(typed, out var read));
        Assert.Equal(degrees, read, 1e-12);
    }

    [Theory]
    [InlineData("", NoRotation)]
    [InlineData("cw", NoRotation)]
    [InlineData("cw 90", NoRotation)]
    [InlineData("NaN cw", NoRotation)]
    [InlineData("left", NoRotation)]
    [InlineData("90 left", "has `left` left over: write `90 cw` or `90 ccw`")]
    [InlineData("90 clockwise", "has `clockwise` left over: write `90 cw` or `90 ccw`")]
    [InlineData("90 cw cw", "has `cw cw` left over: write `90 cw` or `90 ccw`")]
    [InlineData("90 cw 5", "has `cw 5` left over: write `90 cw` or `90 ccw`")]
    [InlineData("90. cw", BarePoint)]
    [InlineData("1/0 cw", NoFraction)]
    [InlineData("-45 ccw", "has a minus sign and a sense: write `45 ccw` or `-45`, which are the same")]
    [InlineData("-45 cw", "has a minus sign and a sense: write `45 ccw` or `-45`, which are the same")]
    [InlineData("90 \u001b[31m", "has ` [31m` left over: write `90 cw` or `90 ccw`")]
    public void What_is_no_rotation_is_told_so(string typed, string words) => Assert.Equal(words, AngleText.ReadRotation(typed, out _));

    [Theory]
    [InlineData("-0")]
    [InlineData("0 ccw")]
    [InlineData("-0 cw")]
    public void A_rotation_by_nothing_has_no_sign(string typed)
    {
        Assert.Null(AngleText.ReadRotation(typed, out var read));
        Assert.Equal(0, read);
        Assert.False(double.IsNegative(read));
    }

    [Fact]
    public void Hundreds_of_digits_are_endless()
    {
        Assert.Null(AngleText.Read(new string('9', 400), out var read));
        Assert.Equal(double.PositiveInfinity, read);
        Assert.Null(AngleText.ReadRotation(new string('9', 400) + " ccw", out read));
        Assert.Equal(double.NegativeInfinity, read);
    }
}
