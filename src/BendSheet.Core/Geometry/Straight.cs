using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A straight piece of the tube's centreline.</summary>
/// <param name="Start">Its first point and the way it goes.</param>
/// <param name="Length">Zero or more.</param>
public sealed record Straight(Frame Start, Length Length)
{
    /// <summary>Its last point.</summary>
    public Vector3D End => Start.Advanced(Length).Position;
}
