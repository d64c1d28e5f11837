using System.Globalization;
using BendSheet.Core.Sheet;
using BendSheet.Sheets.Shape;

namespace BendSheet.Cli.Output;

/// <summary>The sheet's pictorial view for the terminal.</summary>
public static class LinePicture
{
    private const int Width = 60;
    private const int Height = 16;

    /// <summary>In characters, left free at the sides for letters and numbers.</summary>
    private const int SideMargin = 4;
    private const int TopMargin = 1;

    /// <summary>Rows of characters; a last one names the bends whose numbers found no room.</summary>
    public static IReadOnlyList<string> Rows(SheetContent sheet)
    {
        var outline = PictorialOutline.Of(sheet);
        var picture = new Braille(Width, Height);
        var points = Fitted(outline.Points);
        for (var i = 0; i + 1 < points.Count; i++)
        {
            picture.Line(points[i].X, points[i].Y, points[i + 1].X, points[i + 1].Y);
        }

        picture.Label("A", points[0].X, points[0].Y);
        picture.Label("B", points[^1].X, points[^1].Y);
        var left = new List<string>();
        for (var i = 0; i < outline.BendMiddles.Length; i++)
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            if (!picture.Label(number, points[outline.BendMiddles[i]].X, points[outline.BendMiddles[i]].Y))
            {
                left.Add(number);
            }
        }

        return left.Count == 0 ? picture.Rows() : [.. picture.Rows(), $"(no room for the numbers {string.Join(", ", left)})"];
    }

    /// <summary>As large as the margins allow, in the middle, in dots.</summary>
    private static List<(double X, double Y)> Fitted(IReadOnlyList<(double X, double Y)> points)
    {
        var (left, right) = (points.Min(point => point.X), points.Max(point => point.X));
        var (top, bottom) = (points.Min(point => point.Y), points.Max(point => point.Y));
        double across = (Width - (2 * SideMargin)) * Braille.DotsAcross;
        double down = (Height - (2 * TopMargin)) * Braille.DotsDown;
        var scale = Math.Min(across / Math.Max(right - left, double.Epsilon), down / Math.Max(bottom - top, double.Epsilon));
        scale = double.IsFinite(scale) ? scale : 1;
        return
        [
            .. points.Select(point => (
                (Width * Braille.DotsAcross / 2.0) + (scale * (point.X - ((left + right) / 2))),
                (Height * Braille.DotsDown / 2.0) + (scale * (point.Y - ((top + bottom) / 2))))),
        ];
    }
}
