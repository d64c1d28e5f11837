using System.Globalization;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>FAA AC 43.13-1B Table 4-7: the setback of a bend of radius 1 is K = tan(bend/2).</summary>
public class KChartTests
{
    /// <summary>
    /// Faults of the print: 86° is one digit low (0.9324, exact 0.93252), 159° has 5.399 for 5.3955, 176° has 26.63 for 28.636.
    /// </summary>
    private static string[] FaultsOfThePrint { get; } = ["86", "159", "176"];

    public static TheoryData<string, string> Rows { get; } = ReadRows();

    [Theory]
    [MemberData(nameof(Rows))]
    public void Setback_of_radius_one_inch_is_K(string bendDegrees, string printed)
    {
        var setback = Setback(bendDegrees);
        if (string.Equals(printed, "Inf", StringComparison.Ordinal))
        {
            Assert.Null(setback);
        }
        else
        {
            AssertGeometry.PrintedCutOff(printed, setback!.Value.Inches);
        }
    }

    [Fact]
    public void The_whole_chart_is_there_but_for_the_faults_of_the_print()
    {
        Assert.Equal(180 - FaultsOfThePrint.Length, Rows.Count);
        var marked = ReferenceTable.Read("k_chart.csv").Where(row => row["known_defect"].Length > 0).Select(row => row["bend_angle_deg"]);
        Assert.Equal(FaultsOfThePrint, marked, StringComparer.Ordinal);
    }

    private static TheoryData<string, string> ReadRows()
    {
        var rows = new TheoryData<string, string>();
        foreach (var row in ReferenceTable.Confirmed("k_chart.csv"))
        {
            if (!FaultsOfThePrint.Contains(row["bend_angle_deg"], StringComparer.Ordinal))
            {
                rows.Add(row["bend_angle_deg"], row["k_printed"]);
            }
        }

        return rows;
    }

    private static Length? Setback(string bendDegrees)
    {
        var oneInch = new Bender("hand", Length.FromInches(1), Lines.RadiusAt);
        var turn = Angle.FromDegrees(double.Parse(bendDegrees, CultureInfo.InvariantCulture));
        return new BendLayout(new Bend(turn, Angle.Zero, oneInch, null, Lines.TurnAt(0))).Setback;
    }
}
