using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Elements;

/// <summary>The tube seen from the held end: a clock face with the former as a black bar at 12 and the pen line as a hand.</summary>
internal static class ClockFace
{
    /// <summary>A smaller face has no room for ticks at 3, 6 and 9.</summary>
    private const double LeastForTicks = 2.5;

    /// <summary>Draws it; the words beside it say the same.</summary>
    /// <param name="canvas">To draw on.</param>
    /// <param name="centre">In the type area.</param>
    /// <param name="radius">Of the face; the former stands out of it.</param>
    /// <param name="lineAt">Of the pen line, clockwise from 12.</param>
    public static void Draw(Canvas canvas, PagePoint centre, double radius, Angle lineAt) => canvas.Decoration(() =>
    {
        var (width, height) = (0.9 * radius, 0.2 * radius);
        canvas.Circle(centre, radius);
        canvas.Black(centre.X - (width / 2), centre.Y - radius - height, width, height);
        for (var quarter = 90; quarter < 360 && radius > LeastForTicks; quarter += 90)
        {
            Radial(quarter, 0.8, 1, Canvas.Thin);
        }

        Radial(lineAt.Degrees, 0, 1, Canvas.Thick);

        void Radial(double degrees, double from, double to, double pen)
        {
            var (start, end) = (centre + GaugeShape.OnCircle(from * radius, degrees), centre + GaugeShape.OnCircle(to * radius, degrees));
            canvas.Line(start.X, start.Y, end.X, end.Y, pen);
        }
    });
}
