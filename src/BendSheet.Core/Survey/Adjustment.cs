using BendSheet.Core.Templates;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BendSheet.Core.Survey;

/// <summary>A quantity measured beside the route, for the adjustment.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Millimetres">As it was read.</param>
/// <param name="Deviation">One standard deviation, in millimetres, above zero.</param>
internal readonly record struct WeighedQuantity(TapedQuantity Quantity, double Millimetres, double Deviation);

/// <summary>
/// A line's figures, moved so that they and everything else that was measured agree best: least squares, each residual weighed by its
/// standard deviation.
/// </summary>
/// <remarks>
/// Gauss and Newton's method on the figures in units of their deviations, so that the normal equations are I + AᵀA with a row of A for
/// each quantity beside the route: well conditioned whatever the units. A step that makes the sum of squares larger is halved. Redundancy
/// numbers and standardised residuals after W. Baarda, A Testing Procedure for Use in Geodetic Networks (Delft, 1968).
/// </remarks>
internal sealed class Adjustment
{
    private const int MostSteps = 20;
    private const int MostHalvings = 12;

    /// <summary>
    /// What is still a hundred standard deviations apart after so many steps was not measured on one line, and will not converge.
    /// </summary>
    private const int StepsOfNonsense = 8;
    private const double Nonsense = 100;

    /// <summary>Steps shorter than this part of how sure the figures are in the end change nothing.</summary>
    private const double Converged = 1e-8;

    /// <summary>
    /// What the steps still to come may add up to, as part of how sure the figures are in the end. Each is taken to be the same part of the
    /// one before, so that they are a geometric series.
    /// </summary>
    public const double StillToCome = 1e-7;

    /// <summary>The same of an adjustment that another goes on from: nobody sees it in millimetres.</summary>
    public const double ToGoOnFrom = 1e-5;

    /// <summary>The weight of a figure that is left out: next to nothing, but a figure that nothing else determines stays where it
    /// was.</summary>
    private const double LeftOut = 1e-6;

    private readonly double[] _weights;
    private readonly double[][] _rows;

    /// <summary>Of the normal equations; null where there is nothing beside the route.</summary>
    private readonly Cholesky<double>? _normal;

    /// <summary>Row by row, once it is asked for; for a slip that is tried it never is.</summary>
    private double[][]? _known;

    private Adjustment(double[] values, double[] moved, double[] weights, PlaceSlopes slopes, double[][] rows, Cholesky<double>? normal)
    {
        Values = values;
        Moved = moved;
        _weights = weights;
        Slopes = slopes;
        _rows = rows;
        _normal = normal;
    }

    /// <summary>Row by row; null where there is nothing beside the route.</summary>
    private double[][]? CovarianceOfFigures =>
        _known ??= _normal?.Solve(Matrix<double>.Build.DenseIdentity(_weights.Length)).ToRowArrays();

    /// <summary>The adjusted figures, in millimetres or radians.</summary>
    public double[] Values { get; }

    /// <summary>By how many standard deviations each figure was moved.</summary>
    public double[] Moved { get; }

    /// <summary>How much more each quantity beside the route was read than the adjusted line has, in standard deviations.</summary>
    public required double[] Misses { get; init; }

    /// <summary>At the adjusted figures.</summary>
    public PlaceSlopes Slopes { get; }

    /// <summary>How often it was solved.</summary>
    public required int Steps { get; init; }

    /// <summary>The weighed sum of squares.</summary>
    public double ChiSquare => Sum(Moved, Misses, _weights);

    /// <summary>Adjusts a line.</summary>
    /// <param name="line">With its figures.</param>
    /// <param name="typed">The figures as they were read, but for a slip that is tried.</param>
    /// <param name="beside">What else was measured.</param>
    /// <param name="leftOut">A figure that is not believed; none where it is negative.</param>
    /// <returns>Null where the line has no shape.</returns>
    public static Adjustment? Of(ObservedLine line, double[] typed, IReadOnlyList<WeighedQuantity> beside, int leftOut = -1) =>
        PlaceSlopes.Near(line, typed) is { } slopes ? From(line, typed, slopes, beside, leftOut) : null;

    /// <summary>The same of a line whose slopes with the figures as they were typed are known.</summary>
    /// <param name="line">With its figures.</param>
    /// <param name="typed">The figures as they were read.</param>
    /// <param name="slopes">At those.</param>
    /// <param name="beside">What else was measured.</param>
    /// <param name="leftOut">A figure that is not believed; none where it is negative.</param>
    /// <param name="stillToCome">What may be left, as part of how sure the figures are in the end.</param>
    public static Adjustment? From(
        ObservedLine line,
        double[] typed,
        PlaceSlopes slopes,
        IReadOnlyList<WeighedQuantity> beside,
        int leftOut = -1,
        double stillToCome = StillToCome)
    {
        var weights = new double[typed.Length];
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = i == leftOut || line.Figures[i].IsUnmeasured ? LeftOut : 1;
        }

        return From(line, typed, weights, (typed, new double[typed.Length], slopes), beside, stillToCome);
    }

    /// <summary>The same line after more was measured beside it, starting from this adjustment.</summary>
    /// <param name="line">Whose adjustment this is.</param>
    /// <param name="typed">Its figures as they were read.</param>
    /// <param name="beside">All that is measured now.</param>
    /// <returns>Null where the line has no shape.</returns>
    public Adjustment? Again(ObservedLine line, double[] typed, IReadOnlyList<WeighedQuantity> beside) =>
        From(line, typed, _weights, (Values, Moved, Slopes), beside, StillToCome);

    private static Adjustment? From(
        ObservedLine line,
        double[] typed,
        double[] weights,
        (double[] Values, double[] Moved, PlaceSlopes Slopes) start,
        IReadOnlyList<WeighedQuantity> beside,
        double stillToCome)
    {
        var (values, moved, slopes) = start;
        var misses = MissesOf(slopes.At, beside);
        var before = 0.0;
        for (var step = 0; ; step++)
        {
            var rows = RowsOf(slopes, beside);
            if (!Array.TrueForAll(rows, row => double.IsFinite(NormalEquations.Dot(row, row))))
            {
                // Between two points in one place there is no direction along which their distance would change.
                return null;
            }

            var normal = beside.Count == 0 ? null : NormalEquations.Of(weights, rows);
            if (normal is null || step == MostSteps || (step >= StepsOfNonsense && IsNonsense(misses))
                || Next(line, typed, beside, weights, (moved, misses), rows, normal) is not { } next)
            {
                return new(values, moved, weights, slopes, rows, normal) { Misses = misses, Steps = step + 1 };
            }

            (values, moved, misses) = (next.Values, next.Moved, next.Misses);
            if (next.Length < before && next.Length * next.Length / (before - next.Length) < stillToCome)
            {
                return new(values, moved, weights, slopes.MovedTo(next.Walked.Places), rows, normal) { Misses = misses, Steps = step + 1 };
            }

            (slopes, before) = (PlaceSlopes.Near(line, next.Walked, values), next.Length);
        }
    }

    private static bool IsNonsense(double[] misses) => NormalEquations.Dot(misses, misses) > Nonsense * Nonsense * misses.Length;

    /// <summary>What a small force on the figures moves: the covariance of the figures times it, in standard deviations.</summary>
    public double[] Covariance(double[] slope)
    {
        var (covariance, force) = (CovarianceOfFigures, new double[slope.Length]);
        for (var i = 0; i < force.Length; i++)
        {
            force[i] = covariance is null ? slope[i] / _weights[i] : NormalEquations.Dot(covariance[i], slope);
        }

        return force;
    }

    /// <summary>How sure a figure is: one standard deviation, in those it was read with.</summary>
    public double DeviationOfFigure(int figure) =>
        Math.Sqrt(CovarianceOfFigures is { } covariance ? covariance[figure][figure] : 1 / _weights[figure]);

    /// <summary>How much of a figure's reading is checked by everything else: from 0 to 1.</summary>
    public double RedundancyOfFigure(int figure) =>
        CovarianceOfFigures is { } covariance ? Math.Clamp(1 - (_weights[figure] * covariance[figure][figure]), 0, 1) : 0;

    /// <summary>How much of a quantity's reading is checked by everything else: from 0 to 1.</summary>
    public double RedundancyBeside(int quantity) => Math.Clamp(1 - NormalEquations.Dot(_rows[quantity], Covariance(_rows[quantity])), 0, 1);

    /// <summary>How quantities change with the figures, both in standard deviations.</summary>
    internal static double[][] RowsOf(PlaceSlopes slopes, IReadOnlyList<WeighedQuantity> beside)
    {
        var rows = new double[beside.Count][];
        for (var k = 0; k < rows.Length; k++)
        {
            rows[k] = slopes.Of(beside[k].Quantity);
            for (var i = 0; i < rows[k].Length; i++)
            {
                rows[k][i] /= beside[k].Deviation;
            }
        }

        return rows;
    }

    /// <summary>How much more quantities were read than a line has, in standard deviations.</summary>
    internal static double[] MissesOf(Places places, IReadOnlyList<WeighedQuantity> beside)
    {
        var misses = new double[beside.Count];
        for (var i = 0; i < misses.Length; i++)
        {
            misses[i] = (beside[i].Millimetres - places.ValueOf(beside[i].Quantity)) / beside[i].Deviation;
        }

        return misses;
    }

    private static (double[] Values, double[] Moved, double[] Misses, WalkedRoute Walked, double Length)? Next(
        ObservedLine line,
        double[] typed,
        IReadOnlyList<WeighedQuantity> beside,
        double[] weights,
        (double[] Moved, double[] Misses) now,
        double[][] rows,
        Cholesky<double> normal)
    {
        var force = NormalEquations.Sum(rows, now.Misses, typed.Length);
        for (var i = 0; i < force.Length; i++)
        {
            force[i] -= weights[i] * now.Moved[i];
        }

        var step = normal.Solve(Vector<double>.Build.DenseOfArray(force)).AsArray();

        // Its length against how sure the figures are in the end; next to nothing may come out below zero.
        var length = Math.Sqrt(NormalEquations.Dot(force, step));
        if (double.IsNaN(length) || length < Converged)
        {
            return null;
        }

        var before = Sum(now.Moved, now.Misses, weights);
        for (var (factor, halved) = (1.0, 0); halved < MostHalvings; factor /= 2, halved++)
        {
            var (moved, values) = (new double[typed.Length], new double[typed.Length]);
            for (var i = 0; i < typed.Length; i++)
            {
                moved[i] = now.Moved[i] + (factor * step[i]);
                values[i] = typed[i] + (moved[i] * line.Figures[i].Deviation);
            }

            if (line.WalkWith(values) is { } walked
                && MissesOf(walked.Places, beside) is var misses && Sum(moved, misses, weights) <= before * (1 + 1e-12))
            {
                return (values, moved, misses, walked, factor * length);
            }
        }

        return null;
    }

    private static double Sum(double[] moved, double[] misses, double[] weights)
    {
        var sum = 0.0;
        for (var i = 0; i < moved.Length; i++)
        {
            sum += weights[i] * moved[i] * moved[i];
        }

        return sum + misses.Sum(miss => miss * miss);
    }
}
