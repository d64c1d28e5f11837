using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// The adjustment against a general solver, Levenberg and Marquardt's method as MathNet.Numerics has it: it knows nothing of the program
/// but files, typed anew with every figure that it tries, and measures their centrelines.
/// </summary>
public class OutsideSolverTests
{
    private const int Lines = 3;

    /// <summary>Of a residual in standard deviations.</summary>
    private const double Near = 1e-6;

    public static TheoryData<string> Forms { get; } = [.. TypedForms.All.Where(form => form is not "distances")];

    [Theory]
    [MemberData(nameof(Forms))]
    public void It_finds_the_same_line(string form)
    {
        var random = new Random(20261126);
        for (var i = 0; i < Lines; i++)
        {
            var truth = TypedForms.Figures(form, random);
            double[] read = [.. truth.Select(figure => figure.Value + TypedForms.Error(random, figure.Kind))];
            var kinds = truth.Select(figure => figure.Kind).ToArray();
            var taped = Tape.Of(TypedForms.Line(form, [.. truth.Select(figure => figure.Value)]), TypedForms.Line(form, read), random);
            var survey = LineSurvey.Of(TypedForms.Line(form, read, "taped: {" + string.Join(", ", taped.Select(one => one.Typed)) + "}"))!;
            Assert.Equal(read.Length + taped.Length, survey.Measurements.Length);

            var outside = Solve(form, read, kinds, taped);
            Assert.Equal(outside.ChiSquare, survey.ChiSquare, Near);
            Assert.Equal(taped.Length, survey.ToSpare);
            foreach (var one in survey.Measurements)
            {
                var at = Place(one, read, kinds, taped);
                var unit = one.IsAngle ? Math.PI / 180 : 1;
                Assert.Equal(outside.Deviations[at], one.Within / unit, 1e-9);
                Assert.Equal(outside.Adjusted[at], one.Adjusted / one.Within, Near);
                Assert.Equal(outside.Redundancies[at], one.Redundancy, Near);
            }

            Assert.Equal(outside.Spread, survey.Spread.Millimetres, Near * survey.Spread.Millimetres);
        }
    }

    /// <summary>Which of the figures, or of what is taped, a measurement is: no two read the same.</summary>
    private static int Place(SurveyedMeasurement one, double[] read, TypedForms.Kind[] kinds, Tape[] taped)
    {
        var figure = Enumerable.Range(0, read.Length).ToList().FindIndex(
            i => IsAngle(kinds[i]) == one.IsAngle
                && Math.Abs(one.Measured - (read[i] * (one.IsAngle ? Math.PI / 180 : 1))) < 1e-9);
        return figure >= 0 ? figure : read.Length + Array.FindIndex(taped, beside => Math.Abs(beside.Value - one.Measured) < 1e-9);
    }

    private static bool IsAngle(TypedForms.Kind kind) => kind is TypedForms.Kind.Bend or TypedForms.Kind.Rotation;

    /// <summary>All in standard deviations: the figures that agree best, what they come to, and how sure all that is.</summary>
    private static Solution Solve(string form, double[] read, TypedForms.Kind[] kinds, Tape[] taped)
    {
        double[] deviations = [.. kinds.Select(TypedForms.Deviation), .. taped.Select(one => one.Within)];
        double[] FiguresOf(Vector<double> moved) => [.. read.Select((value, i) => value + (moved[i] * deviations[i]))];
        double[] Model(Vector<double> moved)
        {
            var figures = FiguresOf(moved);
            var line = TypedForms.Line(form, figures);
            return [.. figures.Concat(taped.Select(one => one.On(line))).Select((value, i) => value / deviations[i])];
        }

        var measured = Vector<double>.Build.DenseOfEnumerable(
            read.Concat(taped.Select(one => one.Value)).Select((value, i) => value / deviations[i]));
        var objective = ObjectiveFunction.NonlinearModel(
            (moved, _) => Vector<double>.Build.DenseOfArray(Model(moved)), (moved, _) => Slopes(moved, Model), measured, measured);
        var found = new LevenbergMarquardtMinimizer(maximumIterations: 200)
            .FindMinimum(objective, Vector<double>.Build.Dense(read.Length, 0.1));
        var left = found.MinimizedValues - measured;
        var chiSquare = left.DotProduct(left);

        // The library scales the covariance by what is left over.
        var covariance = found.Covariance / (chiSquare / taped.Length);
        var slopes = Slopes(found.MinimizingPoint, Model);
        var spread = Slopes(found.MinimizingPoint, moved => Coordinates(TypedForms.Line(form, FiguresOf(moved))));
        return new(
            chiSquare,
            [.. found.MinimizedValues],
            [.. Enumerable.Range(0, measured.Count).Select(i => 1 - (slopes.Row(i) * covariance * slopes.Row(i)))],
            deviations,
            Math.Sqrt((spread * covariance * spread.Transpose()).Diagonal().Sum()));
    }

    private static Matrix<double> Slopes(Vector<double> at, Func<Vector<double>, double[]> model)
    {
        const double Step = 1e-2;
        return Matrix<double>.Build.DenseOfColumnVectors(Enumerable.Range(0, at.Count).Select(i =>
        {
            Vector<double> Moved(double steps)
            {
                var moved = at.Clone();
                moved[i] += steps * Step;
                return Vector<double>.Build.DenseOfArray(model(moved));
            }

            return (8 * (Moved(1) - Moved(-1)) - (Moved(2) - Moved(-2))) / (12 * Step);
        }));
    }

    /// <summary>B seen from A: its straight ahead, the first bend to the side.</summary>
    private static double[] Coordinates(LineTemplate line)
    {
        var centreline = RouteLayout.Of(line).Layout!.Centreline(line.Start);
        var start = centreline.Arcs[0].Start;
        var way = centreline.EndB - centreline.EndA;
        return [way.Dot(start.Direction), way.Dot(start.Side), way.Dot(start.Axis)];
    }

    private sealed record Solution(double ChiSquare, double[] Adjusted, double[] Redundancies, double[] Deviations, double Spread);

    /// <summary>Something taped beside the route, with what it is on any line.</summary>
    private sealed record Tape(string Key, string Axis, double Value, double Within, Func<LineTemplate, double> On)
    {
        private static readonly double OfTape = TypedForms.Deviation(TypedForms.Kind.Tape);

        /// <summary>As it stands in the file.</summary>
        public string Typed => Axis.Length == 0 ? $"{Key}: {Figure}" : $"{Key}: {{{Axis}: {Figure}}}";

        private string Figure => Value.ToString("R", CultureInfo.InvariantCulture);

        /// <summary>Three to five measurements on a line as it is, each as sure as tape and square are on the line as read.</summary>
        public static Tape[] Of(LineTemplate truth, LineTemplate read, Random random)
        {
            var all = All(read).ToArray();
            random.Shuffle(all);
            return
            [
                .. all.DistinctBy(one => one.Key, StringComparer.Ordinal).Take(random.Next(3, 6)).Select(one => one with
                {
                    Value = one.On(truth) + (one.Within / OfTape * TypedForms.Error(random, TypedForms.Kind.Tape)),
                }),
            ];
        }

        private static IEnumerable<Tape> All(LineTemplate read)
        {
            var corners = Points(read);
            var last = corners.Length - 1;
            yield return new("B ahead", string.Empty, 0, Square(Aside(read, last)), line => Ahead(line, last));
            yield return new("B aside", string.Empty, 0, Square(Ahead(read, last)), line => Aside(line, last));
            for (var to = 2; to <= last; to++)
            {
                for (var from = 0; from < to - 1; from++)
                {
                    var (a, b) = (from, to);
                    if (corners[a] is { } && corners[b] is { })
                    {
                        yield return new(Name(a, last) + "-" + Name(b, last), string.Empty, 0, OfTape, line => Way(line, a, b).Norm);
                    }
                }
            }

            if (read.LiesOnCar)
            {
                yield return new("A-B", "forward", 0, OfTape, line => Way(line, 0, last).X);
                yield return new("1-B", "up", 0, OfTape, line => Way(line, 1, last).Z);
                yield return new("A-2", "left", 0, OfTape, line => Way(line, 0, 2).Y);
            }
        }

        private static string Name(int point, int last) =>
            point == 0 ? "A" : point == last ? "B" : point.ToString(CultureInfo.InvariantCulture);

        /// <summary>A square that lies askew by half a degree, where nobody said otherwise, and the tape.</summary>
        private static double Square(double reach)
        {
            var askew = reach * 0.5 * Math.PI / 180;
            return Math.Sqrt((OfTape * OfTape) + (askew * askew));
        }

        private static Vector3D?[] Points(LineTemplate line) => [.. RouteLayout.Of(line).Layout!.Centreline(line.Start).Corners];

        private static Vector3D Way(LineTemplate line, int from, int to) => Points(line)[to]!.Value - Points(line)[from]!.Value;

        private static double Ahead(LineTemplate line, int to) => Way(line, 0, to).Dot(line.Start.Direction);

        private static double Aside(LineTemplate line, int to) => (Way(line, 0, to) - (Ahead(line, to) * line.Start.Direction)).Norm;
    }
}
