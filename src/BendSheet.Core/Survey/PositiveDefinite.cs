using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace BendSheet.Core.Survey;

/// <summary>Factors symmetric matrices, and says where that cannot be done instead of throwing.</summary>
internal static class PositiveDefinite
{
    /// <summary>
    /// The factors of a matrix with something added to its diagonal; null where it is not positive definite, or not a number.
    /// </summary>
    public static Cholesky<double>? Factor(double[,] symmetric, double added)
    {
        var matrix = Matrix<double>.Build.DenseOfArray(symmetric);
        for (var i = 0; i < matrix.RowCount; i++)
        {
            matrix[i, i] += added;
        }

        try
        {
            return matrix.Cholesky();
        }
        catch (ArgumentException)
        {
            // How the library says that the matrix is not positive definite.
            return null;
        }
    }

    /// <summary>x of matrix · x = right.</summary>
    public static double[] Solve(Cholesky<double> factor, double[] right) => factor.Solve(Vector<double>.Build.Dense(right)).AsArray();
}
