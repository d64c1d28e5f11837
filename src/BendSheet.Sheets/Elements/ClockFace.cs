using BendSheet.Core.Units;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Elements;

/// <summary>The tube seen from the held end: a clock face with the former as a black bar at 12 and the pen line as a hand.</summary>
internal static class ClockFace
{
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
        var hand = centre + GaugeShape.OnCircle(radius, lineAt.Degrees);
        canvas.Line(centre.X, centre.Y, hand.X, hand.Y, Canvas.Thick);
    });
}
