using BendSheet.Core.Centreline;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A way to look at the shape. Lengths along its two flat axes, or along all three of the pictorial view, are true.</summary>
/// <param name="Caption">What it is.</param>
/// <param name="Right">Of a point in space: how far to the right on paper, in the shape's own millimetres.</param>
/// <param name="Up">How far up on paper.</param>
/// <param name="Nearness">Larger for what lies nearer to the eye.</param>
internal sealed record Projection(string Caption, Vector3D Right, Vector3D Up, Vector3D Nearness)
{
    private const double Half = 0.5;
    private static readonly double Cos30 = Math.Sqrt(3) / 2;

    /// <summary>
    /// Isometric drawing, all three axes at the same true scale (ISO 5456-3, drawn unshortened): seen from behind, from the right and
    /// from above.
    /// </summary>
    public static Projection Pictorial { get; } = new(
        "pictorial view", new(Cos30, -Cos30, 0), new(Half, Half, 1), new(-1, -1, 1));

    /// <summary>X to the right, Y up.</summary>
    public static Projection Top { get; } = new("from above: X right, Y up", new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>X to the right, Z up: the eye is on the right of the car, looking left.</summary>
    public static Projection Side { get; } = new("from the right: X right, Z up", new(1, 0, 0), new(0, 0, 1), new(0, -1, 0));

    /// <summary>Y to the left, Z up: the eye is behind the car, looking forward.</summary>
    public static Projection End { get; } = new("from behind: Y left, Z up", new(0, -1, 0), new(0, 0, 1), new(-1, 0, 0));

    /// <summary>Pictorial, top, side and end view.</summary>
    public static IReadOnlyList<Projection> All { get; } = [Pictorial, Top, Side, End];

    /// <summary>Where a point lies on paper, y downwards, before it is scaled and moved.</summary>
    public PagePoint Of(Vector3D point) => new(point.Dot(Right), -point.Dot(Up));
}
