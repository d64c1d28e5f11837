using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Fittings;

public class SingleFlareTests
{
    /// <summary>The tenth of an inch is common practice, no source; the other two figures are reckoned by hand.</summary>
    [Fact]
    public void A_37_degree_flare_on_brake_tube_stands_out_a_tenth_of_an_inch()
    {
        var flare = SingleFlare.Of(Flare.Single37, Length.FromInches(3.0 / 16), Length.FromInches(0.302))!;
        AssertGeometry.Printed("0.0951", flare.StandOut.Inches, "slant");
        AssertGeometry.Printed("0.1", flare.StandOut.Inches, "common practice");
        AssertGeometry.Printed("0.019", flare.FlareAllowance.Inches, "taken");
    }

    /// <summary>At 45° the slant of a cone is the root of 2 times its height, and its height is its widening on each side.</summary>
    [Fact]
    public void A_45_degree_cone_is_as_long_as_it_is_wide()
    {
        var flare = SingleFlare.Of(Flare.Single45, Lines.Mm(4), Lines.Mm(6))!;
        AssertGeometry.Equal(Math.Sqrt(2), flare.StandOut.Millimetres);
        AssertGeometry.Equal(Math.Sqrt(2) - 1, flare.FlareAllowance.Millimetres);
    }

    [Theory]
    [InlineData(Flare.Double45)]
    [InlineData(Flare.Bubble)]
    [InlineData(Flare.None)]
    public void Nothing_else_is_a_cone(Flare flare) => Assert.Null(SingleFlare.Of(flare, Lines.Mm(4), Lines.Mm(6)));

    [Fact]
    public void A_flare_no_wider_than_the_tube_is_none() => Assert.Null(SingleFlare.Of(Flare.Single37, Lines.Mm(6), Lines.Mm(6)));
}
