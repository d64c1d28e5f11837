using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// One view of the shape: the tube at its true width where the scale allows, broken where it passes behind itself, and its labels.
/// </summary>
/// <param name="tube">As it lies on paper.</param>
/// <param name="labels">Placed.</param>
internal sealed class ShapeView(DrawnTube tube, IReadOnlyList<ViewLabel> labels)
{
    /// <summary>Below this the two sides of the tube run together on a copy of a copy: it is drawn as one thick line.</summary>
    private const double LeastOutline = 1.2;

    /// <summary>Beside the nearer tube where the farther one is broken.</summary>
    private const double Gap = 0.7;

    /// <summary>Draws tube and labels.</summary>
    /// <param name="canvas">To draw on.</param>
    /// <param name="top">Of the block of views.</param>
    public void Draw(Canvas canvas, double top)
    {
        var down = new PagePoint(0, top);
        PagePoint[] moved = [.. tube.Points.Select(point => point + down)];
        DrawTube(canvas, moved);
        if (Array.TrueForAll(moved, point => (point - moved[0]).Norm < Canvas.Thin))
        {
            // A straight tube seen end-on.
            canvas.Bubble(string.Empty, ViewLabels.Style, moved[0].X, moved[0].Y, tube.Width / 2);
        }

        CloseEnd(canvas, moved[0], moved[1]);
        CloseEnd(canvas, moved[^1], moved[^2]);
        foreach (var crossing in Crossings.Of(tube.Points, tube.Nearness))
        {
            DrawInFront(canvas, moved, crossing);
        }

        foreach (var leader in labels.SelectMany(label => label.Leaders))
        {
            canvas.Line(leader.From.X, leader.From.Y + top, leader.To.X, leader.To.Y + top, Canvas.Thin);
        }

        foreach (var label in labels)
        {
            canvas.Bubble(label.Text, ViewLabels.Style, label.Place.X, label.Place.Y + top, label.HalfWidth, ViewLabel.Radius);
        }
    }

    private void DrawTube(Canvas canvas, ReadOnlySpan<PagePoint> points)
    {
        canvas.Path(points, tube.Width, flatEnds: true);
        if (tube.Width >= LeastOutline)
        {
            canvas.Path(points, tube.Width - (2 * Canvas.Medium), white: true, flatEnds: true);
        }
    }

    /// <summary>The end of the outline, square to the tube.</summary>
    private void CloseEnd(Canvas canvas, PagePoint end, PagePoint next)
    {
        var inwards = next - end;
        if (tube.Width < LeastOutline || inwards.Norm < Canvas.Medium)
        {
            return;
        }

        inwards = 1 / inwards.Norm * inwards;
        var middle = end + (Canvas.Medium / 2 * inwards);
        var half = tube.Width / 2 * new PagePoint(-inwards.Y, inwards.X);
        canvas.Path([middle - half, middle + half], Canvas.Medium, flatEnds: true);
    }

    /// <summary>Breaks what lies behind a crossing with a white gap and draws the nearer part over it again.</summary>
    private void DrawInFront(Canvas canvas, PagePoint[] points, Crossing crossing)
    {
        var reach = (tube.Width + Gap) / Math.Max(crossing.Sine, 0.2);
        var at = points[crossing.FrontPiece] + (crossing.Along * (points[crossing.FrontPiece + 1] - points[crossing.FrontPiece]));
        canvas.Path(Around(points, crossing.FrontPiece, at, reach), tube.Width + (2 * Gap), white: true, flatEnds: true);
        DrawTube(canvas, Around(points, crossing.FrontPiece, at, reach + 0.1));
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
}
