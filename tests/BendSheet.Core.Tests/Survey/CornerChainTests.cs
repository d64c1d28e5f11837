using BendSheet.Core.Survey;

namespace BendSheet.Core.Tests.Survey;

/// <summary>To which side a bend turns, looking along the straight before it with the bend before held up.</summary>
public class CornerChainTests
{
    [Theory]
    [InlineData(40, 1)]
    [InlineData(140, 1)]
    [InlineData(-40, -1)]
    [InlineData(-140, -1)]
    public void A_rotation_clockwise_turns_to_the_right(double rotation, int side)
    {
        var points = Lines.Of(Lines.Bender(10), [120, 90, 150, 80], (0, 70), (rotation, 50), (20, 60)).Centreline().CornerPoints();
        Assert.Equal(side, CornerChain.SideOf(points, 2));
    }

    /// <summary>A side that was seen is kept, unless a tape could not tell whether there is one.</summary>
    [Theory]
    [InlineData(40, 20, true)]
    [InlineData(-40, 20, false)]
    [InlineData(-40, 0.5, true)]
    public void A_side_that_was_seen_is_kept_unless_the_bend_may_be_flat(double rotation, double fromFlat, bool isKept)
    {
        var points = Lines.Of(Lines.Bender(10), [120, 90, 150], (0, 70), (rotation, 50)).Centreline().CornerPoints();
        var over = points[0].DistanceTo(points[3]);
        var size = new TapedRotation(2, 40 * Math.PI / 180, new(0, 3, Lines.Mm(over), Lines.NameAt), Lines.Mm(over - fromFlat), 0);
        Assert.Equal(isKept, new SidedRotation(size, SideKnown.Seen, 1, null).KeptBy(points));
    }
}
