using BendSheet.Core.Geometry;

namespace BendSheet.Core.Survey;

/// <summary>How the places of a line that was measured by its corners move: seen from A, whose frame goes with the first corners.</summary>
internal static class CornerMotions
{
    /// <summary>With each figure.</summary>
    /// <param name="slopes">For each corner: how its forward, left and up change with the figures.</param>
    /// <param name="at">Where the corners are.</param>
    /// <param name="figures">How many there are.</param>
    public static PlaceMotion[] Of(FigureSlope[][][] slopes, Places at, int figures)
    {
        var onCar = new Vector3D[figures][];
        for (var figure = 0; figure < figures; figure++)
        {
            onCar[figure] = new Vector3D[slopes.Length];
        }

        ReadOnlySpan<Vector3D> axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        for (var corner = 0; corner < slopes.Length; corner++)
        {
            for (var axis = 0; axis < axes.Length; axis++)
            {
                foreach (var one in slopes[corner][axis])
                {
                    onCar[one.Figure][corner] += one.Slope * axes[axis];
                }
            }
        }

        return Array.ConvertAll(onCar, moved => SeenFromA(moved, at));
    }

    /// <summary>A stays at the origin, the first corner ahead of it and the second one aside: the frame turns with them.</summary>
    private static PlaceMotion SeenFromA(Vector3D[] onCar, Places at)
    {
        var moved = Array.ConvertAll(onCar, one => InFrame(one - onCar[0], at.Start));
        var (first, second) = (at.Points[1]!.Value, at.Points[2]!.Value);
        var (up, aside) = (moved[1].Y / first.X, -moved[1].Z / first.X);
        var turning = new Vector3D((moved[2].Z + (aside * second.X)) / second.Y, aside, up);
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] -= turning.Cross(at.Points[i]!.Value);
        }

        var last = 1 / at.EndB.DistanceTo(at.Points[^2]!.Value) * (moved[^1] - moved[^2]);
        return new(
            moved,
            last - (last.Dot(at.LastDirection) * at.LastDirection),
            (turning.X * at.Start.Direction) + (turning.Y * at.Start.Side) + (turning.Z * at.Start.Axis));
    }

    private static Vector3D InFrame(Vector3D way, Frame frame) => new(way.Dot(frame.Direction), way.Dot(frame.Side), way.Dot(frame.Axis));
}
