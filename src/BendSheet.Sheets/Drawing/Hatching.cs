namespace BendSheet.Sheets.Drawing;

/// <summary>Slanted lines over what becomes a bend.</summary>
internal static class Hatching
{
    /// <summary>Lines at 45° that end at the sides of the rectangle; nothing is clipped, so that no viewer has to clip.</summary>
    /// <param name="canvas">Drawn on.</param>
    /// <param name="from">Left side.</param>
    /// <param name="to">Right side.</param>
    /// <param name="top">Upper side.</param>
    /// <param name="height">Of the rectangle.</param>
    /// <param name="pitch">From line to line.</param>
    public static void Draw(Canvas canvas, double from, double to, double top, double height, double pitch)
    {
        for (var foot = from - height + pitch; foot < to; foot += pitch)
        {
            // The line runs from (foot, bottom) up to (foot + height, top).
            var left = Math.Max(foot, from);
            var right = Math.Min(foot + height, to);
            canvas.Line(left, top + height - (left - foot), right, top + height - (right - foot), Canvas.Thin);
        }
    }
}
