using System.Globalization;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests;

/// <summary>The one place where figures are compared, with one tolerance for figures computed by two routes.</summary>
internal static class AssertGeometry
{
    /// <summary>A part of the larger figure, or of 1 where that is smaller: far above what doubles lose, far below any slip.</summary>
    private const double Tolerance = 1e-9;

    public static void Equal(double expected, double actual, string what = "figure") =>
        Near(expected, actual, Tolerance * Math.Max(1, Math.Abs(expected)), what);

    public static void Equal(Length expected, Length actual, string what = "length") =>
        Equal(expected.Millimetres, actual.Millimetres, what);

    public static void Equal(Angle expected, Angle actual, string what = "angle") => Equal(expected.Degrees, actual.Degrees, what);

    public static void Equal(Vector3D expected, Vector3D actual, string what = "point") => Equal([expected], [actual], what);

    /// <summary>The points of a line against those of another; the tolerance is a part of the line's size.</summary>
    public static void Equal(IReadOnlyList<Vector3D> expected, IReadOnlyList<Vector3D> actual, string what = "point")
    {
        Assert.Equal(expected.Count, actual.Count);
        var size = expected.Max(point => point.Norm);
        for (var i = 0; i < expected.Count; i++)
        {
            var distance = expected[i].DistanceTo(actual[i]);
            Assert.True(
                distance <= Tolerance * Math.Max(1, size),
                $"{what} {i}, at the end of leg {i}: expected {expected[i]}, was {actual[i]}, {Text(distance)} mm away");
        }
    }

    /// <summary>The same direction, whatever number of full turns lies between.</summary>
    public static void SameDirection(Angle expected, Angle actual, string what = "direction")
    {
        var difference = (expected + -actual).OnDial().Degrees;
        Near(0, Math.Min(difference, 360 - difference), Tolerance * 360, what);
    }

    /// <summary>Not larger, but for what doubles lose.</summary>
    public static void AtMost(double limit, double actual, string what = "figure") => Assert.True(
        actual <= limit + (Tolerance * Math.Max(1, Math.Abs(limit))), $"{what}: at most {Text(limit)}, was {Text(actual)}");

    /// <summary>A rounded figure as it stands in print: within half of its last printed unit.</summary>
    public static void Printed(string printed, double actual, string what = "figure") =>
        Near(Number(printed), actual, HalfOf(LastUnit(printed)), what);

    /// <summary>Half of a printed step. Where two steps are equally near, to a millionth of a step, print may take either.</summary>
    public static double HalfOf(double step) => (0.5 + 1e-6) * step;

    /// <summary>A figure that the print sometimes cuts off and sometimes rounds: within one of its last printed unit.</summary>
    public static void PrintedCutOff(string printed, double actual, string what = "figure") =>
        Near(Number(printed), actual, LastUnit(printed) + Tolerance, what);

    /// <summary>A printed figure that the print itself reckoned from rounded ones.</summary>
    /// <param name="printed">The result as printed.</param>
    /// <param name="actual">What the core finds.</param>
    /// <param name="roundedBefore">The sum of what the rounded inputs of the print can add up to, in the same unit.</param>
    /// <param name="what">Named in the message.</param>
    public static void PrintedFromRounded(string printed, double actual, double roundedBefore, string what = "figure") =>
        Near(Number(printed), actual, roundedBefore + (0.5 * LastUnit(printed)), what);

    public static double Number(string printed) => double.Parse(printed, CultureInfo.InvariantCulture);

    /// <summary>What one unit of the last digit is worth: 0.01 in 28.26.</summary>
    public static double LastUnit(string printed)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 1 : Math.Pow(10, point + 1 - printed.Length);
    }

    private static void Near(double expected, double actual, double allowed, string what) => Assert.True(
        Math.Abs(expected - actual) <= allowed,
        $"{what}: expected {Text(expected)}, was {Text(actual)}, {Text(Math.Abs(expected - actual))} "
            + $"apart where {Text(allowed)} is allowed");

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
