using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;
using Two = System.Runtime.Intrinsics.Vector128<double>;

namespace BendSheet.Core.Survey;

/// <summary>What an adjustment reckons with rows of slopes: sums, products, and the normal equations with their factors.</summary>
internal static class NormalEquations
{
    /// <summary>The scalar product, two terms at a time on every processor, so that each comes to the same last digit.</summary>
    public static double Dot(double[] a, double[] b)
    {
        var some = MemoryMarshal.Cast<double, Two>(a);
        var others = MemoryMarshal.Cast<double, Two>(b);
        var sums = Two.Zero;
        for (var i = 0; i < some.Length; i++)
        {
            sums += some[i] * others[i];
        }

        var sum = Vector128.Sum(sums);
        for (var i = some.Length * Two.Count; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>The normal equations of rows of slopes, with the weights of the figures: symmetric.</summary>
    public static Cholesky<double> Of(double[] weights, double[][] rows)
    {
        // Column by column, as the library keeps a matrix.
        var normal = new double[weights.Length * weights.Length];
        foreach (var row in rows)
        {
            for (var i = 0; i < row.Length; i++)
            {
                // A figure beyond both ends of a quantity does not move it.
                if (row[i] != 0)
                {
                    AddTo(normal.AsSpan(i * row.Length, i + 1), row[i], row);
                }
            }
        }

        for (var i = 0; i < weights.Length; i++)
        {
            normal[(i * weights.Length) + i] += weights[i];
            for (var k = 0; k < i; k++)
            {
                normal[(k * weights.Length) + i] = normal[(i * weights.Length) + k];
            }
        }

        return Factored(Matrix<double>.Build.Dense(weights.Length, weights.Length, normal));
    }

    /// <summary>
    /// The factors. Where rows say so much more than the figures that the figures' own weights are lost in the last digits, a little of the
    /// largest diagonal entry is added to all, which holds what nothing determines.
    /// </summary>
    private static Cholesky<double> Factored(Matrix<double> normal)
    {
        for (var held = 0.0; ; held = held == 0 ? 1e-15 : held * 100)
        {
            try
            {
                return (held == 0 ? normal : normal + More(held)).Cholesky();
            }
            catch (ArgumentException) when (held < 1e-6)
            {
                // How the library says that the matrix is not positive definite.
            }
        }

        Matrix<double> More(double held) =>
            held * normal.Diagonal().AbsoluteMaximum() * Matrix<double>.Build.DenseIdentity(normal.RowCount);
    }

    /// <summary>The sum of rows, each so many times.</summary>
    public static double[] Sum(double[][] rows, double[] times, int length)
    {
        var sum = new double[length];
        for (var k = 0; k < rows.Length; k++)
        {
            AddTo(sum, times[k], rows[k]);
        }

        return sum;
    }

    /// <summary>Adds a row, so many times, to a sum that may be shorter.</summary>
    private static void AddTo(Span<double> sum, double times, ReadOnlySpan<double> row)
    {
        var sums = MemoryMarshal.Cast<double, Two>(sum);
        var parts = MemoryMarshal.Cast<double, Two>(row);
        for (var i = 0; i < sums.Length; i++)
        {
            sums[i] += times * parts[i];
        }

        for (var i = sums.Length * Two.Count; i < sum.Length; i++)
        {
            sum[i] += times * row[i];
        }
    }
}
