using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// A levelling loop of four points, run forward and back, adjusted and printed by a program for geodetic networks: the points are a line's
/// corners, three of its height differences the moves of the route, and the other five are taped beside it.
/// </summary>
public class LevelLoopTests
{
    private const string Table = "level_loop.csv";

    private const double MillimetresPerMetre = 1000;

    /// <summary>The loop's points in the order of the line.</summary>
    private static readonly string[] Points = ["1a", "4", "3", "2"];

    private static LineSurvey Survey { get; } = LineSurvey.Of(Loop())!;

    [Fact]
    public void Every_height_difference_is_adjusted_as_printed()
    {
        var rows = Observed();
        Assert.Equal(8, rows.Count);
        foreach (var row in rows)
        {
            var one = Measured(row);
            var sign = SignOf(row);
            AssertGeometry.Printed(row["observed"], sign * one.Measured / MillimetresPerMetre, row["id"]);
            AssertGeometry.Printed(row["printed"], sign * one.Adjusted / MillimetresPerMetre, row["id"]);
        }
    }

    /// <summary>Of what was observed, 1 less the redundancy number is left of the variance (Baarda 1968).</summary>
    [Fact]
    public void Each_is_as_sure_as_printed()
    {
        foreach (var row in Observed())
        {
            var one = Measured(row);
            AssertGeometry.Printed(row["deviation"], one.Within * Math.Sqrt(1 - one.Redundancy), row["id"]);
        }
    }

    [Fact]
    public void Every_point_is_as_high_as_printed()
    {
        var start = AssertGeometry.Number(ReferenceTable.Printed(Table, "z1a"));
        foreach (var point in new[] { "2", "3", "4" })
        {
            var height = Survey.Line.Corners[Array.IndexOf(Points, point)].Position.Z - Survey.Line.Corners[0].Position.Z;
            AssertGeometry.Printed(ReferenceTable.Printed(Table, "z" + point), start + (height / MillimetresPerMetre), point);
        }
    }

    [Fact]
    public void Sum_of_squares_and_redundancy_are_as_printed()
    {
        var deviation = AssertGeometry.Number(ReferenceTable.Printed(Table, "m0"));
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "freedom"), Survey.ToSpare);
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "pvv"), Survey.ChiSquare * deviation * deviation);
        AssertGeometry.Printed(ReferenceTable.Printed(Table, "m0_after"), deviation * Math.Sqrt(Survey.ChiSquare / Survey.ToSpare));
    }

    [Fact]
    public void The_largest_standardised_residual_is_the_one_printed()
    {
        var row = ReferenceTable.Confirmed(Table).Single(row => string.Equals(row["id"], "w6", StringComparison.Ordinal));
        var w = Math.Abs(Beside(row).Standardised!.Value);
        AssertGeometry.Printed(row["printed"], w);
        AssertGeometry.Equal(w, Survey.Measurements.Max(one => Math.Abs(one.Standardised ?? 0)));
    }

    private static List<IReadOnlyDictionary<string, string>> Observed() =>
        [.. ReferenceTable.Confirmed(Table).Where(row => row["observed"].Length > 0)];

    /// <summary>The first three are the moves of the route.</summary>
    private static SurveyedMeasurement Measured(IReadOnlyDictionary<string, string> row) => row["id"] is "dh1" or "dh2" or "dh3"
        ? Survey.Measurements.Single(one => string.Equals(one.Name, $"leg {row["id"][2..]} up", StringComparison.Ordinal))
        : Beside(row);

    private static SurveyedMeasurement Beside(IReadOnlyDictionary<string, string> row)
    {
        var observed = Observed().FindIndex(
            one => string.Equals(one["from"], row["from"], StringComparison.Ordinal)
                && string.Equals(one["to"], row["to"], StringComparison.Ordinal));
        return Survey.Measurements[^(8 - observed)];
    }

    /// <summary>A taped way goes from the point nearer to A.</summary>
    private static int SignOf(IReadOnlyDictionary<string, string> row) =>
        Array.IndexOf(Points, row["from"]) < Array.IndexOf(Points, row["to"]) ? 1 : -1;

    private static LineTemplate Loop()
    {
        var rows = Observed();
        double Up(int row) => MillimetresPerMetre * AssertGeometry.Number(rows[row]["observed"]);

        // Where the points lie on the map does not matter.
        Vector3D[] moves = [new(5000, 0, Up(0)), new(0, 7000, Up(1)), new(-4000, 1000, Up(2))];
        var corners = new List<CornerPoint> { new(default, Lines.NameAt) };
        foreach (var move in moves)
        {
            ImmutableArray<Term> observed =
            [
                new Observation(ObservationKind.Forward, move.X, Lines.NameAt),
                new Observation(ObservationKind.Left, move.Y, Lines.NameAt),
                new Observation(ObservationKind.Up, move.Z, Lines.NameAt),
            ];
            corners.Add(new(corners[^1].Position + move, Lines.NameAt)
            {
                From = corners[^1].From is { } before ? [.. before.Zip(observed, Term.Sum)] : observed,
            });
        }

        var bender = Lines.Bender(10);
        var line = CornerRoute.Read(corners, bender).Line!;
        return Lines.Of(bender, [100, 100, 100, 100], (0, 90), (0, 90), (0, 90)) with
        {
            Route = line.Route,
            Start = line.Start,
            Corners = line.Corners,
            LiesOnCar = true,
            Tolerance = MeasuringTolerance.CommonPractice with
            {
                Tape = Lines.Mm(AssertGeometry.Number(ReferenceTable.Printed(Table, "m0"))),
            },
            Beside =
            [
                .. rows.Skip(3).Select((row, i) => new TapedMeasurement(
                    new(TapedKind.Part, Nearer(row), Farther(row)) { Axis = new(0, 0, 1) },
                    Lines.Mm(SignOf(row) * Up(i + 3)),
                    Lines.NameAt)),
            ],
        };
    }

    private static int Nearer(IReadOnlyDictionary<string, string> row) =>
        Math.Min(Array.IndexOf(Points, row["from"]), Array.IndexOf(Points, row["to"]));

    private static int Farther(IReadOnlyDictionary<string, string> row) =>
        Math.Max(Array.IndexOf(Points, row["from"]), Array.IndexOf(Points, row["to"]));
}
