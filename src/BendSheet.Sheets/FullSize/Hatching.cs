using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.FullSize;

/// <summary>Slanted lines over what becomes a bend.</summary>
internal static class Hatching
{
    private const double Pitch = 1.6;

    /// <summary>Lines at 45° that end at the sides of the rectangle; nothing is clipped, so that no reader has to.</summary>
    public static void Draw(Canvas canvas, double from, double to, double top, double height)
    {
        for (var foot = from - height + Pitch; foot < to; foot += Pitch)
        {
            // The line runs from (foot, bottom) up to (foot + height, top).
            var left = Math.Max(foot, from);
            var right = Math.Min(foot + height, to);
            canvas.Line(left, top + height - (left - foot), right, top + height - (right - foot), Canvas.Thin);
        }
    }
}
