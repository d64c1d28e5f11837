using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests;

/// <summary>How a point moves with a figure, found by changing the figure a little both ways.</summary>
internal static class Slope
{
    /// <summary>Central differences of two steps; Richardson takes out their common error in step².</summary>
    public static Vector3D Of(Func<double, Vector3D> point, double step)
    {
        var (coarse, fine) = (Central(point, step), Central(point, step / 2));
        return (1.0 / 3) * ((4 * fine) - coarse);
    }

    private static Vector3D Central(Func<double, Vector3D> point, double step) => (0.5 / step) * (point(step) - point(-step));
}
