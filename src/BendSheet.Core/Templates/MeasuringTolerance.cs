using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>How well a line was measured: one standard deviation of each figure.</summary>
/// <param name="Straight">Of a leg.</param>
/// <param name="Bend">Of a bend.</param>
/// <param name="Rotate">Of a rotation.</param>
public sealed record MeasuringTolerance(Length Straight, Angle Bend, Angle Rotate)
{
    /// <summary>Where a file says nothing. Common practice, no source.</summary>
    public static MeasuringTolerance CommonPractice { get; } =
        new(Length.FromMillimetres(1.5), Angle.FromDegrees(2), Angle.FromDegrees(4));

    /// <summary>Of a distance, and of a part of the way along the car, with a tape. Common practice, no source.</summary>
    public Length Tape { get; init; } = Length.FromMillimetres(1.5);

    /// <summary>How well a straight edge lies along end A's straight. Common practice, no source.</summary>
    public Angle Square { get; init; } = Angle.FromDegrees(0.5);
}
