using BendSheet.Core.Sheet;
using BendSheet.Sheets.FullSize;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace BendSheet.Sheets.Tests.FullSize;

/// <summary>What is drawn on the full-size pages, in millimetres from the upper left corner of the paper.</summary>
internal static class OnPaper
{
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>The full-size pages of a file, without the lines' own sheets.</summary>
    public static IReadOnlyList<Page> Pages(string yaml, FullSizePages wanted, Paper paper = Paper.A4) =>
        [.. Printed.Pages(Printed.Sheets(yaml, paper, wanted))
            .Where(page => Printed.Text([page]).StartsWith("Full-size", StringComparison.Ordinal))];

    /// <summary>All straight lines that were drawn one by one with a pen of this width.</summary>
    public static IReadOnlyList<DrawnLine> Lines(Page page, double pen) =>
    [
        .. page.Paths.Where(path => path.IsStroked && Math.Abs(path.LineWidth - pen) < 1e-6)
            .SelectMany(path => path)
            .Where(subpath => subpath.Commands is [PdfSubpath.Move, PdfSubpath.Line])
            .Select(
                subpath => new DrawnLine(
                    At(page, ((PdfSubpath.Move)subpath.Commands[0]).Location), At(page, ((PdfSubpath.Line)subpath.Commands[1]).To))),
    ];

    /// <summary>All arcs of circles drawn with a pen of this width.</summary>
    public static IReadOnlyList<DrawnArc> Arcs(Page page, double pen) =>
    [
        .. page.Paths.Where(path => path.IsStroked && Math.Abs(path.LineWidth - pen) < 1e-6)
            .SelectMany(path => path)
            .Where(subpath => subpath.Commands.OfType<PdfSubpath.CubicBezierCurve>().Any())
            .Select(
                subpath => DrawnArc.Through(
                    [.. subpath.Commands.OfType<PdfSubpath.CubicBezierCurve>()
                        .SelectMany(curve => On(curve).Select(point => At(page, point)))])),
    ];

    /// <summary>Proving bars, from top to bottom.</summary>
    public static IReadOnlyList<Box> Bars(Page page) =>
    [
        .. page.Paths.Where(path => path.IsStroked).Select(path => Around(page, path)).OfType<Box>()
            .Where(box => Math.Abs(box.Height - 2.4) < 0.01 && box.Width > 80)
            .OrderBy(box => box.Top),
    ];

    private static Box? Around(Page page, PdfPath path) => path.GetBoundingRectangle() is { } box
        ? new(box.Left / PointsPerMm, (page.Height - box.Top) / PointsPerMm, box.Width / PointsPerMm, box.Height / PointsPerMm)
        : null;

    private static Point At(Page page, PdfPoint point) => new(point.X / PointsPerMm, (page.Height - point.Y) / PointsPerMm);

    /// <summary>Points of a Bézier curve, its ends among them.</summary>
    private static IEnumerable<PdfPoint> On(PdfSubpath.CubicBezierCurve curve) => Enumerable.Range(0, 9).Select(i =>
    {
        var t = i / 8.0;
        var s = 1 - t;
        double Of(double a, double b, double c, double d) => (s * s * s * a) + (3 * s * s * t * b) + (3 * s * t * t * c) + (t * t * t * d);
        return new PdfPoint(
            Of(curve.StartPoint.X, curve.FirstControlPoint.X, curve.SecondControlPoint.X, curve.EndPoint.X),
            Of(curve.StartPoint.Y, curve.FirstControlPoint.Y, curve.SecondControlPoint.Y, curve.EndPoint.Y));
    });
}

internal readonly record struct Point(double X, double Y)
{
    public double To(Point other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    /// <summary>Degrees clockwise from straight up, seen from here.</summary>
    public double Bearing(Point other)
    {
        var degrees = Math.Atan2(other.X - X, Y - other.Y) * 180 / Math.PI;
        return degrees < -1e-3 ? degrees + 360 : Math.Max(0, degrees);
    }
}

internal sealed record DrawnLine(Point From, Point To)
{
    public double Length => From.To(To);

    public double Left => Math.Min(From.X, To.X);

    public bool IsUpright => Math.Abs(From.X - To.X) < 1e-6;

    public bool IsLevel => Math.Abs(From.Y - To.Y) < 1e-6;
}

internal sealed record Box(double Left, double Top, double Width, double Height);

/// <summary>An arc with its circle, as its own points have it.</summary>
internal sealed record DrawnArc(Point Centre, double Radius, double Sweep, double WorstMiss, Point Start, Point End)
{
    public static DrawnArc Through(IReadOnlyList<Point> points)
    {
        var (a, b, c) = (points[0], points[points.Count / 3], points[2 * points.Count / 3]);
        var d = 2 * ((a.X * (b.Y - c.Y)) + (b.X * (c.Y - a.Y)) + (c.X * (a.Y - b.Y)));
        double Square(Point p) => (p.X * p.X) + (p.Y * p.Y);
        var centre = new Point(
            ((Square(a) * (b.Y - c.Y)) + (Square(b) * (c.Y - a.Y)) + (Square(c) * (a.Y - b.Y))) / d,
            ((Square(a) * (c.X - b.X)) + (Square(b) * (a.X - c.X)) + (Square(c) * (b.X - a.X))) / d);
        var radius = points.Average(point => point.To(centre));
        var sweep = 0.0;
        for (var i = 1; i < points.Count; i++)
        {
            var step = centre.Bearing(points[i]) - centre.Bearing(points[i - 1]);
            sweep += step < -180 ? step + 360 : step > 180 ? step - 360 : step;
        }

        return new(centre, radius, Math.Abs(sweep), points.Max(point => Math.Abs(point.To(centre) - radius)), points[0], points[^1]);
    }
}
