using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.Geometry;

public class StretchTests
{
    /// <summary>A part runs where the whole does: its points are those of the whole further along.</summary>
    [Fact]
    public void A_part_of_a_straight_or_an_arc_lies_on_it()
    {
        var centreline = Lines.Of(Lines.Bender(30), [120, 90, 150], (0, 70), (50, 130)).Centreline();
        Stretch[] stretches = [.. centreline.Straights.Select(Stretch.Of), .. centreline.Arcs.Select(Stretch.Of)];
        Assert.All(stretches, stretch =>
        {
            var (from, to) = (0.2 * stretch.LengthMm, 0.7 * stretch.LengthMm);
            var part = stretch.Part(from, to);
            AssertGeometry.Equal(to - from, part.LengthMm);
            foreach (var along in new[] { 0, 0.3, 1 })
            {
                AssertGeometry.Equal(stretch.PointAt(from + (along * part.LengthMm)), part.PointAt(along * part.LengthMm));
            }
        });
    }
}
