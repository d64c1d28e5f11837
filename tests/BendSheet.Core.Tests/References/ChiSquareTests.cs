using System.Globalization;
using BendSheet.Core.Survey;
using MathNet.Numerics;

namespace BendSheet.Core.Tests.References;

/// <summary>From where on measurements contradict each other: printed percentage points of χ².</summary>
public class ChiSquareTests
{
    private const string Table = "chi_square.csv";

    [Fact]
    public void Measurements_are_suspected_beyond_the_printed_99_percent_point()
    {
        foreach (var row in Beyond("0.01"))
        {
            var (printed, freedom) = (row["printed"], int.Parse(row["freedom"], CultureInfo.InvariantCulture));
            var (point, half) = (AssertGeometry.Number(printed), AssertGeometry.HalfOf(AssertGeometry.LastUnit(printed)));
            Assert.False(SlipSearch.IsSuspect(point - half, freedom, () => []), row["id"]);
            Assert.True(SlipSearch.IsSuspect(point + half, freedom, () => []), row["id"]);
        }
    }

    [Fact]
    public void A_slip_explains_what_it_leaves_within_the_printed_99_9_percent_point()
    {
        foreach (var row in Beyond("0.001"))
        {
            var (printed, freedom) = (row["printed"], int.Parse(row["freedom"], CultureInfo.InvariantCulture));
            var (point, half) = (AssertGeometry.Number(printed), AssertGeometry.HalfOf(AssertGeometry.LastUnit(printed)));
            Assert.True(SlipSearch.Agrees(point - half, freedom), row["id"]);
            Assert.False(SlipSearch.Agrees(point + half, freedom), row["id"]);
        }
    }

    /// <summary>With one to spare |w| is the root of χ²: 3.29² is the 99.9 % point of one degree of freedom, printed as 10.8.</summary>
    [Fact]
    public void A_single_measurement_is_suspected_beyond_the_printed_point_of_one_in_a_thousand()
    {
        var printed = ReferenceTable.Printed(Table, "baron_001_1");
        var half = AssertGeometry.HalfOf(AssertGeometry.LastUnit(printed));
        Assert.False(IsSuspect(Math.Sqrt(AssertGeometry.Number(printed) - half), 20));
        Assert.True(IsSuspect(Math.Sqrt(AssertGeometry.Number(printed) + half), 20));
        Assert.True(IsSuspect(-Math.Sqrt(AssertGeometry.Number(printed) + half), 20));
    }

    /// <summary>
    /// Of sixty the largest |w| has to be unlikely: that all of them are below it must have the probability 0.95, and one is with that of
    /// the error function, erf(w/√2).
    /// </summary>
    [Fact]
    public void Of_very_many_measurements_the_largest_is_suspected_where_one_line_in_twenty_has_it()
    {
        var (below, above) = (0.0, 10.0);
        while (above - below > 1e-9)
        {
            var middle = (below + above) / 2;
            (below, above) = IsSuspect(middle, 60)
                ? (below, middle)
                : (middle, above);
        }

        Assert.Equal(0.95, Math.Pow(SpecialFunctions.Erf(below / Math.Sqrt(2)), 60), 1e-8);
    }

    /// <summary>Where nothing is to spare nothing can contradict.</summary>
    [Fact]
    public void Nothing_is_suspected_where_nothing_is_to_spare() => Assert.False(SlipSearch.IsSuspect(1000, 0, () => [Residual(10)]));

    /// <summary>Of so many measurements one is out by so much, and all others agree.</summary>
    private static bool IsSuspect(double standardised, int measurements) => SlipSearch.IsSuspect(
        standardised * standardised,
        measurements,
        () => [Residual(standardised), .. Enumerable.Repeat(Residual(0), measurements - 1)]);

    private static SurveyedMeasurement Residual(double standardised) =>
        new("A-B", 300 + standardised, 1, 300, Redundancy: 1, IsAngle: false, Lines.NameAt);

    private static IEnumerable<IReadOnlyDictionary<string, string>> Beyond(string probability) =>
        ReferenceTable.Confirmed(Table).Where(row => string.Equals(row["beyond"], probability, StringComparison.Ordinal));
}
