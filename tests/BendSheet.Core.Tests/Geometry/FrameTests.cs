using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Geometry;

public class FrameTests
{
    /// <summary>
    /// Without care the last digit lost in one bend grows with every further one: after some hundred bends the shape is nonsense.
    /// </summary>
    [Theory]
    [InlineData(90, 30)]
    [InlineData(179.3, 45)]
    [InlineData(-37, 121)]
    public void After_a_thousand_bends_the_directions_are_still_square_and_of_length_one(double rotation, double turn)
    {
        var frame = Frame.Default;
        for (var i = 0; i < 1000; i++)
        {
            frame = frame.Advanced(Length.FromMillimetres(60)).Rolled(Angle.FromDegrees(rotation))
                .Bent(Length.FromMillimetres(14.2875), Angle.FromDegrees(turn));
            Assert.Equal(1, frame.Direction.Norm, 12);
            Assert.Equal(1, frame.Side.Norm, 12);
            Assert.Equal(0, frame.Direction.Dot(frame.Side), 12);
        }
    }

    [Fact]
    public void Four_square_corners_in_one_plane_lead_back_to_the_way_they_began()
    {
        var frame = Frame.Default;
        for (var i = 0; i < 400; i++)
        {
            frame = frame.Advanced(Length.FromMillimetres(100)).Bent(Length.FromMillimetres(10), Angle.FromDegrees(90));
        }

        Assert.Equal(0, frame.Position.DistanceTo(default), 9);
        Assert.Equal(1, frame.Direction.X, 12);
    }
}
