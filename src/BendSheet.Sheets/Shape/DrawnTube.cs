using BendSheet.Core.Geometry;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A tube as it lies on paper in one view.</summary>
/// <param name="Points">Of its centreline, from A to B.</param>
/// <param name="Nearness">Of each point to the eye.</param>
/// <param name="Width">On paper.</param>
/// <param name="Bends">The middle of each bend, and the way from its centre outwards.</param>
/// <param name="AwayFromA">The direction off the tube at end A.</param>
/// <param name="AwayFromB">The direction off the tube at end B.</param>
internal sealed record DrawnTube(
    PagePoint[] Points,
    double[] Nearness,
    double Width,
    IReadOnlyList<(PagePoint Middle, PagePoint Outwards)> Bends,
    PagePoint AwayFromA,
    PagePoint AwayFromB)
{
    /// <summary>No line is thinner than this, in millimetres, whatever the scale.</summary>
    public const double LeastWidth = 0.8;

    /// <summary>From its centreline to a line on paper.</summary>
    public double DistanceTo(Segment line) => Points.Zip(Points.Skip(1), (from, to) => new Segment(from, to).DistanceTo(line)).Min();

    /// <summary>Width and height of the tube in a view, in the shape's own millimetres.</summary>
    public static (double Width, double Height) Size(Polyline shape, Projection projection, double tubeDiameter)
    {
        var bounds = PaperBounds.Of(shape.Points.Select(projection.Of));
        return (bounds.Right - bounds.Left + tubeDiameter, bounds.Bottom - bounds.Top + tubeDiameter);
    }

    /// <summary>To scale and in the middle of a cell.</summary>
    public static DrawnTube Of(
        Polyline shape, TubeCentreline centreline, Projection projection, double tubeDiameter, double denominator, ViewCell cell)
    {
        var flat = shape.Points.Select(point => 1 / denominator * projection.Of(point)).ToArray();
        var bounds = PaperBounds.Of(flat);
        var move = new PagePoint(
            cell.Left + (cell.Width / 2) - ((bounds.Left + bounds.Right) / 2),
            cell.Top + (cell.Height / 2) - ((bounds.Top + bounds.Bottom) / 2));
        PagePoint[] points = [.. flat.Select(point => point + move)];
        return new(
            points,
            [.. shape.Points.Select(point => point.Dot(projection.Nearness))],
            Math.Max(tubeDiameter / denominator, LeastWidth),
            [.. centreline.Arcs.Zip(
                shape.BendMiddles,
                (arc, middle) => (points[middle], projection.Of(1 / arc.Radius.Millimetres * (shape.Points[middle] - arc.Centre))))],
            -1 * projection.Of(centreline.Straights[0].Start.Direction),
            projection.Of(centreline.Straights[^1].Start.Direction));
    }
}
