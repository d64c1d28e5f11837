using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Tests.Shape;

public class CrossingsTests
{
    /// <summary>From the left to the right, round, and down through the first piece.</summary>
    private static readonly PagePoint[] Loop = [new(0, 0), new(10, 0), new(10, -5), new(4, -5), new(4, 5)];

    [Theory]
    [InlineData(0, 8, 3)]
    [InlineData(8, 0, 0)]
    public void The_nearer_piece_is_in_front(double first, double last, int front)
    {
        var crossing = Assert.Single(Crossings.Of(Loop, [first, first, first, last, last]));
        Assert.Equal(front, crossing.FrontPiece);
        Assert.Equal(front == 0 ? 0.4 : 0.5, crossing.Along, 9);
        Assert.Equal(1, crossing.Sine, 9);
    }

    [Fact]
    public void Nearness_counts_at_the_crossing_not_at_the_ends()
    {
        // The last piece comes from far in front and passes behind.
        var crossing = Assert.Single(Crossings.Of(Loop, [0, 0, 0, 10, -30]));
        Assert.Equal(0, crossing.FrontPiece);
    }

    [Fact]
    public void Neighbours_and_pieces_along_each_other_do_not_cross() =>
        Assert.Empty(Crossings.Of([new(0, 0), new(10, 0), new(12, 3), new(8, 0), new(2, 0)], [0, 0, 0, 1, 1]));
}
