using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Tests;

/// <summary>
/// One line with every figure, found by two routes outside this program: legs 120, 60, 200, 80 corner to corner, bends 45, 30, 90,
/// rotations 0, +90, −45, radius 9/16 in, half a millimetre taken up at each end.
/// </summary>
public class WorkedExampleTests
{
    private static Fitting HalfMillimetre { get; } = new("an3", Flare.Single37, Lines.Mm(0.5), [], Lines.Mm(0));

    private static SolvedLine Line { get; } = CarPlan.Line(
        Lines.Of(Lines.Bender(Lines.NineSixteenths), [120, 60, 200, 80], (0, 45), (90, 30), (-45, 90)) with
        {
            From = LineEnd.Unknown with { Fitting = HalfMillimetre },
            To = LineEnd.Unknown with { Fitting = HalfMillimetre },
        });

    [Fact]
    public void It_can_be_made_and_nothing_is_to_be_said() => Assert.Empty(Line.Findings);

    [Theory]
    [InlineData(0, "114.0819")]
    [InlineData(1, "50.2536")]
    [InlineData(2, "181.8842")]
    [InlineData(3, "65.7125")]
    public void Straight_left(int leg, string printed) => AssertGeometry.Printed(printed, Line.Layout!.Legs[leg].StraightLeft.Millimetres);

    [Theory]
    [InlineData(0, "0.6148", "114.5819", "125.8033", "0", "3.6109", "4.1444")]
    [InlineData(1, "0.1757", "176.0569", "183.5378", "90", "3.5634", "2.7815")]
    [InlineData(2, "6.1322", "365.4220", "387.8647", "45", "1.1469", "1.3963")]
    public void Figures_of_a_bend(int index, string gain, string start, string end, string dial, string lever, string rotationLever)
    {
        var bend = Line.Plan!.Bends[index];
        Assert.Equal(index + 1, bend.Number);
        AssertGeometry.Printed(gain, bend.Layout.Gain!.Value.Millimetres, "gain");
        AssertGeometry.Printed(start, bend.Start.Millimetres, "start of bend");
        AssertGeometry.Printed(end, bend.End.Millimetres, "end of bend");
        AssertGeometry.Equal(0.5 * (bend.Start + bend.End), bend.Middle, "middle of bend");
        Assert.Equal(AssertGeometry.Number(dial), bend.Dial.Degrees);
        AssertGeometry.Printed(lever, bend.Lever.Millimetres, "lever of the bend");

        // A degree more of the rotation before it turns the rest about the straight that leads to it.
        var straight = Line.Centreline!.Arcs[index].Start;
        var moved = straight.Direction.Cross(Line.Centreline.EndB - straight.Position).Norm * Math.PI / 180;
        AssertGeometry.Printed(rotationLever, moved, "lever of the rotation");
    }

    [Fact]
    public void Straights_beside_the_bends_are_those_of_the_legs()
    {
        AssertGeometry.Printed("114.0819", Line.Plan!.FirstStraight.Millimetres);
        AssertGeometry.Printed("50.2536", Line.Plan.Bends[0].StraightAfter.Millimetres);
        AssertGeometry.Printed("181.8842", Line.Plan.Bends[1].StraightAfter.Millimetres);
        AssertGeometry.Printed("65.7125", Line.Plan.Bends[2].StraightAfter.Millimetres);
    }

    [Fact]
    public void Lengths()
    {
        AssertGeometry.Printed("453.0772", Line.Plan!.CentrelineLength.Millimetres);
        AssertGeometry.Printed("454.0772", Line.Plan.DevelopedLength.Millimetres);
        AssertGeometry.Printed("454.0772", Line.Plan.CutLength.Millimetres);
        Assert.Equal(0.5, Line.Plan.FlareFaceA.Millimetres);
    }

    [Theory]
    [InlineData(0, "0.0000", "0.0000", "0.0000")]
    [InlineData(1, "120.0000", "0.0000", "0.0000")]
    [InlineData(2, "162.4264", "42.4264", "0.0000")]
    [InlineData(3, "284.9009", "164.9009", "100.0000")]
    [InlineData(4, "224.9009", "184.9009", "148.9898")]
    public void Corner_points(int index, string x, string y, string z)
    {
        var corner = Line.Centreline!.CornerPoints()[index];
        AssertGeometry.Printed(x, corner.X, "x");
        AssertGeometry.Printed(y, corner.Y, "y");
        AssertGeometry.Printed(z, corner.Z, "z");
    }
}
