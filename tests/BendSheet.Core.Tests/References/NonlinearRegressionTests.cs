using System.Collections.Immutable;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// A nonlinear regression with certified values, of the higher level of difficulty: how far ahead the corners of a line lie follows from
/// the three parameters, y = b1·exp(b2 / (x + b3)), and is taped from A as the data have it. The parameters are figures of which next to
/// nothing is known beforehand.
/// </summary>
public class NonlinearRegressionTests
{
    private const string Table = "nonlinear.csv";

    /// <summary>Beforehand a parameter is sure within so many of the deviations that the data give it: they alone decide.</summary>
    private const double Unsure = 1e4;

    /// <summary>Of a parameter's own certified deviation: nobody sees a thousandth of how sure something is.</summary>
    private const double OfDeviation = 1e-3;

    /// <summary>Of the certified deviations and of the sum of squares.</summary>
    private const double Near = 1e-5;

    /// <summary>The second of the two starts that are printed with the data.</summary>
    private static readonly double[] Start = [0.02, 4000, 250];

    [Fact]
    public void Parameters_deviations_and_sum_of_squares_are_as_certified()
    {
        var line = ObservedLine.Of(Line(), MeasuringTolerance.CommonPractice);
        List<WeighedQuantity> taped =
        [
            .. Data().Select((one, i) => new WeighedQuantity(
                new(TapedKind.Part, 0, i + 1) { Axis = new(1, 0, 0) }, AssertGeometry.Number(one["printed"]), Certified("sd"))),
        ];
        var found = Adjustment.Of(line, line.Typed, taped)!;
        Assert.Equal(3, found.Values.Length);
        for (var i = 0; i < found.Values.Length; i++)
        {
            Assert.InRange(Math.Abs(found.Values[i] - Certified($"b{i + 1}")), 0, OfDeviation * Certified($"s{i + 1}"));
            Assert.Equal(1, found.DeviationOfFigure(i) * line.Figures[i].Deviation / Certified($"s{i + 1}"), Near);
        }

        Assert.Equal(1, found.Misses.Sum(miss => miss * miss) * Certified("sd") * Certified("sd") / Certified("rss"), Near);
    }

    private static double Certified(string id) => AssertGeometry.Number(ReferenceTable.Printed(Table, id));

    private static List<IReadOnlyDictionary<string, string>> Data() =>
        [.. ReferenceTable.Confirmed(Table).Where(row => row["x"].Length > 0)];

    /// <summary>Corners that go to and fro, so that each is a bend.</summary>
    private static LineTemplate Line()
    {
        ImmutableArray<Term> parameters =
        [
            .. Start.Select((value, i) => new Observation(ObservationKind.Forward, value, Lines.NameAt)
            {
                Within = Unsure * Certified($"s{i + 1}"),
            }),
        ];
        CornerPoint Corner(double x, int number)
        {
            var ahead = Term.From(
                parameters,
                b => b[0] * Math.Exp(b[1] / (x + b[2])),
                b =>
                {
                    var power = Math.Exp(b[1] / (x + b[2]));
                    return [power, b[0] * power / (x + b[2]), -b[0] * power * b[1] / ((x + b[2]) * (x + b[2]))];
                });
            var aside = 1000.0 * (number % 2);
            return new(new(ahead.ValueWith(one => one.Value), aside, 0), Lines.NameAt)
            {
                From = [ahead, Term.Exactly(aside), Term.Exactly(0)],
            };
        }

        var first = new CornerPoint(default, Lines.NameAt) { From = [Term.Exactly(0), Term.Exactly(0), Term.Exactly(0)] };
        var corners = Data().Select((one, i) => Corner(AssertGeometry.Number(one["x"]), i + 1)).Prepend(first).ToList();
        var bender = Lines.Bender(10);
        var line = CornerRoute.Of([.. corners], bender);
        return Lines.Of(bender, [100, 100], (0, 90)) with
        {
            Route = line.Route,
            Start = line.Start,
            Corners = line.Corners,
            LiesOnCar = true,
        };
    }
}
