using BendSheet.Core.Centreline;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>One view of the shape, ready to be drawn in its cell.</summary>
internal sealed class ShapeView
{
    /// <summary>Below this the two sides of the tube run together: it is drawn as one line.</summary>
    private const double LeastOutline = 1.2;
    private const double SingleLine = 0.8;
    private const double Gap = 0.7;

    private static readonly TextStyle NumberStyle = TextStyle.Small with { Bold = true };

    private readonly PagePoint[] _points;
    private readonly double[] _nearness;
    private readonly double _tubeWidth;
    private readonly List<(string Text, PagePoint Anchor, PagePoint Place)> _labels = [];

    private ShapeView(PagePoint[] points, double[] nearness, double tubeWidth)
    {
        _points = points;
        _nearness = nearness;
        _tubeWidth = tubeWidth;
    }

    /// <summary>Width and height of the tube in this view, in the shape's own millimetres.</summary>
    public static (double Width, double Height) Size(Polyline shape, Projection projection, double tubeDiameter)
    {
        var bounds = Bounds.Of(shape.Points.Select(projection.Of));
        return (bounds.Right - bounds.Left + tubeDiameter, bounds.Bottom - bounds.Top + tubeDiameter);
    }

    /// <summary>The view, to scale and in the middle of its cell.</summary>
    public static ShapeView Of(Polyline shape, TubeCentreline centreline, Projection projection, double tubeDiameter, double denominator, ViewCell cell)
    {
        var flat = shape.Points.Select(point => 1 / denominator * projection.Of(point)).ToList();
        var bounds = Bounds.Of(flat);
        var move = new PagePoint(
            cell.Left + (cell.Width / 2) - ((bounds.Left + bounds.Right) / 2),
            cell.Top + (cell.Height / 2) - ((bounds.Top + bounds.Bottom) / 2));
        var view = new ShapeView(
            [.. flat.Select(point => point + move)],
            [.. shape.Points.Select(point => point.Dot(projection.Nearness))],
            Math.Max(tubeDiameter / denominator, SingleLine));
        view.PlaceLabels(shape, centreline, projection, cell);
        return view;
    }

    /// <summary>Draws tube and labels.</summary>
    /// <param name="canvas">To draw on.</param>
    /// <param name="top">Of the block of views.</param>
    public void Draw(Canvas canvas, double top)
    {
        var down = new PagePoint(0, top);
        PagePoint[] moved = [.. _points.Select(point => point + down)];
        DrawTube(canvas, moved, flatEnds: true);
        foreach (var crossing in Crossings.Of(_points, _nearness))
        {
            DrawInFront(canvas, moved, crossing);
        }

        foreach (var (text, anchor, place) in _labels)
        {
            var from = anchor + down;
            var to = place + down;
            canvas.Line(from.X, from.Y, to.X, to.Y, Canvas.Thin);
            canvas.Bubble(text, NumberStyle, to.X, to.Y, LabelPlaces.Radius);
        }
    }

    private void PlaceLabels(Polyline shape, TubeCentreline centreline, Projection projection, ViewCell cell)
    {
        var places = new LabelPlaces(_points, _tubeWidth, cell);
        Add("A", _points[0], -1 * projection.Of(centreline.Straights[0].Start.Direction));
        Add("B", _points[^1], projection.Of(centreline.Straights[^1].Start.Direction));
        for (var i = 0; i < centreline.Arcs.Length; i++)
        {
            var middle = shape.BendMiddles[i];
            var outwards = projection.Of(shape.Points[middle] - centreline.Arcs[i].Centre);
            Add(FormattableString.Invariant($"{i + 1}"), _points[middle], outwards);
        }

        void Add(string text, PagePoint anchor, PagePoint wanted)
        {
            if (places.Place(anchor, wanted) is { } place)
            {
                _labels.Add((text, anchor, place));
            }
        }
    }

    private void DrawTube(Canvas canvas, ReadOnlySpan<PagePoint> points, bool flatEnds)
    {
        canvas.Path(points, _tubeWidth, flatEnds: flatEnds);
        if (_tubeWidth >= LeastOutline)
        {
            canvas.Path(points, _tubeWidth - (2 * Canvas.Medium), white: true, flatEnds: flatEnds);
        }
    }

    /// <summary>Breaks what lies behind a crossing with a white gap and draws the nearer part over it again.</summary>
    private void DrawInFront(Canvas canvas, PagePoint[] points, Crossing crossing)
    {
        var reach = (_tubeWidth + Gap) / Math.Max(crossing.Sine, 0.2);
        var at = points[crossing.FrontPiece] + (crossing.Along * (points[crossing.FrontPiece + 1] - points[crossing.FrontPiece]));
        canvas.Path(Around(points, crossing.FrontPiece, at, reach), _tubeWidth + (2 * Gap), white: true, flatEnds: true);
        DrawTube(canvas, Around(points, crossing.FrontPiece, at, reach + 0.1), flatEnds: true);
    }

    /// <summary>The part of the tube within a distance of a place on it.</summary>
    private static PagePoint[] Around(PagePoint[] points, int piece, PagePoint at, double reach) =>
        [.. Walk(points, piece, -1, at, reach).Reverse(), at, .. Walk(points, piece + 1, +1, at, reach)];

    private static IEnumerable<PagePoint> Walk(PagePoint[] points, int index, int step, PagePoint from, double reach)
    {
        for (; index >= 0 && index < points.Length; index += step)
        {
            var way = points[index] - from;
            if (way.Norm >= reach)
            {
                yield return from + (reach / way.Norm * way);
                yield break;
            }

            reach -= way.Norm;
            from = points[index];
            yield return from;
        }
    }

    private readonly record struct Bounds(double Left, double Right, double Top, double Bottom)
    {
        public static Bounds Of(IEnumerable<PagePoint> points)
        {
            var bounds = new Bounds(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
            foreach (var point in points)
            {
                bounds = new(
                    Math.Min(bounds.Left, point.X), Math.Max(bounds.Right, point.X), Math.Min(bounds.Top, point.Y), Math.Max(bounds.Bottom, point.Y));
            }

            return bounds;
        }
    }
}
