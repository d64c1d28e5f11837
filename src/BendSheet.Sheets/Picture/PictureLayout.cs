using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>The cells of the three views, all at one scale: plan above side with forward in common, front beside side with up in common.
/// </summary>
/// <param name="Denominator">The scale is 1 : this.</param>
/// <param name="Cells">Where drawing and labels of each view lie, in the order of <see cref="PictureView.All"/>.</param>
/// <param name="Drawn">The items in each view.</param>
/// <param name="Height">Of everything.</param>
internal sealed record PictureLayout(
    double Denominator, IReadOnlyList<PageBox> Cells, IReadOnlyList<IReadOnlyList<DrawnItem>> Drawn, double Height)
{
    /// <summary>Of the row below each view, with its caption and the arrows, in millimetres.</summary>
    public const double CaptionHeight = 8;

    /// <summary>Between the columns.</summary>
    private const double Gutter = 3;

    /// <summary>Around the drawing in its cell at least, for labels.</summary>
    private const double Pad = 7;

    /// <summary>No cell is narrower: its caption and arrows have to fit.</summary>
    private const double LeastWidth = 62;

    /// <summary>With more room than this to spare the height is not used up.</summary>
    private const double MostSpare = 12;

    /// <summary>The largest scale that fits.</summary>
    /// <param name="items">At least one.</param>
    /// <param name="width">There is.</param>
    /// <param name="height">There is.</param>
    /// <param name="from">No larger scale than 1 : this.</param>
    public static PictureLayout Of(IReadOnlyList<PictureItem> items, double width, double height, double from = 0)
    {
        var boxes = PictureView.All.Select(view => Box(items, view)).ToList();
        var (length, across, tall) = (boxes[0].Width, boxes[0].Height, boxes[1].Height);
        var denominator = ViewScales.First(scale => scale > from
            && Column(length / scale) + Column(across / scale) + Gutter <= width
            && ((across + tall) / scale) + (4 * Pad) + (2 * CaptionHeight) <= height);

        var spareWidth = width - Gutter - Column(length / denominator) - Column(across / denominator);
        var left = Column(across / denominator) + (spareWidth / 2);
        var spareHeight = Math.Min(
            MostSpare, height - ((across + tall) / denominator) - (4 * Pad) - (2 * CaptionHeight)) / 2;
        var (above, below) = ((across / denominator) + (2 * Pad) + spareHeight, (tall / denominator) + (2 * Pad) + spareHeight);
        var right = new PageBox(left + Gutter, 0, width - left - Gutter, above);
        var lower = above + CaptionHeight;
        PageBox[] cells = [right, right with { Top = lower, Height = below }, new(0, lower, left, below)];
        return new(
            denominator,
            cells,
            [.. PictureView.All.Select((view, i) => InView(items, view, boxes[i], cells[i], denominator))],
            lower + below + CaptionHeight);
    }

    private static double Column(double drawing) => Math.Max(LeastWidth, drawing + (2 * Pad));

    private static IReadOnlyList<DrawnItem> InView(
        IReadOnlyList<PictureItem> items, PictureView view, PageBox box, PageBox cell, double denominator)
    {
        var middle = new PagePoint(box.Left + (box.Width / 2), box.Top + (box.Height / 2));
        var onPage = new PagePoint(cell.Left + (cell.Width / 2), cell.Top + (cell.Height / 2));
        return [.. items.Select(item => DrawnItem.Of(item, view, point => onPage + (1 / denominator * (point - middle))))];
    }

    private static PageBox Box(IReadOnlyList<PictureItem> items, PictureView view)
    {
        List<PagePoint> points = [.. items.SelectMany(item => item.Points).Select(view.Of)];
        var (left, top) = (points.Min(point => point.X), points.Min(point => point.Y));
        return new(left, top, points.Max(point => point.X) - left, points.Max(point => point.Y) - top);
    }
}
