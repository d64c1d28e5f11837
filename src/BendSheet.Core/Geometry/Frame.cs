using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A place on the centreline with the way the tube goes there and the side a bend would turn to.</summary>
/// <param name="Position">In millimetres.</param>
/// <param name="Direction">The way from A to B, length 1.</param>
/// <param name="Side">Where a bend made here would turn to: at right angles to the direction, length 1.</param>
public readonly record struct Frame(Vector3D Position, Vector3D Direction, Vector3D Side)
{
    /// <summary>
    /// End A of a template that does not say how it lies on the car: at the origin, heading forward, the first bend turning left.
    /// </summary>
    public static Frame Default { get; } = new(default, new(1, 0, 0), new(0, 1, 0));

    /// <summary>The axis a bend made here turns about, right-handed, length 1.</summary>
    public Vector3D Axis => Direction.Cross(Side);

    /// <summary>Further along the direction.</summary>
    public Frame Advanced(Length distance) => this with { Position = Position + (distance.Millimetres * Direction) };

    /// <summary>The bending plane rolled about the tube's own axis, clockwise seen looking along the direction.</summary>
    /// <remarks>A right-handed turn about the direction: clockwise for somebody who looks along it.</remarks>
    public Frame Rolled(Angle rotation)
    {
        var (sin, cos) = Math.SinCos(rotation.Radians);
        return Square(Position, Direction, (cos * Side) + (sin * Direction.Cross(Side)));
    }

    /// <summary>The mirror image in the car's middle plane: left becomes right.</summary>
    public Frame Mirrored() => new(Mirrored(Position), Mirrored(Direction), Mirrored(Side));

    /// <summary>At the end of an arc that starts here.</summary>
    public Frame Bent(Length radius, Angle turn)
    {
        var (sin, cos) = Math.SinCos(turn.Radians);
        return Square(
            OnArc(radius.Millimetres, sin, cos),
            (cos * Direction) + (sin * Side),
            (cos * Side) - (sin * Direction));
    }

    /// <summary>Where an arc that starts here ends.</summary>
    public Vector3D OnArc(Length radius, Angle turn)
    {
        var (sin, cos) = Math.SinCos(turn.Radians);
        return OnArc(radius.Millimetres, sin, cos);
    }

    /// <summary>
    /// Both directions of length 1 again and square to each other. What is lost of that in one step would feed back in the next, and grow
    /// with the number of bends as compound interest does.
    /// </summary>
    private static Frame Square(Vector3D position, Vector3D direction, Vector3D side)
    {
        direction = 1 / direction.Norm * direction;
        side -= side.Dot(direction) * direction;
        return new(position, direction, 1 / side.Norm * side);
    }

    private Vector3D OnArc(double radius, double sin, double cos) =>
        Position + (radius * sin * Direction) + (radius * (1 - cos) * Side);

    private static Vector3D Mirrored(Vector3D vector) => vector with { Y = 0 - vector.Y };
}
