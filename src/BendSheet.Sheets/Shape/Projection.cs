using BendSheet.Core.Geometry;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A way to look at the shape: straight at a plane, so that whatever lies parallel to the paper is true to scale.</summary>
/// <param name="Name">As part of a file's name.</param>
/// <param name="Caption">What it is.</param>
/// <param name="Right">Of a point in space: how far to the right on paper, in the shape's own millimetres; length 1.</param>
/// <param name="Up">How far up on paper; length 1.</param>
/// <param name="Nearness">Towards the eye; length 1.</param>
internal sealed record Projection(string Name, string Caption, Vector3D Right, Vector3D Up, Vector3D Nearness)
{
    /// <summary>X to the right, Y up.</summary>
    public static Projection Top { get; } = new("top", ViewWords.Top, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>X to the right, Z up: the eye is on the right of the car, looking left.</summary>
    public static Projection Side { get; } = new("side", ViewWords.Side, new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));

    /// <summary>Y to the left, Z up: the eye is behind the car, looking forward.</summary>
    public static Projection End { get; } = new("end", ViewWords.End, new(0, -1, 0), new(0, 0, 1), new(-1, 0, 0));

    /// <summary>Top, side and end view.</summary>
    public static IReadOnlyList<Projection> Flat { get; } = [Top, Side, End];

    /// <summary>A view that shows all three axes at once, Z upright.</summary>
    /// <param name="round">Where the eye stands, in degrees round Z from X towards Y.</param>
    /// <param name="above">How far above the level it stands, in degrees.</param>
    public static Projection Pictorial(double round, double above)
    {
        var (sinRound, cosRound) = Math.SinCos(round * Math.PI / 180);
        var (sinAbove, cosAbove) = Math.SinCos(above * Math.PI / 180);
        return new(
            "pictorial",
            ViewWords.Pictorial,
            new(-sinRound, cosRound, 0),
            new(-cosRound * sinAbove, -sinRound * sinAbove, cosAbove),
            new(cosRound * cosAbove, sinRound * cosAbove, sinAbove));
    }

    /// <summary>The view in which the shape mirrored in the plane of X and Z gives the mirror image of this view.</summary>
    public Projection AcrossY() => this with
    {
        Right = -1 * Right with { Y = -Right.Y },
        Up = Up with { Y = -Up.Y },
        Nearness = Nearness with { Y = -Nearness.Y },
    };

    /// <summary>The view in which the shape mirrored in the plane of X and Y gives the mirror image of this view.</summary>
    public Projection AcrossZ() => this with
    {
        Right = -1 * Right with { Z = -Right.Z },
        Up = Up with { Z = -Up.Z },
        Nearness = Nearness with { Z = -Nearness.Z },
    };

    /// <summary>The same view with the paper turned by a quarter, clockwise or the other way.</summary>
    public Projection Turned(bool clockwise) => clockwise
        ? this with { Right = Up, Up = -1 * Right }
        : this with { Right = -1 * Up, Up = Right };

    /// <summary>Where a point lies on paper, y downwards, before it is scaled and moved.</summary>
    public PagePoint Of(Vector3D point) => new(point.Dot(Right), -point.Dot(Up));
}
