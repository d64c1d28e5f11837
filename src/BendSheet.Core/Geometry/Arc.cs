using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A bend of the tube's centreline: an arc of a circle.</summary>
/// <param name="Start">Its first point; the arc turns from the direction to the side.</param>
/// <param name="Radius">To the centreline, above zero.</param>
/// <param name="Turn">Above 0°, at most 360°.</param>
public sealed record Arc(Frame Start, Length Radius, Angle Turn)
{
    /// <summary>The frame where the bend ends.</summary>
    public Frame End => Start.Bent(Radius, Turn);

    /// <summary>The circle's centre.</summary>
    public Vector3D Centre => Start.Position + (Radius.Millimetres * Start.Side);

    /// <summary>Length along the centreline: radius times angle.</summary>
    public Length Length => Turn.Radians * Radius;

    /// <summary>Where the two straights beside it would meet; null from 180° on.</summary>
    public Vector3D? Corner => Turn < Tolerances.NoCorner ? Start.Advanced(Math.Tan(Turn.Radians / 2) * Radius).Position : null;

    /// <summary>The point reached after turning so far from the start.</summary>
    /// <param name="turned">From 0° to <see cref="Turn"/>.</param>
    public Vector3D PointAt(Angle turned) => Start.Bent(Radius, turned).Position;
}
