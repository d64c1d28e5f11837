namespace BendSheet.Core.Tests.Sheet;

public class BendGaugeTests
{
    [Fact]
    public void Bends_of_one_angle_on_one_tool_share_a_gauge_with_the_shortest_straight_beside_them()
    {
        var gauges = FullLine.Content(Lines.Of(Lines.Bender(10), [100, 60, 70, 90], (0, 30), (90, 45), (0, 30))).Gauges;
        Assert.Equal(["bends 1, 3", "bend 2"], gauges.Select(gauge => gauge.Bends), StringComparer.Ordinal);
        Assert.Equal(["30°", "45°"], gauges.Select(gauge => gauge.TurnLabel), StringComparer.Ordinal);
        Assert.All(gauges, gauge => Assert.Equal(10, gauge.Radius.Millimetres));
        Assert.All(gauges, gauge => Assert.Null(gauge.PullLabel));

        // Corner to corner 60 mm, less the setbacks of 30° and 45° at a radius of 10 mm.
        Assert.Equal(60 - (10 * (Math.Tan(Math.PI / 12) + Math.Tan(Math.PI / 8))), gauges[0].Leg.Millimetres, 9);
    }

    [Fact]
    public void Another_tool_is_another_gauge()
    {
        var gauges = FullLine.Content(
            Lines.Of(Lines.Bender(10), [100, 100, 100], (0, 30), (90, 30)).FirstBendOn(Lines.Bender(15, "other"))).Gauges;
        Assert.Equal(["15 mm", "10 mm"], gauges.Select(gauge => gauge.RadiusLabel), StringComparer.Ordinal);
    }

    [Fact]
    public void A_square_bend_measures_its_radius_times_root_two_from_tangent_to_tangent() =>
        Assert.Equal("28.5 mm", FullLine.Content(Lines.Of(Lines.Bender(20), [100, 100], (0, 90))).Gauges[0].Chord);

    [Fact]
    public void A_straight_tube_has_none()
    {
        var content = FullLine.Content(Lines.Of(Lines.Bender(10), [100]));
        Assert.Empty(content.Gauges);
        Assert.Empty(content.DialStops);
    }
}
