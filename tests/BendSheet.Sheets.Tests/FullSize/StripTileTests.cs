using BendSheet.Core.Sheet;
using BendSheet.Core.Units;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Tests.FullSize;

public class StripTileTests
{
    [Fact]
    public void A_short_tube_is_one_tile() => Assert.Equal([(0, 250)], Spread(250));

    [Fact]
    public void The_last_tile_may_use_the_room_that_needs_no_joint() => Assert.Equal([(0, 240), (240, 490)], Spread(490));

    [Fact]
    public void Joints_lie_at_round_figures() => Assert.Equal([(0, 240), (240, 480), (480, 720), (720, 900)], Spread(900));

    [Fact]
    public void A_joint_keeps_away_from_a_mark() => Assert.Equal([(0, 230), (230, 470), (470, 600)], Spread(600, 238));

    [Fact]
    public void Each_mark_is_on_one_tile_only_also_on_a_joint()
    {
        var strip = Strip(600, Enumerable.Range(1, 599).Select(mark => (double)mark));
        var tiles = StripTile.Spread(strip, new(Mm(10), Mm(245), Mm(250)));
        Assert.All(strip.Bends, bend => Assert.Single(tiles, tile => tile.Has(bend.Mark)));
        Assert.All(new[] { Length.Zero, Mm(600) }, end => Assert.Single(tiles, tile => tile.Has(end)));
    }

    private static IEnumerable<(int, int)> Spread(double length, params double[] marks) =>
        StripTile.Spread(Strip(length, marks), new(Mm(10), Mm(245), Mm(250)))
            .Select(tile => ((int)tile.Start.Millimetres, (int)tile.End.Millimetres));

    private static Strip Strip(double length, IEnumerable<double> marks) =>
        new(
            Mm(length),
            [.. marks.Select((mark, i) => new StripBend(i + 1, Mm(mark), Mm(mark), Mm(mark), string.Empty))],
            [],
            [],
            false,
            false, Length.Zero);

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
