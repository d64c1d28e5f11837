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

            double[] deviations = [.. kinds.Select(TypedForms.Deviation), .. taped.Select(one => one.Within)];
            double[] FiguresOf(Vector<double> moved) => [.. read.Select((value, at) => value + (moved[at] * deviations[at]))];
            double[] Model(Vector<double> moved)
            {
                var figures = FiguresOf(moved);
                var line = TypedForms.Line(form, figures);
                return [.. figures, .. taped.Select(one => one.On(line))];
            }

            var outside = Solution.Of(
                Model,
                [.. read, .. taped.Select(one => one.Value)],
                deviations,
                Vector<double>.Build.Dense(read.Length, 0.1),
                moved => TypedForms.EndB(TypedForms.Line(form, FiguresOf(moved))));
            AgreesWith(outside, survey, one => Place(one, read, kinds, taped));
        }
    }

    /// <summary>
    /// A route of distances with B ahead and aside: the unknowns are the coordinates of its corners, seen from A; nothing of the line is
    /// used but where it starts looking.
    /// </summary>
    [Fact]
    public void It_finds_the_same_corners_of_a_line_of_distances()
    {
        var random = new Random(20261126);
        var found = 0;
        while (found < Lines)
        {
            double[] truth = [.. TypedForms.Figures("distances", random).Select(figure => figure.Value)];
            double[] read = [.. truth.Select(value => value + TypedForms.Error(random, TypedForms.Kind.Tape))];
            var line = TypedForms.Line("distances", truth);
            if (LineSurvey.Of(line)!.IsAtLeast || TypedForms.File("distances", read).Lines is not [_])
            {
                continue;
            }

            found++;
            var b = TypedForms.EndB(line);
            double[] beside = [b.X + 0.7, Math.Sqrt((b.Y * b.Y) + (b.Z * b.Z)) - 0.9];
            var taped = FormattableString.Invariant($"taped: {{B ahead: {{distance: {beside[0]:R}, within: 0.6}}, ")
                + FormattableString.Invariant($"B aside: {{distance: {beside[1]:R}, within: 0.8}}}}");
            var survey = LineSurvey.Of(TypedForms.Line("distances", read, taped))!;
            Assert.Equal(3, survey.ToSpare);
            double[] measured = [.. read, .. beside];
            var outside = Solution.Of(
                DistancesAndB,
                measured,
                [.. read.Select(_ => TypedForms.Deviation(TypedForms.Kind.Tape)), 0.6, 0.8],
                Vector<double>.Build.DenseOfArray(Free(TypedForms.Corners(line))),
                free => Points(free)[^1]);
            AgreesWith(outside, survey, one => Array.FindIndex(measured, value => Math.Abs(value - one.Measured) < 1e-9));
        }
    }

    private static void AgreesWith(Solution outside, LineSurvey survey, Func<SurveyedMeasurement, int> placeOf)
    {
        Assert.Equal(outside.ChiSquare, survey.ChiSquare, Near);
        foreach (var one in survey.Measurements)
        {
            var at = placeOf(one);
            var unit = one.IsAngle ? Math.PI / 180 : 1;
            Assert.Equal(outside.Deviations[at], one.Within / unit, 1e-9);
            Assert.Equal(outside.Adjusted[at], one.Adjusted / one.Within, Near);
            Assert.Equal(outside.Redundancies[at], one.Redundancy, Near);
        }

        Assert.Equal(outside.Spread, survey.Spread.Millimetres, Near * survey.Spread.Millimetres);
    }

    /// <summary>Of five corners: A at the origin, the first leg along X, the first bend in the XY plane.</summary>
    private static double[] Free(Vector3D[] corners) =>
    [
        corners[1].X, corners[2].X, corners[2].Y,
        corners[3].X, corners[3].Y, corners[3].Z, corners[4].X, corners[4].Y, corners[4].Z,
    ];

    private static Vector3D[] Points(Vector<double> free) =>
        [default, new(free[0], 0, 0), new(free[1], free[2], 0), new(free[3], free[4], free[5]), new(free[6], free[7], free[8])];

    /// <summary>In the order of the form, then B ahead and B aside.</summary>
    private static double[] DistancesAndB(Vector<double> free)
    {
        var points = Points(free);
        var b = points[^1];
        return
        [
            .. Enumerable.Range(1, 4).SelectMany(to => Enumerable.Range(0, to).Select(from => points[from].DistanceTo(points[to]))),
            b.X, Math.Sqrt((b.Y * b.Y) + (b.Z * b.Z)),
        ];
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

    /// <summary>What the general solver found, in standard deviations; the spread of B in millimetres.</summary>
    private sealed record Solution(double ChiSquare, double[] Adjusted, double[] Redundancies, double[] Deviations, double Spread)
    {
        /// <summary>The unknowns that make a model agree best with what was measured.</summary>
        public static Solution Of(
            Func<Vector<double>, double[]> model,
            double[] measured,
            double[] deviations,
            Vector<double> start,
            Func<Vector<double>, Vector3D> endB)
        {
            double[] Weighed(IEnumerable<double> values) => [.. values.Select((value, i) => value / deviations[i])];
            double[] Model(Vector<double> unknowns) => Weighed(model(unknowns));
            var read = Vector<double>.Build.DenseOfArray(Weighed(measured));
            var objective = ObjectiveFunction.NonlinearModel(
                (unknowns, _) => Vector<double>.Build.DenseOfArray(Model(unknowns)), (unknowns, _) => Slopes(unknowns, Model), read, read);
            var found = new LevenbergMarquardtMinimizer(maximumIterations: 200).FindMinimum(objective, start);
            var left = found.MinimizedValues - read;
            var chiSquare = left.DotProduct(left);

            // The library scales the covariance by what is left over.
            var covariance = found.Covariance / (chiSquare / (read.Count - start.Count));
            var slopes = Slopes(found.MinimizingPoint, Model);
            var spread = Slopes(found.MinimizingPoint, unknowns => endB(unknowns) is var b ? [b.X, b.Y, b.Z] : []);
            return new(
                chiSquare,
                [.. found.MinimizedValues],
                [.. Enumerable.Range(0, read.Count).Select(i => 1 - (slopes.Row(i) * covariance * slopes.Row(i)))],
                deviations,
                Math.Sqrt((spread * covariance * spread.Transpose()).Diagonal().Sum()));
        }
    }

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
