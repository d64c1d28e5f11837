using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Tests.Geometry;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Tests.Survey;

/// <summary>The same corners by routes that share nothing with the program's.</summary>
public class TapedIndependentTests
{
    /// <summary>
    /// The rotation from the volume of the tetrahedron: 288·V² is the Cayley–Menger determinant of its six distances, and V is two thirds
    /// of the product of two faces and the sine of the angle between them, over the edge where they meet.
    /// </summary>
    [Fact]
    public void The_sine_of_the_rotation_is_that_of_the_Cayley_Menger_determinant() => TapedRoute.ClearOf(2, 2).Sample(
        route =>
        {
            var points = route.Points;
            double Squared(int i, int j) => points[i].DistanceTo(points[j]) * points[i].DistanceTo(points[j]);
            var bordered = Matrix<double>.Build.Dense(
                5, 5, (i, j) => i == j ? 0 : i == 4 || j == 4 ? 1 : Squared(i, j) / 1e4);
            var volume = 1e6 * Math.Sqrt(bordered.Determinant() / 288);
            var found = CornerPoints.Read(TapedCornersTests.Corners(route.Needed(), route.Sides));
            var sine = 1.5 * volume * Math.Sqrt(
                Squared(1, 2)) / (Heron(points[0], points[1], points[2]) * Heron(points[1], points[2], points[3]));
            AssertGeometry.Equal(sine, Math.Abs(Math.Sin(found.Rotations[0] * Math.PI / 180)), "sine of the rotation");
        },
        iter: 1000);

    /// <summary>The regular tetrahedron: all six distances alike, the angle between two faces is arccos(1/3) in every handbook.</summary>
    [Fact]
    public void Six_distances_alike_turn_120_and_roll_by_the_angle_of_the_regular_tetrahedron()
    {
        var alike = from i in Enumerable.Range(0, 4) from j in Enumerable.Range(i + 1, 3 - i) select TapedRoute.Taped(i, j, 250);
        var found = CornerPoints.Read(TapedCornersTests.Corners([.. alike], [TapedRoute.Seen(2, Side.Left)]));
        Assert.All(found.Bends, bend => AssertGeometry.Equal(120, bend));
        AssertGeometry.Equal(-Math.Acos(1.0 / 3) * 180 / Math.PI, found.Rotations[0]);
    }

    /// <summary>
    /// Classical multidimensional scaling (Torgerson 1952): the squared distances centred twice are the points' scalar products, and
    /// their three largest eigenvectors are the points, turned somehow and perhaps mirrored.
    /// </summary>
    [Fact]
    public void All_distances_give_what_classical_scaling_gives() => TapedRoute.ClearOf(2, 6).Sample(
        route =>
        {
            var scaled = CornerPoints.Read(Scaled(route.Points));
            var found = CornerPoints.Read(TapedCornersTests.Corners(route.All(), route.Sides));
            var hand = Math.Sign(scaled.Rotations[0] * found.Rotations[0]);
            for (var i = 0; i < scaled.Bends.Length; i++)
            {
                AssertGeometry.Equal(scaled.Legs[i], found.Legs[i], "leg");
                AssertGeometry.Equal(scaled.Bends[i], found.Bends[i], "bend");
                AssertGeometry.Equal(i == 0 ? 0 : hand * scaled.Rotations[i - 1], i == 0 ? 0 : found.Rotations[i - 1], "rotation");
            }

            AssertGeometry.Equal(scaled.Legs[^1], found.Legs[^1], "last leg");
        },
        iter: 500);

    private static double Heron(Vector3D a, Vector3D b, Vector3D c)
    {
        var (x, y, z) = (a.DistanceTo(b), b.DistanceTo(c), c.DistanceTo(a));
        var half = (x + y + z) / 2;
        return Math.Sqrt(half * (half - x) * (half - y) * (half - z));
    }

    private static Vector3D[] Scaled(Vector3D[] points)
    {
        var count = points.Length;
        var squares = Matrix<double>.Build.Dense(count, count, (i, j) => Math.Pow(points[i].DistanceTo(points[j]), 2));
        var centring = Matrix<double>.Build.DenseIdentity(count) - Matrix<double>.Build.Dense(count, count, 1.0 / count);
        var own = (-0.5 * centring * squares * centring).Evd(Symmetricity.Symmetric);
        var largest = Enumerable.Range(count - 3, 3).ToArray();
        double At(int point, int axis) =>
            own.EigenVectors[point, largest[axis]] * Math.Sqrt(Math.Max(0, own.EigenValues[largest[axis]].Real));
        return [.. Enumerable.Range(0, count).Select(point => new Vector3D(At(point, 0), At(point, 1), At(point, 2)))];
    }
}
