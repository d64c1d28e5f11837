using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fittings;

/// <summary>How a port lies on the car.</summary>
/// <param name="Position">Forward, left and up from one corner of the owner's choosing, in millimetres; null where nobody said.</param>
/// <param name="Facing">The way a line leaves it, length 1; null where nobody said.</param>
/// <param name="At">Where it was typed.</param>
public sealed record PortLie(Vector3D? Position, Vector3D? Facing, SourcePosition At)
{
    /// <summary>
    /// One standard deviation of a place along each axis, found with tape and square from a corner of the car: common practice, no source.
    /// </summary>
    public static Length UsualWithin { get; } = Length.FromMillimetres(5);

    /// <summary>How well a port faces the way that was typed, one standard deviation: common practice, no source.</summary>
    public static Angle UsualAim { get; } = Angle.FromDegrees(2);

    /// <summary>One standard deviation along each axis.</summary>
    public Length Within { get; init; } = UsualWithin;
}
