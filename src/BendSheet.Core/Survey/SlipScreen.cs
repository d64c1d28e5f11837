using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BendSheet.Core.Survey;

/// <summary>
/// How badly a line and what was measured beside it would agree, without adjusting them: what the quantities miss on the line as it was
/// typed, weighed by how much its figures may move them.
/// </summary>
/// <remarks>
/// To first order the sum of squares after the adjustment is mᵀ·(I + A·Aᵀ)⁻¹·m, with m the misses and A their slopes; and
/// (I + A·Aᵀ)⁻¹ = I − A·(I + Aᵀ·A)⁻¹·Aᵀ (the Woodbury identity, any text on matrices), as large as there are figures, however much
/// is measured beside them.
/// </remarks>
internal sealed class SlipScreen
{
    private readonly double[][] _rows;
    private readonly double[] _misses;
    private readonly double[] _forces;
    private readonly Cholesky<double> _normal;

    private SlipScreen(double[][] rows, double[] misses, int figures)
    {
        _rows = rows;
        _normal = NormalEquations.Of([.. Enumerable.Repeat(1.0, figures)], rows);
        _misses = misses;
        _forces = Forces(misses);
    }

    /// <summary>The sum of squares that an adjustment would come to.</summary>
    public double ChiSquare => NormalEquations.Dot(_misses, _forces);

    /// <summary>Around a line; null where it has no shape.</summary>
    public static SlipScreen? Around(ObservedLine line, double[] typed, IReadOnlyList<WeighedQuantity> beside) =>
        PlaceSlopes.Near(line, typed) is { } slopes
            ? new(Adjustment.RowsOf(slopes, beside), Adjustment.MissesOf(slopes.At, beside), slopes.Count)
            : null;

    /// <summary>The same if the misses were others.</summary>
    public double ChiSquareOf(double[] misses) => NormalEquations.Dot(misses, Forces(misses));

    /// <summary>
    /// What other misses come to by themselves, each weighed by how far the typed figures alone let it be off: quick, and near enough
    /// to tell the few lines that come anywhere near what was measured.
    /// </summary>
    public double Unadjusted(double[] misses) => _rows.Zip(misses, (row, miss) => miss * miss / (1 + NormalEquations.Dot(row, row))).Sum();

    /// <summary>The same if one figure were not believed.</summary>
    public double ChiSquareWithoutFigure(int figure)
    {
        double[] column = [.. _rows.Select(row => row[figure])];
        var own = NormalEquations.Dot(column, Forces(column));
        return ChiSquare - (own > 0 ? Squared(NormalEquations.Dot(column, _forces)) / own : 0);
    }

    /// <summary>The same if one quantity were not believed, and if it were read so many of its deviations more.</summary>
    /// <param name="quantity">Which.</param>
    public (double Without, Func<double, double> Read) ChiSquareOfQuantity(int quantity)
    {
        var row = _rows[quantity];
        var own = 1 - NormalEquations.Dot(row, Solved(row));
        return (ChiSquare - (Squared(_forces[quantity]) / own), more => ChiSquare + (2 * more * _forces[quantity]) + (more * more * own));
    }

    private static double Squared(double value) => value * value;

    private double[] Forces(double[] misses)
    {
        var moved = Solved(NormalEquations.Sum(_rows, misses, _normal.Factor.RowCount));
        return [.. misses.Select((miss, i) => miss - NormalEquations.Dot(_rows[i], moved))];
    }

    private double[] Solved(double[] right) => _normal.Solve(Vector<double>.Build.DenseOfArray(right)).AsArray();
}
