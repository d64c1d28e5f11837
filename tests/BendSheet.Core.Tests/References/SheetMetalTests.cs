using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// Sheet of thickness T bent to the inside radius r is wire of diameter T bent to the centreline radius r + T/2: outside dimensions,
/// setbacks and flats are the same geometry. Its neutral line lies nearer the inside, which is what an arc factor is for.
/// </summary>
public class SheetMetalTests
{
    private const string Table = "bend_allowance.csv";

    private static double CoefficientOfRadius { get; } = AssertGeometry.Number(ReferenceTable.Printed(Table, "ba_formula_coef_R"));
    private static double CoefficientOfThickness { get; } = AssertGeometry.Number(ReferenceTable.Printed(Table, "ba_formula_coef_T"));

    /// <summary>
    /// The print works out each bend's deduction, rounds it to a thousandth and takes three of them off: three times half a thousandth,
    /// and half a thousandth of the printed result. Its coefficient of r, 0.01743, is π/180 a little low; the arc factor puts the neutral
    /// line where the print has it (0.0078/0.01743 of the thickness) and keeps π/180.
    /// </summary>
    [Fact]
    public void Flat_length_of_four_outside_dimensions()
    {
        var plan = Sheet(0.032, 0.050, 0.740, 0.420, 1.050, 1.000).Plan!;
        AssertGeometry.PrintedFromRounded(ReferenceTable.Printed(Table, "wkbk_flat"), plan.DevelopedLength.Inches, 3 * 0.0005);
    }

    [Fact]
    public void Bend_allowance_setbacks_and_deduction_of_one_bend()
    {
        var solved = Sheet(0.032, 0.050, 1, 1);
        var flats = solved.Layout!.Legs[0].StraightLeft + solved.Layout.Legs[1].StraightLeft;
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "wkbk_ba"), (solved.Plan!.DevelopedLength - flats).Inches, "bend allowance");
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "wkbk_2sb"), 2 - flats.Inches, "two setbacks");
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "wkbk_bd"), 2 - solved.Plan.DevelopedLength.Inches, "deduction");
    }

    [Fact]
    public void Flats_of_a_channel()
    {
        var legs = Sheet(0.16, 0.040, 1, 2, 1).Layout!.Legs;
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "faa_uch_flat1"), legs[0].StraightLeft.Inches);
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "faa_uch_flat2"), legs[1].StraightLeft.Inches);
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "faa_uch_flat3"), legs[2].StraightLeft.Inches);
    }

    private static SolvedLine Sheet(double insideRadius, double thickness, params double[] outsideDimensions)
    {
        var centrelineRadius = insideRadius + (thickness / 2);
        var neutralRadius = insideRadius + (CoefficientOfThickness / CoefficientOfRadius * thickness);
        var brake = new Bender("brake", Length.FromInches(centrelineRadius), Lines.RadiusAt)
        {
            ArcFactor = neutralRadius / centrelineRadius
        };
        var bends = Enumerable.Repeat((0.0, 90.0), outsideDimensions.Length - 1).ToArray();
        return CarPlan.Line(Lines.Of(brake, [.. outsideDimensions.Select(Length.FromInches)], bends) with
        {
            Tube = Lines.Tube with { OutsideDiameter = Length.FromInches(thickness) },
            Wire = new(Length.FromInches(thickness), null),
            Habit = MeasuredTo.Outside,
        });
    }
}
