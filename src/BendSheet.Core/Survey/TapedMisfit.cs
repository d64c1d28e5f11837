using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// Which distance agrees least with the others. Least squares spreads one gross error over its neighbours, and the more so the fewer
/// others check it; dividing each residual by the root of its redundancy undoes that.
/// </summary>
/// <remarks>
/// W. Baarda, A Testing Procedure for Use in Geodetic Networks (Delft, 1968): with r the diagonal of the residuals' cofactor matrix (1
/// minus the leverage), a residual v has the standard deviation σ·√r, and v/r is how much the distance differs from the one that all others
/// give.
/// </remarks>
internal static class TapedMisfit
{
    /// <summary>Distances that the others check by less than this tell nothing: they go where they are told.</summary>
    private const double LeastRedundancy = 0.02;

    /// <summary>Coordinates that no distance holds to first order, as those out of a flat shape's plane, are held by this.</summary>
    private const double Hold = 1e-9;

    /// <summary>A distance whose misfit is this part of the worst could be the cause as well.</summary>
    private const double Alike = 0.8;

    /// <summary>With more of them no single one is named.</summary>
    private const int MostNamed = 3;

    /// <summary>The corners with what is to be said about them.</summary>
    public static TapedFit Judged(
        DistanceTable table, Placing placing, IReadOnlyList<TapedSpan> spans, SourcePosition at, List<Finding> findings)
    {
        var residuals = table.All.Select(taped => new TapedResidual(
            taped, Length.FromMillimetres(placing.Points[taped.From].DistanceTo(placing.Points[taped.To])))).ToImmutableArray();
        var squares = residuals.Sum(residual => Squared(residual.Residual.Millimetres));
        var fit = new TapedFit([.. placing.Points], residuals, Length.FromMillimetres(Math.Sqrt(squares / residuals.Length)), null);
        if (residuals.All(residual => Math.Abs(residual.Residual.Millimetres) <= Tolerances.SamePoint.Millimetres))
        {
            return fit;
        }

        var redundancies = Redundancies(placing.Points, spans);
        var checkedOnes = residuals.Select((residual, i) => new Checked(residual, redundancies[i], spans[i].Weight))
            .Where(one => one.Redundancy >= LeastRedundancy)
            .OrderByDescending(one => one.Misfit)
            .ToList();
        if (checkedOnes.Count == 0)
        {
            return fit with { Worst = residuals.MaxBy(residual => Math.Abs(residual.Residual.Millimetres)) };
        }

        var worst = checkedOnes[0];
        var spare = redundancies.Sum() - 1;
        var weighed = residuals.Select((residual, i) => spans[i].Weight * Squared(residual.Residual.Millimetres)).Sum();
        var others = spare > 0.5 ? Math.Sqrt(Math.Max(0, weighed - Squared(worst.Misfit)) / spare) : 0;
        if (worst.Misfit > Math.Max(Tolerances.TapeSlip.Millimetres, Unlikely(checkedOnes.Count) * others))
        {
            findings.Add(Warning([.. checkedOnes.TakeWhile(one => one.Misfit > Alike * worst.Misfit)], at));
        }

        return fit with { Worst = worst.Taped };
    }

    /// <summary>The largest of n honest errors does not reach so many standard deviations: √(2·ln n), below which it stays on average, and
    /// one more.</summary>
    private static double Unlikely(int count) => 1 + Math.Sqrt(2 * Math.Log(count));

    private static Finding Warning(List<Checked> suspects, SourcePosition at)
    {
        var worst = suspects[0];
        if (suspects.Count > MostNamed)
        {
            return TapedRules.DistanceMisfit.Warning(
                at,
                $"the distances do not go together by {FindingFigures.Mm(Length.FromMillimetres(worst.Misfit))}, and too few check each "
                    + "other to tell which is wrong: measure "
                    + $"{string.Join(", ", suspects.Select(suspect => suspect.Taped.Measured.Name))} again, or one between other corners");
        }

        var rivals = suspects.Skip(1).ToList();
        var word = worst.FromOthers.Millimetres > 0 ? "more" : "less";
        var by = Length.FromMillimetres(Math.Abs(worst.FromOthers.Millimetres));
        var name = worst.Taped.Measured.Name;
        var nearly = rivals.Count == 0
            ? string.Empty
            : $", and if it stays, {string.Join(" and ", rivals.Select(rival => rival.Taped.Measured.Name))}, which could be the cause "
                + "as well";
        return TapedRules.DistanceMisfit.Warning(
            worst.Taped.Measured.At,
            $"distance {name} is {FindingFigures.Mm(worst.Taped.Measured.Distance)}, about {FindingFigures.Mm(by)} {word} than the other "
                + $"distances say: measure {name} again{nearly}");
    }

    private static double Squared(double value) => value * value;

    /// <summary>
    /// 1 minus the leverage of each distance: 0 where no other one checks it, their sum is the number of distances to spare.
    /// </summary>
    private static double[] Redundancies(Vector3D[] points, IReadOnlyList<TapedSpan> spans)
    {
        var free = Reconciliation.FreeIn(points.Length);
        var slopes = spans.Select(span => Slope(points, span, free)).ToArray();
        var normal = new double[free.Length, free.Length];
        foreach (var slope in slopes)
        {
            var touched = Enumerable.Range(0, free.Length).Where(i => slope[i] != 0).ToArray();
            foreach (var i in touched)
            {
                foreach (var j in touched)
                {
                    normal[i, j] += slope[i] * slope[j];
                }
            }
        }

        return PositiveDefinite.Factor(normal, Hold) is { } factor
            ? [.. slopes.Select(slope => Math.Max(0, 1 - slope.Zip(PositiveDefinite.Solve(factor, slope), (a, b) => a * b).Sum()))]
            : new double[spans.Count];
    }

    private static double[] Slope(Vector3D[] points, TapedSpan span, int[] free)
    {
        var way = points[span.To] - points[span.From];
        var u = (Math.Sqrt(span.Weight) / Math.Max(way.Norm, Tolerances.SamePoint.Millimetres)) * way;
        return
        [
            .. free.Select(at => (at / 3 == span.To ? 1 : at / 3 == span.From ? -1 : 0) * (at % 3 == 0 ? u.X : at % 3 == 1 ? u.Y : u.Z)),
        ];
    }

    /// <summary>A residual with the redundancy of its distance.</summary>
    private sealed record Checked(TapedResidual Taped, double Redundancy, double Weight)
    {
        /// <summary>
        /// The residual as large as it would be with a redundancy of 1 and as sure as the tape, so that all can be compared; in mm.
        /// </summary>
        public double Misfit => Math.Abs(Taped.Residual.Millimetres) * Math.Sqrt(Weight / Redundancy);

        /// <summary>Measured minus what all other distances say.</summary>
        public Length FromOthers => Length.FromMillimetres(Taped.Residual.Millimetres / Redundancy);
    }
}
