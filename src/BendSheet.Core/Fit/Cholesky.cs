namespace BendSheet.Core.Fit;

/// <summary>
/// The triangle L with L·Lᵀ = a symmetric matrix. Says whether there is one instead of throwing, which the steps of
/// <see cref="Reconciliation"/> need at every turn.
/// </summary>
internal sealed class Cholesky(int size)
{
    private readonly double[][] _lower = [.. Enumerable.Range(0, size).Select(row => new double[row + 1])];

    /// <summary>Takes the matrix apart, with something added to its diagonal.</summary>
    /// <returns>False where it is not positive definite, or not a number.</returns>
    public bool Of(double[,] symmetric, double added)
    {
        for (var i = 0; i < _lower.Length; i++)
        {
            var row = _lower[i];
            for (var j = 0; j <= i; j++)
            {
                var other = _lower[j];
                var rest = symmetric[i, j] + (i == j ? added : 0);
                for (var k = 0; k < j; k++)
                {
                    rest -= row[k] * other[k];
                }

                if (i > j)
                {
                    row[j] = rest / other[j];
                }
                else if (rest > 0 && double.IsFinite(rest))
                {
                    row[i] = Math.Sqrt(rest);
                }
                else
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>x of L·Lᵀ·x = b.</summary>
    public double[] Solve(double[] right)
    {
        var x = Forward(right);
        for (var i = x.Length - 1; i >= 0; i--)
        {
            x[i] /= _lower[i][i];
            for (var k = 0; k < i; k++)
            {
                x[k] -= _lower[i][k] * x[i];
            }
        }

        return x;
    }

    /// <summary>y of L·y = b.</summary>
    public double[] Forward(double[] right)
    {
        var y = new double[right.Length];
        for (var i = 0; i < y.Length; i++)
        {
            var rest = right[i];
            for (var k = 0; k < i; k++)
            {
                rest -= _lower[i][k] * y[k];
            }

            y[i] = rest / _lower[i][i];
        }

        return y;
    }
}
