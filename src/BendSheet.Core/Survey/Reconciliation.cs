using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A distance between two corners, in millimetres.</summary>
/// <param name="From">The corner with the lower number.</param>
/// <param name="To">The other one.</param>
/// <param name="Millimetres">As it was read.</param>
/// <param name="Weight">How much it counts beside one that is as sure as the tape: one over the variance, in the tape's.</param>
internal readonly record struct TapedSpan(int From, int To, double Millimetres, double Weight);

/// <summary>
/// Corner points that miss the distances by the least sum of squares near a start: Newton's method on the coordinates, damped as
/// Levenberg and Marquardt do.
/// </summary>
/// <remarks>
/// With u the direction from one corner to the other and r how much the distance is too long, a distance adds r·u to the gradient and
/// u·uᵀ + (r/d)·(I − u·uᵀ) to the second derivatives. The second part is left out by Gauss and Newton; here it is kept, because near a
/// flat shape u·uᵀ says nothing about the coordinate out of the plane. Each distance touches six coordinates, so that the matrix is summed
/// up in no time; a general minimizer with a full Jacobian would spend a hundred times as long.
/// Damping as in K. Madsen, H. B. Nielsen, O. Tingleff, Methods for Non-Linear Least Squares Problems (2nd edition, 2004), section 3.2.
/// </remarks>
internal static class Reconciliation
{
    private const int MostSteps = 200;
    private const double MostDamping = 1e9;

    /// <summary>Steps shorter than this change nothing that anybody could measure; in millimetres.</summary>
    private const double Step = 1e-10;

    /// <summary>
    /// A step that promises a gain below this part of the misfit moves the corners by less than the last digits of the slopes.
    /// </summary>
    public const double LastDigits = 1e-20;

    /// <summary>The last steps still improve the corners where the sum no longer shows it; it may look worse by its own rounding.</summary>
    private const double SumRounding = 1e-13;

    /// <summary>
    /// The weighed sum of the squares of what the distances miss, in mm²; infinite where points are not numbers, so that none is lower.
    /// </summary>
    public static double Misfit(ReadOnlySpan<Vector3D> points, IReadOnlyList<TapedSpan> spans)
    {
        var sum = 0.0;
        for (var i = 0; i < spans.Count; i++)
        {
            var missing = points[spans[i].From].DistanceTo(points[spans[i].To]) - spans[i].Millimetres;
            sum += spans[i].Weight * missing * missing;
        }

        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }

    /// <summary>Moves the free coordinates to where the misfit is least; never to where it is more than before.</summary>
    /// <param name="points">The start, and what is found.</param>
    /// <param name="spans">The distances to meet.</param>
    /// <param name="free">The coordinates that may move, each 3 × corner + axis.</param>
    /// <param name="allowed">Steps to points that are not allowed are not taken, so that it ends where such points begin; null allows
    /// all.</param>
    /// <param name="leastGain">It goes no further where a step promises less than this part of the misfit.</param>
    /// <returns>The misfit reached.</returns>
    public static double Refine(
        Vector3D[] points, IReadOnlyList<TapedSpan> spans, int[] free, Predicate<Vector3D[]>? allowed = null, double leastGain = LastDigits)
    {
        var row = new int[3 * points.Length];
        Array.Fill(row, -1);
        for (var i = 0; i < free.Length; i++)
        {
            row[free[i]] = i;
        }

        var misfit = Misfit(points, spans);
        var damping = 1e-3;
        var curvature = new double[free.Length, free.Length];
        var tried = new Vector3D[points.Length];
        for (var steps = 0; steps < MostSteps && damping < MostDamping; steps++)
        {
            var gradient = Derivatives(points, spans, row, curvature);
            while (damping < MostDamping)
            {
                if (PositiveDefinite.Factor(curvature, damping) is { } factor)
                {
                    var step = PositiveDefinite.Solve(factor, gradient);
                    var length = Math.Sqrt(step.Sum(part => part * part));
                    var done = length < Step || gradient.Zip(step, (slope, part) => slope * part).Sum() < leastGain * misfit;
                    Move(points, step, free, tried);
                    var reached = Misfit(tried, spans);
                    if (reached < double.PositiveInfinity && reached <= misfit * (1 + SumRounding) && allowed?.Invoke(tried) != false)
                    {
                        tried.CopyTo(points, 0);
                        misfit = reached;
                        damping /= 10;
                        if (done)
                        {
                            return misfit;
                        }

                        break;
                    }

                    if (done)
                    {
                        return misfit;
                    }
                }

                damping *= 10;
            }
        }

        return misfit;
    }

    /// <summary>
    /// The coordinates that are not held by the frame: end A at the origin, the first leg along X, the first bend in the XY plane.
    /// </summary>
    public static int[] FreeIn(int points) => [.. Enumerable.Range(0, 3 * points).Where(at => at is 3 or 6 or 7 or > 8)];

    private static double[] Derivatives(Vector3D[] points, IReadOnlyList<TapedSpan> spans, int[] row, double[,] curvature)
    {
        Array.Clear(curvature);
        var gradient = new double[curvature.GetLength(0)];
        Span<double> u = stackalloc double[3];
        for (var k = 0; k < spans.Count; k++)
        {
            var (from, to, measured, weight) = spans[k];
            var way = points[from] - points[to];
            var distance = way.Norm;
            if (distance < Tolerances.SamePoint.Millimetres)
            {
                continue;
            }

            (u[0], u[1], u[2]) = (way.X / distance, way.Y / distance, way.Z / distance);
            var bending = (distance - measured) / distance;
            for (var a = 0; a < 3; a++)
            {
                var (rowFrom, rowTo) = (row[(3 * from) + a], row[(3 * to) + a]);
                Add(gradient, rowFrom, weight * (distance - measured) * u[a]);
                Add(gradient, rowTo, weight * (measured - distance) * u[a]);
                for (var b = 0; b < 3; b++)
                {
                    var part = weight * ((u[a] * u[b] * (1 - bending)) + (a == b ? bending : 0));
                    var (columnFrom, columnTo) = (row[(3 * from) + b], row[(3 * to) + b]);
                    Add(curvature, rowFrom, columnFrom, part);
                    Add(curvature, rowTo, columnTo, part);
                    Add(curvature, rowFrom, columnTo, -part);
                    Add(curvature, rowTo, columnFrom, -part);
                }
            }
        }

        return gradient;
    }

    private static void Add(double[] gradient, int row, double part)
    {
        if (row >= 0)
        {
            gradient[row] += part;
        }
    }

    private static void Add(double[,] curvature, int row, int column, double part)
    {
        if (row >= 0 && column >= 0)
        {
            curvature[row, column] += part;
        }
    }

    private static void Move(Vector3D[] points, double[] step, int[] free, Vector3D[] moved)
    {
        points.CopyTo(moved, 0);
        for (var i = 0; i < free.Length; i++)
        {
            ref var point = ref moved[free[i] / 3];
            point = (free[i] % 3) switch
            {
                0 => point with { X = point.X - step[i] },
                1 => point with { Y = point.Y - step[i] },
                _ => point with { Z = point.Z - step[i] },
            };
        }
    }
}
