using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>An item as it lies on paper in one view.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Points">Of a run its way, no two nearer than the eye sees; of a part its ports; of a zone its outline, closed.</param>
internal sealed record DrawnItem(PictureItem Item, IReadOnlyList<PagePoint> Points)
{
    /// <summary>From a port to the side of its part's box, in millimetres.</summary>
    public const double PartReach = 1.4;

    /// <summary>Points nearer than this to the one before are left out.</summary>
    private const double Finest = 0.25;

    /// <summary>Where along a run, or an outline, a label may belong.</summary>
    private static readonly double[] Places = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92];

    /// <summary>The pieces of the way or the outline.</summary>
    public IReadOnlyList<Segment> Pieces { get; } =
        Item.Kind == ItemKind.Part ? [] : [.. Points.Zip(Points.Skip(1), (from, to) => new Segment(from, to))];

    /// <summary>The box around a part's ports; the smallest box around anything else.</summary>
    public PageBox Box { get; } = Around(Points, Item.Kind == ItemKind.Part ? PartReach : 0);

    /// <summary>On paper.</summary>
    public static DrawnItem Of(PictureItem item, PictureView view, Func<PagePoint, PagePoint> onPaper)
    {
        var points = item.Points.Select(point => onPaper(view.Of(point)));
        return new(item, item.Kind switch
        {
            ItemKind.Run => Thinned([.. points]),
            ItemKind.Zone => Hull([.. points]),
            _ => [.. points],
        });
    }

    /// <summary>What a label of it may point to, the best place first.</summary>
    public IReadOnlyList<PagePoint> Anchors() => Item.Kind switch
    {
        ItemKind.Part => [new(Box.Left + (Box.Width / 2), Box.Top + (Box.Height / 2))],
        ItemKind.Zone => [new(Box.Left + (Box.Width / 2), Box.Top + (Box.Height / 2)), .. Places.Select(At)],
        _ => [.. Places.Select(At)],
    };

    /// <summary>A place so far along the way.</summary>
    /// <param name="part">From 0 to 1.</param>
    public PagePoint At(double part)
    {
        var left = part * Pieces.Sum(LengthOf);
        foreach (var piece in Pieces)
        {
            var length = LengthOf(piece);
            if (left <= length && length > 0)
            {
                return piece.From + (left / length * (piece.To - piece.From));
            }

            left -= length;
        }

        return Points[^1];
    }

    private static double LengthOf(Segment piece) => (piece.To - piece.From).Norm;

    private static List<PagePoint> Thinned(IReadOnlyList<PagePoint> points)
    {
        var kept = new List<PagePoint> { points[0] };
        for (var i = 1; i < points.Count - 1; i++)
        {
            if (!points[i].IsNearer(kept[^1], Finest))
            {
                kept.Add(points[i]);
            }
        }

        kept.Add(points[^1]);
        return kept;
    }

    /// <summary>A. M. Andrew, Another efficient algorithm for convex hulls in two dimensions (1979): from memory.</summary>
    private static List<PagePoint> Hull(List<PagePoint> points)
    {
        points.Sort((one, other) => (one.X, one.Y).CompareTo((other.X, other.Y)));
        List<PagePoint> hull = [.. Half(points), .. Half(Enumerable.Reverse(points))];
        hull.Add(hull[0]);
        return hull;

        static IEnumerable<PagePoint> Half(IEnumerable<PagePoint> sorted)
        {
            var half = new List<PagePoint>();
            foreach (var point in sorted)
            {
                while (half.Count > 1 && !Turns(half[^2], half[^1], point))
                {
                    half.RemoveAt(half.Count - 1);
                }

                half.Add(point);
            }

            return half.SkipLast(1).DefaultIfEmpty(half[0]);
        }

        static bool Turns(PagePoint a, PagePoint b, PagePoint c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)) > 1e-9;
    }

    private static PageBox Around(IReadOnlyList<PagePoint> points, double reach)
    {
        var (left, right) = (points.Min(point => point.X) - reach, points.Max(point => point.X) + reach);
        var (top, bottom) = (points.Min(point => point.Y) - reach, points.Max(point => point.Y) + reach);
        return new(left, top, right - left, bottom - top);
    }
}
