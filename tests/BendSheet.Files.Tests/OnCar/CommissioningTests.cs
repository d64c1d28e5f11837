using BendSheet.Core.Commissioning;
using BendSheet.Files.Tests.Plumbing;
using BendSheet.Files.Tests.Reading;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>It has a row for everything that can leak, and ticks nothing that a person has to see.</summary>
public class CommissioningTests
{
    [Fact]
    public void Every_joint_has_its_row_and_nobody_ticks_it_beforehand()
    {
        var joints = Section("Every joint");

        // Six lines and two hoses have two ends each, two parts are screwed in, and four bleed screws are joints too.
        Assert.Equal((2 * 8) + 2 + 4, joints.Rows.Length);
        Assert.Equal(4, joints.Rows.Count(row => string.Equals(row.Cells[1].Words, "bleed screw", StringComparison.Ordinal)));
        Assert.Equal(joints.Rows.Length, joints.Rows.Select(row => (row.Cells[0].Words, row.Cells[1].Words)).Distinct().Count());
        Assert.All(joints.Rows, row =>
        {
            Assert.Equal(joints.Columns.Length, row.Cells.Length);
            Assert.Equal([CellKind.Blank, CellKind.Box, CellKind.Box, CellKind.Box], row.Cells.Skip(2).Select(cell => cell.Kind));
        });
    }

    [Fact]
    public void It_approves_nothing_and_says_whose_example_it_prints()
    {
        var page = TypedCars.Plan(SmallCar.Sound).Commissioning()!;
        Assert.Contains("It approves nothing", page.Disclaimer, StringComparison.Ordinal);

        // 49 CFR 570.55 (b): service brake system of vehicles with a GVWR of more than 10,000 pounds: 125 pounds for 10 seconds.
        Assert.Contains(
            Section("Pressure held").Remarks,
            remark => remark.Contains("125 lb on the pedal for 10 s", StringComparison.Ordinal)
                && remark.Contains("over 10,000 lb (49 CFR 570.55)", StringComparison.Ordinal));
        Assert.Contains(
            Section("Bleeding").Remarks, remark => remark.Contains("the car maker's order rules", StringComparison.Ordinal));
    }

    [Fact]
    public void A_row_has_a_cell_for_every_column_and_a_section_has_rows() => Assert.All(
        TypedCars.Plan(SmallCar.Sound).Commissioning()!.Sections, section =>
        {
            Assert.NotEmpty(section.Rows);
            Assert.All(section.Rows, row => Assert.Equal(section.Columns.Length, row.Cells.Length));
        });

    [Fact]
    public void A_hose_has_the_length_that_it_needs_where_its_way_was_measured()
    {
        var car = SmallCar.With(
            ("is: M10x1 banjo}, length: 350}\n  right-hose", "is: M10x1 banjo}, length: 350, spans: {lock: 330}}\n  right-hose"));
        var hoses = Section("Hoses, watched while they move", car).Rows;

        // 5 to 8 % more than 330: 346.5 to 356.4, to the half millimetre; the other one was not measured.
        Assert.Equal(new(CellKind.Words, "346.5 mm to 356.5 mm"), hoses[0].Cells[1]);
        Assert.Equal(CommissioningCell.Blank, hoses[1].Cells[1]);
    }

    [Fact]
    public void Litres_that_nobody_knows_are_not_nought() => Assert.All(
        Section("Filling", SmallCar.With(("wall: 0.028 in, ", string.Empty))).Rows, row => Assert.Equal("not known", row.Cells[1].Words));

    [Fact]
    public void A_file_without_parts_has_no_such_page() =>
        Assert.Null(TypedCars.Plan(TypedTemplates.Top + TypedTemplates.Line).Commissioning());

    private static CommissioningSection Section(string heading, string car = SmallCar.Sound) => Assert.Single(
        TypedCars.Plan(car).Commissioning()!.Sections, section => string.Equals(section.Heading, heading, StringComparison.Ordinal));
}
