using BendSheet.Core.Picture;
using BendSheet.Core.Plumbing;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Picture;

/// <summary>How lines and hoses look, and the small marks along them by which circuits are told apart without colour.</summary>
internal static class CircuitMarks
{
    /// <summary>From a line to the end of a tick.</summary>
    private const double Reach = 1.3;

    /// <summary>From one tick to the next, and half of what a cross or a chevron takes up.</summary>
    private const double Pitch = 0.8;

    /// <summary>From one mark to the next along a line.</summary>
    private const double Interval = 15;

    /// <summary>Outside of a hose, and the white inside it.</summary>
    private const double HoseWidth = 1.5;
    private const double HoseInside = 0.9;

    private const int Shapes = 6;

    /// <summary>A line or a hose with its circuit's marks; between parts that are screwed together a thin line.</summary>
    public static void Run(Canvas canvas, PicturedRun run, IReadOnlyList<PagePoint> points)
    {
        if (run.Kind == ConnectionKind.Hose)
        {
            canvas.Path([.. points], HoseWidth, flatEnds: true);
            canvas.Path([.. points], HoseInside, white: true, flatEnds: true);
        }
        else if (run.Kind == ConnectionKind.ScrewedIn)
        {
            canvas.Path([.. points], Canvas.Thin);
            return;
        }
        else if (run.IsMade)
        {
            canvas.Path([.. points], Canvas.Thick);
        }
        else
        {
            canvas.DashedPath(points, Canvas.Thick);
        }

        if (run.Circuit is { } circuit)
        {
            Along(canvas, circuit, points);
        }
    }

    /// <summary>At intervals, at least one in the middle; none on a run that is too short for it.</summary>
    private static void Along(Canvas canvas, int circuit, IReadOnlyList<PagePoint> points)
    {
        var whole = points.Zip(points.Skip(1), (from, to) => (to - from).Norm).Sum();
        if (whole < 4 * Pitch)
        {
            return;
        }

        var count = Math.Max(1, (int)Math.Round(whole / Interval));
        var (next, walked) = (0, 0.0);
        for (var i = 1; i < points.Count && next < count; i++)
        {
            var way = points[i] - points[i - 1];
            var length = way.Norm;
            while (next < count && length > 0 && whole * (next + 0.5) / count is var at && at <= walked + length)
            {
                Draw(canvas, circuit, points[i - 1] + ((at - walked) / length * way), 1 / length * way);
                next++;
            }

            walked += length;
        }
    }

    private static void Draw(Canvas canvas, int circuit, PagePoint at, PagePoint along)
    {
        var aside = new PagePoint(-along.Y, along.X);
        switch (circuit % Shapes)
        {
            case 0:
                Ticks(1);
                break;
            case 1:
                Ticks(2);
                break;
            case 2:
                canvas.Bubble(string.Empty, TextStyle.Small, at.X, at.Y, 1);
                break;
            case 3:
                canvas.Path([On(-Pitch, Reach), On(Pitch, 0), On(-Pitch, -Reach)], Canvas.Medium);
                break;
            case 4:
                canvas.Path([On(-Pitch, Reach), On(Pitch, -Reach)], Canvas.Medium);
                canvas.Path([On(-Pitch, -Reach), On(Pitch, Reach)], Canvas.Medium);
                break;
            default:
                Ticks(3);
                break;
        }

        // The shapes begin again with black squares beside them.
        for (var i = 1; i <= circuit / Shapes; i++)
        {
            var square = On((2 * Pitch) + (1.3 * i), 0);
            canvas.Black(square.X - 0.45, square.Y - 0.45, 0.9, 0.9);
        }

        void Ticks(int count)
        {
            for (var i = 0; i < count; i++)
            {
                var off = (i - ((count - 1) / 2.0)) * Pitch;
                canvas.Path([On(off, Reach), On(off, -Reach)], Canvas.Medium);
            }
        }

        PagePoint On(double forward, double sideways) => at + (forward * along) + (sideways * aside);
    }
}
