using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>The rectangle around points on paper.</summary>
internal readonly record struct PaperBounds(double Left, double Right, double Top, double Bottom)
{
    /// <summary>Around all of them.</summary>
    public static PaperBounds Of(IEnumerable<PagePoint> points)
    {
        var bounds = new PaperBounds(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        foreach (var point in points)
        {
            bounds = new(
                Math.Min(bounds.Left, point.X),
                Math.Max(bounds.Right, point.X),
                Math.Min(bounds.Top, point.Y),
                Math.Max(bounds.Bottom, point.Y));
        }

        return bounds;
    }

    /// <summary>Around two points.</summary>
    public static PaperBounds Of(PagePoint a, PagePoint b) =>
        new(Math.Min(a.X, b.X), Math.Max(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y));

    /// <summary>The two have no point in common.</summary>
    public bool IsClearOf(in PaperBounds other) =>
        Right < other.Left || other.Right < Left || Bottom < other.Top || other.Bottom < Top;
}
