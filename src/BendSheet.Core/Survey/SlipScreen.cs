using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BendSheet.Core.Survey;

/// <summary>
/// How badly a line and what was measured beside it would agree, without adjusting them: what the quantities miss on the line as it was
/// typed, weighed by how much its figures may move them.
/// </summary>
/// <remarks>To first order the sum of squares after the adjustment is mᵀ·(I + A·Aᵀ)⁻¹·m, with m the misses and A their slopes.</remarks>
internal sealed class SlipScreen
{
    private readonly double[][] _rows;
    private readonly Cholesky<double> _spread;

    private SlipScreen(double[][] rows)
    {
        _rows = rows;
        _spread = Matrix<double>.Build.Dense(
            rows.Length, rows.Length, (i, j) => Adjustment.Dot(rows[i], rows[j]) + (i == j ? 1 : 0)).Cholesky();
    }

    /// <summary>Around a line; null where it has no shape.</summary>
    public static SlipScreen? Around(ObservedLine line, double[] typed, IReadOnlyList<WeighedQuantity> beside) =>
        PlaceSlopes.Near(line, typed) is { } slopes ? new([.. beside.Select(one => Adjustment.Row(slopes, one))]) : null;

    /// <summary>The sum of squares that an adjustment would come to.</summary>
    public double ChiSquare(double[] misses) => Adjustment.Dot(misses, Forces(misses));

    /// <summary>The same if one figure were not believed.</summary>
    public double ChiSquareWithoutFigure(double[] misses, int figure)
    {
        double[] column = [.. _rows.Select(row => row[figure])];
        var (forces, own) = (Forces(misses), Adjustment.Dot(column, Forces(column)));
        return Adjustment.Dot(misses, forces) - (own > 0 ? Squared(Adjustment.Dot(column, forces)) / own : 0);
    }

    /// <summary>The same if one quantity were not believed.</summary>
    public double ChiSquareWithout(double[] misses, int quantity)
    {
        var unit = new double[misses.Length];
        unit[quantity] = 1;
        var forces = Forces(misses);
        return Adjustment.Dot(misses, forces) - (Squared(forces[quantity]) / Forces(unit)[quantity]);
    }

    private static double Squared(double value) => value * value;

    private double[] Forces(double[] misses) => _spread.Solve(Vector<double>.Build.DenseOfArray(misses)).AsArray();
}
