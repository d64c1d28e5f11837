using BendSheet.Core.Geometry;

namespace BendSheet.Core.Survey;

/// <summary>A small motion of something rigid: how fast each of its points moves (any text on rigid bodies).</summary>
/// <param name="Turning">About which axis, right-handed, and how fast, in radians.</param>
/// <param name="Moving">How fast the point at the origin moves, in millimetres.</param>
internal readonly record struct Twist(Vector3D Turning, Vector3D Moving)
{
    /// <summary>One motion after another: small ones add up.</summary>
    public static Twist operator +(Twist one, Twist other) => new(one.Turning + other.Turning, one.Moving + other.Moving);

    /// <summary>So many times as fast.</summary>
    public static Twist operator *(double factor, Twist one) => new(factor * one.Turning, factor * one.Moving);

    /// <summary>Everything moves the same way.</summary>
    public static Twist Along(Vector3D way) => new(default, way);

    /// <summary>Everything turns about an axis.</summary>
    /// <param name="axis">Its direction, length 1.</param>
    /// <param name="through">A point on it.</param>
    public static Twist About(Vector3D axis, Vector3D through) => new(axis, through.Cross(axis));

    /// <summary>How fast a point moves.</summary>
    public Vector3D At(Vector3D point) => Moving + Turning.Cross(point);
}
