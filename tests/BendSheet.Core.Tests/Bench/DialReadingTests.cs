using BendSheet.Core.Bench;
using BendSheet.Core.Tests.Geometry;
using CsCheck;

namespace BendSheet.Core.Tests.Bench;

public class DialReadingTests
{
    [Fact]
    public void Readings_are_the_rotations_summed_up_round_the_dial()
    {
        var route = Lines.Of(Lines.Bender(10), [50, 50, 50, 50, 50], (0, 45), (90, 45), (-135, 45), (45, 45)).Route;
        Assert.Equal([0.0, 90.0, 315.0, 0.0], DialReading.Of(route).Select(reading => reading.Degrees));
    }

    [Fact]
    public void Readings_stay_from_0_to_below_360_and_differ_by_the_rotations() => Shape.Any.Sample(
        shape =>
        {
            var readings = DialReading.Of(shape.Template().Route);
            Assert.All(readings, reading => Assert.InRange(reading.Degrees, 0, Math.BitDecrement(360)));
            for (var i = 0; i < readings.Length; i++)
            {
                var before = i == 0 ? Lines.Deg(0) : readings[i - 1];
                AssertGeometry.SameDirection(Lines.Deg(shape.Rotations[i]), readings[i] + -before, "rotation");
            }
        },
        iter: 500);

    [Fact]
    public void Without_bends_there_is_nothing_to_read() => Assert.Empty(DialReading.Of(Lines.Of(Lines.Bender(10), [50]).Route));
}
