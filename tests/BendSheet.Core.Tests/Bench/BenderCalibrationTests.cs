using BendSheet.Core.Bench;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Bench;

public class BenderCalibrationTests
{
    private static readonly Tube Other = Lines.Tube with { Name = "fuel", OutsideDiameter = Lines.Mm(8) };

    private static Bender Tried { get; } = Lines.Bender(Lines.NineSixteenths) with
    {
        Tests = [Pulled(93, 90), Piece(90, 200, 106, 105.5, MeasuredTo.Outside, 4.7625)],
    };

    [Fact]
    public void A_tool_without_tests_is_taken_as_it_says()
    {
        var tool = BenderCalibration.Of(Lines.Bender(10), Lines.Tube);
        Assert.Equal((1, ArcFactorSource.Assumed), (tool.ArcFactor, tool.Source));
        Assert.Null(tool.Gain);
    }

    [Fact]
    public void Pieces_give_the_arc_factor_in_force()
    {
        var tool = BenderCalibration.Of(Tried, Lines.Tube);
        Assert.Equal(ArcFactorSource.Learned, tool.Source);
        Assert.Equal(tool.Gain!.ArcFactor, tool.ArcFactor);
    }

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.02)]
    public void A_typed_arc_factor_counts_more_than_pieces(double typed)
    {
        var tool = BenderCalibration.Of(Tried with { ArcFactor = typed }, Lines.Tube);
        Assert.Equal((typed, ArcFactorSource.Typed), (tool.ArcFactor, tool.Source));
        AssertGeometry.Printed("0.973", tool.Gain!.ArcFactor);
    }

    [Fact]
    public void A_test_that_names_a_tube_counts_for_that_tube_only()
    {
        var bender = Tried with { Tests = [Pulled(93, 90), Pulled(96, 90) with { Tube = Other }] };
        Assert.Single(BenderCalibration.Of(bender, Lines.Tube).Springback.Tests);
        Assert.Single(BenderCalibration.Of(bender, null).Springback.Tests);
        AssertGeometry.Equal(Lines.Deg(94.5), BenderCalibration.Of(bender, Other).Pull(Lines.Deg(90)));
    }

    /// <summary>The piece as a line: what was cut for it is what is cut for the line, to the last digit.</summary>
    [Fact]
    public void A_line_like_the_test_piece_develops_to_its_length()
    {
        var plan = (Lines.Of(Tried, [106, 105.5], (0, 90)) with { Wire = new(Lines.Mm(4.7625), null), Habit = MeasuredTo.Outside }).Plan();
        AssertGeometry.Equal(Lines.Mm(200), plan.DevelopedLength, "developed length");
        AssertGeometry.Equal(Lines.Deg(93), plan.Bends[0].Pull, "pull");
        AssertGeometry.Equal(plan.Bends[0].Middle - plan.Bends[0].Start, plan.Bends[0].End - plan.Bends[0].Middle, "half of the bend");
    }

    [Fact]
    public void Each_bend_is_pulled_as_its_own_tool_asks()
    {
        var plain = Lines.Bender(12, "plain");
        var line = Lines.Of(Tried, [100, 100, 100], (0, 90), (0, 60));
        line = line with
        {
            Route = Route.OfRows([.. line.Route.Legs.Select((leg, i) => new Row(
                leg.Measured, leg.At, i == 2 ? null : line.Route.Bends[i] with { Bender = i == 0 ? plain : Tried }))]).Route!,
        };
        var bends = line.Plan().Bends;
        AssertGeometry.Equal(Lines.Deg(90), bends[0].Pull);
        AssertGeometry.Equal(Lines.Deg(62), bends[1].Pull);
        AssertGeometry.Equal(12 * Math.PI / 2, (bends[0].End - bends[0].Start).Millimetres);
    }
}
