using System.Collections.Immutable;
using BendSheet.Core.Templates;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>A quantity measured on a piece, for its estimate.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">As it was read, in millimetres or radians.</param>
/// <param name="Deviation">One standard deviation, in the same unit, above zero.</param>
internal readonly record struct WeighedPiece(PieceQuantity Quantity, double Value, double Deviation);

/// <summary>
/// What a piece most probably is, from what was measured on it and how hands scatter, with or without one mistake beyond that.
/// </summary>
/// <remarks>
/// The errors x have a covariance S, the measurements R, and A is how these change with those: C = R + A·S·Aᵀ and x = S·Aᵀ·C⁻¹·r
/// (least squares with prior knowledge; Gauss and Newton's method where it is not linear). How well an explanation fits is
/// rᵀ·C⁻¹·r + log det C, twice the negative logarithm of its likelihood: it charges an explanation for all that it could have explained
/// as well. How steady the hands were is not known beforehand, and is tried.
/// </remarks>
internal sealed class PieceEstimate
{
    private const int Steps = 6;

    /// <summary>Less than this, in millimetres or radians, changes nothing.</summary>
    private const double Converged = 1e-5;

    /// <summary>How steady the hands may have been: factors on their scatter, all of them tried.</summary>
    private static readonly double[] Steadiness = [0.1, 0.35, 1, 2];

    private readonly Matrix<double> _covariance;
    private readonly Matrix<double> _slopes;
    private readonly double _steady;

    private PieceEstimate(
        double[] errors, PiecePlaces places, double misfit, Matrix<double> covariance, Matrix<double> slopes, double steady)
    {
        Errors = errors;
        Places = places;
        Misfit = misfit;
        _covariance = covariance;
        _slopes = slopes;
        _steady = steady;
    }

    /// <summary>For each error of the piece, in millimetres or radians.</summary>
    public double[] Errors { get; }

    /// <summary>The piece with them.</summary>
    public PiecePlaces Places { get; }

    /// <summary>Twice the negative logarithm of the likelihood: the less, the better it explains what was measured.</summary>
    public double Misfit { get; }

    /// <summary>The best estimate with a mistake, or without one.</summary>
    /// <param name="piece">With its errors.</param>
    /// <param name="measured">On it.</param>
    /// <param name="cause">A mistake; null for none.</param>
    /// <param name="size">About how large the mistake is, in millimetres or radians.</param>
    public static PieceEstimate Of(BentPiece piece, IReadOnlyList<WeighedPiece> measured, PieceCause? cause = null, double size = 0)
    {
        var errors = cause?.Errors(piece, size) ?? new double[piece.Errors.Length];
        double[] Read(PiecePlaces places) => [.. measured.Select(one => places.ValueOf(one.Quantity) / one.Deviation)];
        for (var step = 0; ; step++)
        {
            var places = piece.With(errors);
            var slopes = Slopes(piece, places, measured);
            var residuals = Residuals(measured, Read(places));
            var linear = residuals + (slopes * Vector<double>.Build.DenseOfArray(errors));
            var solved = Steadiness.Select(steady => new Solved(piece, slopes, linear, cause, steady)).MinBy(one => one.Misfit)!;
            var before = errors;
            errors = solved.Errors();
            if (step == Steps || errors.Zip(before, (now, then) => Math.Abs(now - then)).Max() < Converged)
            {
                return new(errors, piece.With(errors), solved.Misfit, solved.Covariance(), slopes, solved.Steady);
            }
        }
    }

    /// <summary>A piece on which nothing was measured: as the sheet has it, as sure as hands are.</summary>
    public static PieceEstimate Unmeasured(BentPiece piece) => new(
        new double[piece.Errors.Length],
        piece.Nominal,
        0,
        Matrix<double>.Build.DenseOfDiagonalArray([.. piece.Errors.Select(error => error.Scatter * error.Scatter)]),
        Matrix<double>.Build.Dense(1, piece.Errors.Length),
        1);

    /// <summary>About how large a mistake would be and how well it would explain what was measured, without working it out.</summary>
    public (double Size, double Misfit) Screen(BentPiece piece, IReadOnlyList<WeighedPiece> measured, PieceCause cause)
    {
        double[] sizes = cause.Way.IsEmpty ? [0] : [0, 0.35 * cause.Wide, -0.35 * cause.Wide, 0.7 * cause.Wide, -0.7 * cause.Wide];
        return sizes.Select(size =>
        {
            var errors = cause.Errors(piece, size);
            var places = piece.With(errors);
            var residuals = Residuals(measured, [.. measured.Select(one => places.ValueOf(one.Quantity) / one.Deviation)]);
            var linear = residuals + (_slopes * Vector<double>.Build.DenseOfArray(errors));
            return (size, new Solved(piece, _slopes, linear, cause, _steady).Misfit);
        }).MinBy(one => one.Misfit);
    }

    /// <summary>How sure something is that follows from the errors: its variance.</summary>
    /// <param name="slope">How it changes with each of them.</param>
    public double Variance(double[] slope)
    {
        var vector = Vector<double>.Build.DenseOfArray(slope);
        return Math.Max(0, vector * (_covariance * vector));
    }

    /// <summary>How what was measured changes with the errors, in its own deviations.</summary>
    private static Matrix<double> Slopes(BentPiece piece, PiecePlaces places, IReadOnlyList<WeighedPiece> measured)
    {
        var motions = piece.Motions(places);
        return Matrix<double>.Build.Dense(
            measured.Count, motions.Length, (i, k) => motions[k].Of(measured[i].Quantity, places) / measured[i].Deviation);
    }

    private static Vector<double> Residuals(IReadOnlyList<WeighedPiece> measured, double[] now) => Vector<double>.Build.Dense(
        measured.Count, i => Difference(measured[i].Value / measured[i].Deviation, now[i], measured[i]));

    /// <summary>A full turn more or less is the same angle.</summary>
    private static double Difference(double value, double now, WeighedPiece one) => one.Quantity.IsAngle
        ? Math.IEEERemainder(value - now, 2 * Math.PI / one.Deviation)
        : value - now;

    /// <summary>The linear problem, for one steadiness of the hands.</summary>
    private sealed class Solved
    {
        private readonly Matrix<double> _spread;
        private readonly ImmutableArray<PieceError> _errors;
        private readonly PieceCause? _cause;
        private readonly Matrix<double> _gain;
        private readonly Vector<double> _linear;

        public Solved(BentPiece piece, Matrix<double> slopes, Vector<double> linear, PieceCause? cause, double steady)
        {
            (_linear, Steady) = (linear, steady);
            (_errors, _cause) = (piece.Errors, cause);
            _spread = Matrix<double>.Build.Dense(
                slopes.RowCount, slopes.ColumnCount, (i, k) => slopes[i, k] * steady * steady * Squared(_errors[k].Scatter));
            foreach (var (first, part) in cause?.Way ?? [])
            {
                foreach (var (second, other) in cause!.Way)
                {
                    for (var i = 0; i < slopes.RowCount; i++)
                    {
                        _spread[i, second] += slopes[i, first] * Squared(cause.Wide) * part * other;
                    }
                }
            }

            var covariance = _spread.TransposeAndMultiply(slopes) + Matrix<double>.Build.DenseIdentity(linear.Count);
            if (cause is { Kind: PieceCauseKind.Misread, Bend: var misread, Wide: var wide })
            {
                covariance[misread, misread] += wide * wide;
            }

            var factor = covariance.Cholesky();
            Misfit = (linear * factor.Solve(linear)) + factor.DeterminantLn;
            _gain = factor.Solve(_spread).Transpose();
        }

        public double Misfit { get; }

        public double Steady { get; }

        public double[] Errors() => (_gain * _linear).ToArray();

        /// <summary>Of the errors, once what was measured is known.</summary>
        public Matrix<double> Covariance()
        {
            var prior = Matrix<double>.Build.DenseOfDiagonalArray(
                [.. _errors.Select(error => Squared(Steady) * Squared(error.Scatter))]);
            foreach (var (first, part) in _cause?.Way ?? [])
            {
                foreach (var (second, other) in _cause!.Way)
                {
                    prior[first, second] += Squared(_cause.Wide) * part * other;
                }
            }

            return prior - (_gain * _spread);
        }

        private static double Squared(double value) => value * value;
    }
}
