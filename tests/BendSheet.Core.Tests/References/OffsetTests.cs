namespace BendSheet.Core.Tests.References;

/// <summary>
/// A parallel offset built from rows: two equal bends, the second rotated by 180°. Exact arithmetic proves it; the trade's multipliers
/// come from pages of low grade and only stand beside it.
/// </summary>
public class OffsetTests
{
    public static TheoryData<double, string, bool> Rows { get; } = ReadRows();

    [Theory]
    [MemberData(nameof(Rows))]
    public void Travel_is_height_over_sine_and_the_far_end_comes_nearer_by_height_times_tan_of_half(double bend, string printed, bool known)
    {
        const double Height = 100;
        var bendRad = bend * Math.PI / 180;
        var travel = Height / Math.Sin(bendRad);
        var endB = Lines.Of(Lines.Bender(10), [50, travel, 50], (0, bend), (180, bend)).Centreline().EndB;
        AssertGeometry.Equal(Height, endB.Y, "height");
        AssertGeometry.Equal(0, endB.Z, "height out of the plane");
        AssertGeometry.Equal(Height * Math.Tan(bendRad / 2), 50 + travel + 50 - endB.X, "shrink");
        if (!known)
        {
            AssertGeometry.PrintedCutOff(printed, travel / Height, "multiplier");
        }
    }

    private static TheoryData<double, string, bool> ReadRows()
    {
        var rows = new TheoryData<double, string, bool>();
        foreach (var row in ReferenceTable.Read("offset_multipliers.csv"))
        {
            rows.Add(AssertGeometry.Number(row["bend_angle_deg"]), row["multiplier_printed"], row["known_defect"].Length > 0);
        }

        return rows;
    }
}
