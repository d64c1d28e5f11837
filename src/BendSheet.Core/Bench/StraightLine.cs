using MathNet.Numerics.Distributions;

namespace BendSheet.Core.Bench;

/// <summary>A straight line y = a + s·x through measured points, by least squares of the errors in y.</summary>
/// <remarks>
/// Gauss's normal equations, about the means, which loses fewer digits; residual deviation with n − 2 degrees of freedom and prediction
/// interval from NIST/SEMATECH e-Handbook of Statistical Methods, section 4.5.1.2 (single new observation).
/// </remarks>
/// <param name="Intercept">y where x is 0.</param>
/// <param name="Slope">y for one x more.</param>
/// <param name="Points">How many, at least 2.</param>
/// <param name="MeanX">Mean of x.</param>
/// <param name="SpreadX">Sum of the squared distances of x from its mean, above zero.</param>
/// <param name="ResidualDeviation">Standard deviation of y about the line; null where only two points leave nothing to see it by.</param>
public sealed record StraightLine(double Intercept, double Slope, int Points, double MeanX, double SpreadX, double? ResidualDeviation)
{
    /// <summary>The line through two or more points that do not all have the same x.</summary>
    /// <exception cref="ArgumentException">All points have the same x.</exception>
    public static StraightLine Through(IReadOnlyCollection<(double X, double Y)> points)
    {
        var meanX = points.Sum(point => point.X) / points.Count;
        var meanY = points.Sum(point => point.Y) / points.Count;
        var spreadX = points.Sum(point => (point.X - meanX) * (point.X - meanX));
        if (!(spreadX > 0))
        {
            throw new ArgumentException("Points at one x leave the slope open.", nameof(points));
        }

        var slope = points.Sum(point => (point.X - meanX) * (point.Y - meanY)) / spreadX;
        var squares = points.Sum(point => Square(point.Y - meanY - (slope * (point.X - meanX))));
        var freedom = points.Count - 2;
        return new(meanY - (slope * meanX), slope, points.Count, meanX, spreadX, freedom > 0 ? Math.Sqrt(squares / freedom) : null);
    }

    /// <summary>y on the line.</summary>
    public double At(double x) => Intercept + (Slope * x);

    /// <summary>How far to either side of the line one new measurement lies with this probability; null with only two points.</summary>
    public double? PredictionHalfWidth(double x, double probability) => ResidualDeviation is { } deviation
        ? TwoSided(probability, Points - 2) * deviation * Math.Sqrt(1 + (1.0 / Points) + (Square(x - MeanX) / SpreadX))
        : null;

    /// <summary>
    /// What that would come to with one point more, at that x, that scatters as the others do; null with only two points.
    /// </summary>
    public double? HalfWidthWithOneMore(double x, double probability)
    {
        if (ResidualDeviation is not { } deviation)
        {
            return null;
        }

        var points = Points + 1;
        var mean = MeanX + ((x - MeanX) / points);
        var spread = SpreadX + ((x - MeanX) * (x - mean));
        return TwoSided(probability, points - 2) * deviation * Math.Sqrt(1 + (1.0 / points) + (Square(x - mean) / spread));
    }

    /// <summary>Student's t for both sides together.</summary>
    private static double TwoSided(double probability, int freedom) => StudentT.InvCDF(0, 1, freedom, (1 + probability) / 2);

    private static double Square(double value) => value * value;
}
