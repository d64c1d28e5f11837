using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Fittings;

public class SingleFlareTests
{
    /// <summary>Reckoned by hand: (0.302 − 0.1875) / 2 / sin 37°, and that times 1 − cos 37°.</summary>
    [Fact]
    public void The_cone_of_a_37_degree_flare_on_brake_tube()
    {
        var flare = SingleFlare.Of(Flare.Single37, Length.FromInches(3.0 / 16), Length.FromInches(0.302))!;
        AssertGeometry.Printed("0.0951", flare.Slant.Inches, "slant");
        AssertGeometry.Printed("0.019", flare.FlareAllowance.Inches, "taken");
    }

    /// <summary>At 45° the slant of a cone is the root of 2 times its height, and its height is its widening on each side.</summary>
    [Fact]
    public void A_45_degree_cone_is_as_long_as_it_is_wide()
    {
        var flare = SingleFlare.Of(Flare.Single45, Lines.Mm(4), Lines.Mm(6))!;
        AssertGeometry.Equal(Math.Sqrt(2), flare.Slant.Millimetres);
        AssertGeometry.Equal(Math.Sqrt(2) - 1, flare.FlareAllowance.Millimetres);
    }

    [Theory]
    [InlineData(Flare.Double45)]
    [InlineData(Flare.Bubble)]
    [InlineData(Flare.None)]
    public void Nothing_else_is_a_cone(Flare flare) => Assert.Null(SingleFlare.Of(flare, Lines.Mm(4), Lines.Mm(6)));

    [Fact]
    public void A_flare_no_wider_than_the_tube_is_none() => Assert.Null(SingleFlare.Of(Flare.Single37, Lines.Mm(6), Lines.Mm(6)));

    /// <summary>
    /// FAA-H-8083-30, p. 7-5: the holes of the bar are countersunk, so that the tube in the countersink becomes cone as well.
    /// </summary>
    [Fact]
    public void A_countersink_takes_its_depth_off_what_stands_out()
    {
        var flare = SingleFlare.Of(Flare.Single37, Length.FromInches(3.0 / 16), Length.FromInches(0.302))!;
        AssertGeometry.Equal(flare.Slant.Millimetres, flare.StandOut(Length.Zero).Millimetres);
        AssertGeometry.Equal(flare.Slant.Millimetres - 1.2, flare.StandOut(Lines.Mm(1.2)).Millimetres);
        Assert.Equal(Length.Zero, flare.StandOut(Lines.Mm(3)));
    }
}
