using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// A parallel offset: two equal bends, the second rotated by 180°. Exact arithmetic proves it; the trade's multipliers come from pages of
/// low grade and only stand beside it.
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
        var first = new Bend(Lines.Deg(bend), Angle.Zero, Lines.Bender(10), null, Lines.TurnAt(0));
        var rows = Offset.Rows(Lines.Mm(Height), first, new(Lines.Mm(50), Lines.StraightAt(0), null), Lines.StraightAt(1));
        var line = Lines.Of(Lines.Bender(10), [50]) with
        {
            Route = Route.OfRows([.. rows, new(Lines.Mm(50), Lines.StraightAt(2), null)]).Route!
        };
        var travel = line.Route.Legs[1].Measured.Millimetres;
        var endB = line.Centreline().EndB;
        AssertGeometry.Equal(Height / Math.Sin(bendRad), travel, "travel");
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
