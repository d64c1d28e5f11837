using BendSheet.Core.Geometry;

namespace BendSheet.Core.Survey;

/// <summary>How something changes with a figure, for one standard deviation of it.</summary>
/// <param name="Figure">Which of the line's.</param>
/// <param name="Slope">In millimetres or radians.</param>
internal readonly record struct FigureSlope(int Figure, double Slope);

/// <summary>How a line's places move with one figure, for one standard deviation of it.</summary>
/// <param name="Points">Each of <see cref="Places.Points"/>; nothing where there is none.</param>
/// <param name="LastDirection">Of the straight at end B.</param>
/// <param name="StartTurning">How the line turns on the car, in the car's axes.</param>
internal sealed record PlaceMotion(Vector3D[] Points, Vector3D LastDirection, Vector3D StartTurning)
{
    /// <summary>The places when the figure is so many standard deviations larger: to first order.</summary>
    public Places Moved(Places at, double by)
    {
        var points = new Vector3D?[Points.Length];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = at.Points[i] is { } point ? point + (by * Points[i]) : null;
        }

        return new(
            points,
            at.LastDirection + (by * LastDirection),
            Moved(at.Start, by));
    }

    /// <summary>How the line then lies on the car.</summary>
    public Frame Moved(Frame start, double by) => start with
    {
        Direction = start.Direction + (by * StartTurning.Cross(start.Direction)),
        Side = start.Side + (by * StartTurning.Cross(start.Side)),
    };
}
