using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Workshop;
using CsCheck;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Bench;

public class ToolLineTests
{
    /// <summary>Flat parts of 100 and a bend of 15.708 by the radius of 10: the bend starts at 100, its middle is at 107.854.</summary>
    [Theory]
    [InlineData(MarkPlace.Start, 103, 3)]
    [InlineData(MarkPlace.Start, 98.5, -1.5)]
    [InlineData(MarkPlace.Middle, 107.854, 0)]
    [InlineData(MarkPlace.Middle, 110, 2.146)]
    public void A_mark_on_a_test_piece_shows_where_the_line_stands(MarkPlace place, double mark, double offset)
    {
        var tool = Lines.Bender(10) with { Mark = place, Tests = [Marked(90, 215.708, 100, 100, mark, MeasuredTo.Straight)] };
        Assert.Equal(offset, ToolLine.Of(tool).Offset.Millimetres, 1e-3);
        Assert.True(ToolLine.Of(tool).IsLearned);
    }

    [Fact]
    public void What_was_typed_counts_more()
    {
        var tool = Lines.Bender(10) with { Offset = Lines.Mm(1), Tests = [Marked(90, 215.708, 100, 100, 103, MeasuredTo.Straight)] };
        Assert.Equal(1, ToolLine.Of(tool).Offset.Millimetres);
        Assert.False(ToolLine.Of(tool).IsLearned);
        Assert.Equal(3, ToolLine.Of(tool).Learned!.Value.Millimetres, 1e-3);
    }

    /// <summary>
    /// The other way round: a tool whose line stands somewhere makes a line's only bend at the plan's mark; measured afterwards as a test
    /// piece in any way, the finished tube gives the same offset, held from its first leg.
    /// </summary>
    [Fact]
    public void A_finished_line_as_a_test_piece_gives_its_own_tools_offset() =>
        (from offset in Gen.Double[-8, 8]
         from turn in Gen.Double[20, 150]
         from first in Gen.Double[60, 200]
         from middle in Gen.Bool
         from outside in Gen.Bool
         select (offset, turn, first, middle, outside)).Sample(
            one =>
            {
                var typed = Lines.Bender(12) with
                {
                    Offset = Lines.Mm(one.offset),
                    Mark = one.middle ? MarkPlace.Middle : MarkPlace.Start,
                };
                var setback = 12 * Math.Tan(one.turn * Math.PI / 360);
                var plan = CarPlan.Line(Lines.Of(typed, [one.first + setback, 60 + setback], (0, one.turn))).Plan!;
                if (plan.Bends[0].Held != TubeEnd.A)
                {
                    return;
                }

                // Over the outside a leg is half a diameter times tan(bend/2) longer than to the centreline's corner.
                var more = one.outside ? 4.7625 / 2 * Math.Tan(one.turn * Math.PI / 360) : 0;
                var habit = one.outside ? MeasuredTo.Outside : MeasuredTo.Corner;
                var test = Piece(
                    one.turn, plan.CutLength.Millimetres, one.first + setback + more, 60 + setback + more, habit, 4.7625);
                var learned = ToolLine.Of(typed with
                {
                    Offset = null,
                    Tests = [test with { Piece = test.Piece! with { Mark = plan.Bends[0].Mark } }],
                });
                Assert.Equal(one.offset, learned.Offset.Millimetres, 1e-9);
            },
            iter: 500);

    [Fact]
    public void Every_mark_moves_with_what_was_learned()
    {
        var tool = Lines.Bender(10);
        var learned = tool with { Tests = [Marked(90, 215.708, 100, 100, 103, MeasuredTo.Straight)] };
        var (without, with) = (Lines.Of(tool, [200, 60], (0, 90)).Plan(), Lines.Of(learned, [200, 60], (0, 90)).Plan());
        Assert.Equal(TubeEnd.A, with.Bends[0].Held);
        Assert.Equal(without.Bends[0].Mark.Millimetres + 3, with.Bends[0].Mark.Millimetres, 1e-3);
    }

    /// <summary>
    /// Offsets of 1, 2 and 3 mm: mean 2, deviation 1, and Student's t of 2 degrees of freedom for 95 % is 4.303 (any printed table; the
    /// figure is from memory): 4.303 / √3 = 2.484. One piece leaves open what two readings of 0.5 mm do, 0.707.
    /// </summary>
    [Fact]
    public void How_sure_it_is()
    {
        var three = Lines.Bender(10) with
        {
            Tests =
            [
                .. new[] { 101.0, 102, 103 }.Select(mark => Marked(90, 215.708, 100, 100, mark, MeasuredTo.Straight)),
            ],
        };
        Assert.Equal(2, ToolLine.Of(three).Offset.Millimetres, 1e-3);
        Assert.Equal(2.484, ToolLine.Of(three).Either.Millimetres, 1e-3);
        Assert.Equal(0.707, ToolLine.Of(three with { Tests = three.Tests[..1] }).Either.Millimetres, 1e-3);
    }
}
