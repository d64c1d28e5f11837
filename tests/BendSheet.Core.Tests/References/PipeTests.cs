using BendSheet.Core.Car;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>Worked examples for pipe, from the rows of a line to its plan and its points.</summary>
public class PipeTests
{
    private const string Table = "worked_examples.csv";

    /// <summary>
    /// NAVEDTRA 14119, chapter 16, Figure 16-3: legs 48 and 72 in, radius 18 in, 90°. The print has 1.57 for π/2: allow 0.02.
    /// </summary>
    [Fact]
    public void Developed_length_of_a_bent_pipe()
    {
        var plan = CarPlan.Line(Inches(18, [48, 72], (0, 90))).Plan!;
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "tdl90_leg1"), plan.FirstStraight.Inches, "straight 1");
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "tdl90_leg2"), plan.Bends[0].StraightAfter.Inches, "straight 2");
        AssertGeometry.PrintedFromRounded(ReferenceTable.Printed(Table, "tdl90_arc"), plan.Bends[0].Layout.Arc.Inches, 0.015, "arc");
        AssertGeometry.PrintedFromRounded(ReferenceTable.Printed(Table, "tdl90_total"), plan.DevelopedLength.Inches, 0.015, "total");
    }

    /// <summary>The print multiplies 12 in by 1.414, which is the square root of 2 to half a thousandth.</summary>
    [Fact]
    public void Travel_of_an_offset()
    {
        var printed = ReferenceTable.Printed(Table, "off45_travel");
        var points = Inches(1, [10, 12 / Math.Sin(Math.PI / 4), 10], (0, 45), (180, 45)).Centreline().CornerPoints();
        AssertGeometry.Equal(12 * Length.MillimetresPerInch, points[3].Y, "height");
        AssertGeometry.PrintedFromRounded(printed, points[1].DistanceTo(points[2]) / Length.MillimetresPerInch, 12 * 0.0005, "travel");
    }

    /// <summary>Two equal bends, the first rolled so that the offset goes so far left and so far up.</summary>
    [Fact]
    public void True_offset_of_a_rolling_offset()
    {
        var advance = ReferenceTable.Printed(Table, "roll602_adv");
        var rise = AssertGeometry.Number(ReferenceTable.Printed(Table, "roll602_rise"));
        var roll = AssertGeometry.Number(ReferenceTable.Printed(Table, "roll602_roll"));
        var travel = Math.Sqrt(2) * AssertGeometry.Number(advance);
        var plane = Math.Atan2(rise, roll) * 180 / Math.PI;
        var endB = Inches(1, [10, travel, 10], (plane, 45), (180, 45)).Centreline().EndB;
        AssertGeometry.Printed(advance, new Vector3D(0, endB.Y, endB.Z).Norm / Length.MillimetresPerInch, "true offset");
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "roll602_roll"), endB.Y / Length.MillimetresPerInch, "roll");
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "roll602_rise"), endB.Z / Length.MillimetresPerInch, "rise");
    }

    /// <summary>The print rounds the true offset to 35 3/8 in before it multiplies by 1.414.</summary>
    [Fact]
    public void Travel_of_a_rolling_offset()
    {
        var points = Inches(1, [10, 35.375 * Math.Sqrt(2), 10], (0, 45), (180, 45)).Centreline().CornerPoints();
        AssertGeometry.Equal(35.375 * Length.MillimetresPerInch, points[3].Y, "height");
        AssertGeometry.PrintedFromRounded(
            ReferenceTable.Printed(Table, "roll602_trav"), points[1].DistanceTo(points[2]) / Length.MillimetresPerInch, 35.375 * 0.0005);
    }

    private static LineTemplate Inches(double radius, double[] legs, params (double Rotate, double Turn)[] bends) =>
        Lines.Of(new Bender("hand", Length.FromInches(radius), Lines.RadiusAt), [.. legs.Select(Length.FromInches)], bends);
}
