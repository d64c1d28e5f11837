using BendSheet.Core.Bench;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench;

public class MarkTests
{
    [Theory]
    [InlineData(MarkPlace.Start, TubeEnd.A, 0, 100)]
    [InlineData(MarkPlace.Start, TubeEnd.A, 3, 103)]
    [InlineData(MarkPlace.Start, TubeEnd.A, -3, 97)]
    [InlineData(MarkPlace.Middle, TubeEnd.A, 0, 110)]
    [InlineData(MarkPlace.Middle, TubeEnd.A, 3, 113)]
    [InlineData(MarkPlace.Start, TubeEnd.B, 0, 120)]
    [InlineData(MarkPlace.Start, TubeEnd.B, 3, 117)]
    [InlineData(MarkPlace.Start, TubeEnd.B, -3, 123)]
    [InlineData(MarkPlace.Middle, TubeEnd.B, 0, 110)]
    [InlineData(MarkPlace.Middle, TubeEnd.B, 3, 107)]
    public void A_mark_is_the_place_of_the_tools_line_and_its_offset_turned_round_where_B_is_held(
        MarkPlace place, TubeEnd held, double offset, double mark)
    {
        var bender = Lines.Bender(10) with { Mark = place, Offset = Lines.Mm(offset) };
        Assert.Equal(mark, Mark.Of(bender, held, new(Lines.Mm(100), Lines.Mm(110), Lines.Mm(120))).Millimetres);
    }

    [Fact]
    public void In_a_plan_each_bend_is_marked_for_its_own_tool()
    {
        var bender = Lines.Bender(10) with { Mark = MarkPlace.Middle, Offset = Lines.Mm(2) };
        var bend = Lines.Of(bender, [50, 60], (0, 90)).Plan().Bends[0];
        AssertGeometry.Equal(40 + (10 * Math.PI / 4) + 2, bend.Mark.Millimetres);
    }
}
