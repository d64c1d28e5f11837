using System.Runtime.CompilerServices;

namespace BendSheet.Core.Geometry;

/// <summary>
/// A point in millimetres, or a direction of length 1 without a unit, in the right-handed vehicle axes of ISO 8855: X forward, Y left, Z
/// up.
/// </summary>
/// <param name="X">Forward.</param>
/// <param name="Y">Left.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector3D(double X, double Y, double Z)
{
    /// <summary>Distance from the origin.</summary>
    public double Norm => Math.Sqrt(Dot(this));

    /// <summary>Component-wise sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator +(Vector3D a, Vector3D b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>From <paramref name="b"/> to <paramref name="a"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator -(Vector3D a, Vector3D b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Stretched by a factor.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator *(double factor, Vector3D a) => new(factor * a.X, factor * a.Y, factor * a.Z);

    /// <summary>Scalar product.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Dot(Vector3D other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>Vector product, right-handed.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3D Cross(Vector3D other) => new(
        (Y * other.Z) - (Z * other.Y),
        (Z * other.X) - (X * other.Z),
        (X * other.Y) - (Y * other.X));

    /// <summary>Distance to another point.</summary>
    public double DistanceTo(Vector3D other) => (this - other).Norm;
}
