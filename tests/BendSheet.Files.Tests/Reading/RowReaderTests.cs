using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class RowReaderTests
{
    private const double Same = 1e-9;

    [Fact]
    public void Straights_in_a_row_add_up_and_stand_where_the_first_was_typed()
    {
        var line = Assert.Single(
            Read(Rows("{straight: 10}", "{straight: 20}", "{straight: 30, bend: 45}", "{straight: 40}", "{straight: 50}")).Lines);
        Assert.Equal([60, 90], Legs(line));
        Assert.Equal([6, 9], line.Route.Legs.Select(leg => leg.At.Line));
    }

    [Fact]
    public void A_line_may_have_no_bend_at_all()
    {
        var line = Assert.Single(Read(Rows("{straight: 10}", "{straight: 20}")).Lines);
        Assert.Equal([30], Legs(line));
        Assert.Empty(line.Route.Bends);
    }

    [Theory]
    [InlineData("bend: 45", 45)]
    [InlineData("included: 135", 45)]
    [InlineData("included: 135°", 45)]
    [InlineData("included: 0", 180)]
    [InlineData("included: 179.9", 0.1)]
    [InlineData("bend: 360", 360)]
    [InlineData("bend: 22 1/2 deg", 22.5)]
    public void An_included_angle_is_the_same_corner_from_inside(string typed, double turn)
    {
        var line = Assert.Single(Read(Rows($"{{straight: 120, {typed}}}", "{straight: 80}")).Lines);
        Assert.Equal(turn, line.Route.Bends[0].Turn.Degrees, Same);
    }

    [Theory]
    [InlineData("rotate: 90 cw", 90)]
    [InlineData("rotate: 45 ccw", -45)]
    [InlineData("rotate: -45", -45)]
    [InlineData("rotate: 45", 45)]
    [InlineData("rotate: 360 ccw", -360)]
    [InlineData("rotate: 0", 0)]
    [InlineData("note: no rotation said", 0)]
    public void Rotations_are_clockwise_positive(string typed, double rotation)
    {
        var line = Assert.Single(Read(Rows("{straight: 1, bend: 5}", $"{{straight: 120, bend: 45, {typed}}}", "{straight: 80}")).Lines);
        Assert.Equal(rotation, line.Route.Bends[1].Rotation.Degrees);
    }

    private static IEnumerable<double> Legs(LineTemplate line) => line.Route.Legs.Select(leg => leg.Measured.Millimetres);
}
