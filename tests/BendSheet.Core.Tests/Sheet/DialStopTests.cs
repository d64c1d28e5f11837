namespace BendSheet.Core.Tests.Sheet;

public class DialStopTests
{
    [Fact]
    public void Bends_at_one_reading_share_a_stop_and_stops_go_round_the_dial()
    {
        var stops = FullLine.Content(
            Lines.Of(Lines.Bender(10), [100, 100, 100, 100, 100], (0, 30), (-90, 45), (90, 30), (45, 20))).DialStops;
        Assert.Equal([("0°", "bends 1, 3"), ("45°", "bend 4"), ("270°", "bend 2")], stops.Select(stop => (stop.Label, stop.BendsInWords)));
        Assert.Equal([0, 45, 270], stops.Select(stop => stop.Reading.Degrees));
    }
}
