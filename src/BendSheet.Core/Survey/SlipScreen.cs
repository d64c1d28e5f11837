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
    private readonly Cholesky<double> _normal;

    private SlipScreen(double[][] rows, int figures)
    {
        _rows = rows;
        _normal = Adjustment.Normal([.. Enumerable.Repeat(1.0, figures)], rows).Cholesky();
    }

    /// <summary>Around a line; null where it has no shape.</summary>
    public static SlipScreen? Around(ObservedLine line, double[] typed, IReadOnlyList<WeighedQuantity> beside) =>
        PlaceSlopes.Near(line, typed) is { } slopes ? new([.. beside.Select(one => Adjustment.Row(slopes, one))], slopes.Count) : null;

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

    private double[] Forces(double[] misses)
    {
        var moved = _normal.Solve(Vector<double>.Build.DenseOfArray(Adjustment.Sum(_rows, misses, _normal.Factor.RowCount))).AsArray();
        return [.. misses.Select((miss, i) => miss - Adjustment.Dot(_rows[i], moved))];
    }
}
