using BendSheet.Core.Geometry;
using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>
/// One of the three views of the car, as a drawing has them: the plan, below it the car seen from its left with forward to the same side,
/// and beside that, on the side of the car's front, the car seen from the front.
/// </summary>
/// <param name="Projection">How a point of the car lies in it, before it is scaled.</param>
/// <param name="Arrows">Which way the axes of the car point in it, with their words.</param>
internal sealed record PictureView(Projection Projection, IReadOnlyList<(PagePoint Way, string Word)> Arrows)
{
    private static readonly PagePoint Leftwards = new(-1, 0);
    private static readonly PagePoint Rightwards = new(1, 0);
    private static readonly PagePoint Upwards = new(0, -1);
    private static readonly PagePoint Downwards = new(0, 1);

    /// <summary>The plan: forward to the left, the car's left side below.</summary>
    public static PictureView Above { get; } = new(
        new(nameof(Above), PictureWords.Above, new(-1, 0, 0), new(0, -1, 0), new(0, 0, 1)),
        [(Leftwards, PictureWords.Forward), (Downwards, PictureWords.ToTheLeft)]);

    /// <summary>The side: forward to the left, up is up.</summary>
    public static PictureView Side { get; } = new(
        new(nameof(Side), PictureWords.Left, new(-1, 0, 0), new(0, 0, 1), new(0, 1, 0)),
        [(Leftwards, PictureWords.Forward), (Upwards, PictureWords.Up)]);

    /// <summary>The front: the eye is before the car, so that the car's left is on the right.</summary>
    public static PictureView Front { get; } = new(
        new(nameof(Front), PictureWords.Front, new(0, 1, 0), new(0, 0, 1), new(1, 0, 0)),
        [(Rightwards, PictureWords.ToTheLeft), (Upwards, PictureWords.Up)]);

    /// <summary>In the order of reading.</summary>
    public static IReadOnlyList<PictureView> All { get; } = [Above, Side, Front];

    /// <summary>Where a point lies from the view's own zero, y downwards, in the car's millimetres.</summary>
    public PagePoint Of(Vector3D point) => Projection.Of(point);
}
