using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>A place where the tube passes in front of itself.</summary>
/// <param name="FrontPiece">Index of the nearer piece's first point.</param>
/// <param name="Along">How far along that piece, from 0 to 1.</param>
/// <param name="Sine">Of the angle between the two pieces.</param>
internal readonly record struct Crossing(int FrontPiece, double Along, double Sine);

/// <summary>Finds where a drawn tube crosses itself, so that the part behind can be broken.</summary>
internal static class Crossings
{
    /// <summary>Pieces nearer to parallel than this lie along each other; they do not cross.</summary>
    private const double LeastSine = 0.05;

    /// <summary>Every crossing of pieces that are not neighbours.</summary>
    /// <param name="points">On paper.</param>
    /// <param name="nearness">Of each point to the eye.</param>
    public static IEnumerable<Crossing> Of(PagePoint[] points, double[] nearness)
    {
        PaperBounds[] bounds = [.. points.Zip(points.Skip(1), PaperBounds.Of)];
        for (var i = 0; i < bounds.Length; i++)
        {
            for (var j = i + 2; j < bounds.Length; j++)
            {
                if (bounds[i].IsClearOf(bounds[j]) || Meet(points[i], points[i + 1], points[j], points[j + 1]) is not { } meet)
                {
                    continue;
                }

                var first = nearness[i] + (meet.First * (nearness[i + 1] - nearness[i]));
                var second = nearness[j] + (meet.Second * (nearness[j + 1] - nearness[j]));
                yield return first > second ? new(i, meet.First, meet.Sine) : new(j, meet.Second, meet.Sine);
            }
        }
    }

    private static (double First, double Second, double Sine)? Meet(PagePoint a, PagePoint b, PagePoint c, PagePoint d)
    {
        var first = b - a;
        var second = d - c;
        var cross = (first.X * second.Y) - (first.Y * second.X);
        var lengths = first.Norm * second.Norm;
        if (lengths == 0 || Math.Abs(cross) < LeastSine * lengths)
        {
            return null;
        }

        var between = c - a;
        var alongFirst = ((between.X * second.Y) - (between.Y * second.X)) / cross;
        var alongSecond = ((between.X * first.Y) - (between.Y * first.X)) / cross;
        return alongFirst is >= 0 and < 1 && alongSecond is >= 0 and < 1
            ? (alongFirst, alongSecond, Math.Abs(cross) / lengths)
            : null;
    }
}
