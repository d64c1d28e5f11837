using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Picture;

/// <summary>The three views of the car with their labels, their arrows, and a bar to scale.</summary>
internal sealed class ViewsDrawing
{
    /// <summary>How many scales are tried at most, each smaller than the last, where labels find no room.</summary>
    private const int MostScales = 3;

    private const double HatchPitch = 4;
    private const double PortSize = 1;
    private const double LongArrow = 13;
    private const double ShortArrow = 5.5;
    private const double HeadLength = 2.4;
    private const double HeadWidth = 1.1;
    private const double MostBar = 48;

    private readonly CarPicture _picture;

    private ViewsDrawing(
        CarPicture picture, PictureLayout layout, IReadOnlySet<PictureItem> wanted, IReadOnlyList<IReadOnlyList<PictureLabel>> labels)
    {
        (_picture, Layout, Labels) = (picture, layout, labels);
        Unlabelled = wanted.Except(labels.SelectMany(ofView => ofView).Select(label => label.Item)).ToHashSet();
        Numbers = labels.SelectMany(ofView => ofView).Where(label => !label.IsName).Select(label => label.Item.Number).ToHashSet();
    }

    /// <summary>Scale and cells.</summary>
    public PictureLayout Layout { get; }

    /// <summary>Of each view.</summary>
    public IReadOnlyList<IReadOnlyList<PictureLabel>> Labels { get; }

    /// <summary>What has a number somewhere instead of its name.</summary>
    public IReadOnlySet<int> Numbers { get; }

    /// <summary>Every item has its label in every view.</summary>
    public bool IsWhole => Layout.Drawn.Zip(Labels).All(view => view.Second.Count == view.First.Count);

    /// <summary>What was to have a label, and no view has room for one.</summary>
    public IReadOnlySet<PictureItem> Unlabelled { get; }

    /// <summary>
    /// At the largest scale at which everything has a label in some view, or else at the one of those tried that leaves the fewest without.
    /// What then has none has its label in the same views drawn once more, until everything has one.
    /// </summary>
    public static IReadOnlyList<ViewsDrawing> Of(CarPicture picture, TextMeasure measure, double width, double height)
    {
        var items = PictureItem.Of(picture, measure.Printable);
        var everything = items.ToHashSet();
        var best = At(0);
        var next = best;
        for (var i = 1; i < MostScales && best.Unlabelled.Count > 0; i++)
        {
            next = At(next.Layout.Denominator);
            best = next.Unlabelled.Count < best.Unlabelled.Count ? next : best;
        }

        List<ViewsDrawing> all = [best];
        for (var left = int.MaxValue; all[^1].Unlabelled.Count is > 0 and var open && open < left; left = open)
        {
            all.Add(Labelled(picture, best.Layout, all[^1].Unlabelled));
        }

        return all;

        ViewsDrawing At(double larger) => Labelled(picture, PictureLayout.Of(items, width, height, larger), everything);
    }

    private static ViewsDrawing Labelled(CarPicture picture, PictureLayout layout, IReadOnlySet<PictureItem> wanted)
    {
        var (labels, labelled) = (new List<IReadOnlyList<PictureLabel>>(), new HashSet<int>());
        foreach (var (drawn, cell) in layout.Drawn.Zip(layout.Cells))
        {
            labels.Add(PictureLabels.Of(drawn, cell, wanted, labelled));
            labelled.UnionWith(labels[^1].Select(label => label.Item.Number));
        }

        return new(picture, layout, wanted, labels);
    }

    /// <summary>Draws it.</summary>
    public void Draw(Canvas canvas, double top)
    {
        for (var i = 0; i < PictureView.All.Count; i++)
        {
            DrawItems(canvas, Moved(Layout.Drawn[i], top));
            DrawLabels(canvas, Labels[i], top);
            DrawCaption(canvas, PictureView.All[i], Layout.Cells[i], top);
        }

        DrawScale(canvas, top);
    }

    private static List<DrawnItem> Moved(IReadOnlyList<DrawnItem> drawn, double down) =>
        [.. drawn.Select(item => new DrawnItem(item.Item, [.. item.Points.Select(point => point with { Y = point.Y + down })]))];

    private static void DrawItems(Canvas canvas, List<DrawnItem> drawn)
    {
        foreach (var item in drawn.OrderByDescending(one => one.Item.Kind))
        {
            switch (item.Item.Kind)
            {
                case ItemKind.Zone:
                    canvas.Path([.. item.Points], Canvas.Thin);
                    Hatch(canvas, item);
                    break;
                case ItemKind.Part:
                    canvas.Box(item.Box.Left, item.Box.Top, item.Box.Width, item.Box.Height);
                    foreach (var port in item.Points)
                    {
                        canvas.Black(port.X - (PortSize / 2), port.Y - (PortSize / 2), PortSize, PortSize);
                    }

                    break;
                default:
                    CircuitMarks.Run(canvas, item.Item.Run!, item.Points);
                    break;
            }
        }
    }

    /// <summary>Lines at 45° from side to side of an outline that nowhere turns inwards.</summary>
    private static void Hatch(Canvas canvas, DrawnItem zone)
    {
        var (low, high) = (zone.Points.Min(point => point.X + point.Y), zone.Points.Max(point => point.X + point.Y));
        for (var sum = low + HatchPitch; sum < high; sum += HatchPitch)
        {
            List<PagePoint> crossed = [.. zone.Pieces.SelectMany(piece => Crossed(piece.From, piece.To, sum)).OrderBy(point => point.X)];
            if (crossed.Count > 1)
            {
                canvas.Line(crossed[0].X, crossed[0].Y, crossed[^1].X, crossed[^1].Y, Canvas.Thin);
            }
        }
    }

    private static IEnumerable<PagePoint> Crossed(PagePoint from, PagePoint to, double sum)
    {
        var (one, other) = (from.X + from.Y - sum, to.X + to.Y - sum);
        return one * other < 0 ? [from + (one / (one - other) * (to - from))] : [];
    }

    private static void DrawLabels(Canvas canvas, IReadOnlyList<PictureLabel> labels, double top)
    {
        foreach (var label in labels)
        {
            var leader = label.Leader;
            canvas.Line(leader.From.X, top + leader.From.Y, leader.To.X, top + leader.To.Y, Canvas.Thin);
            if (label.Item.Kind == ItemKind.Run)
            {
                canvas.Circle(leader.From with { Y = top + leader.From.Y }, 0.3, Canvas.Thick);
            }
        }

        foreach (var label in labels)
        {
            var box = label.Box with { Top = top + label.Box.Top };
            var (middle, style) = (box.Left + (box.Width / 2), label.IsName ? PictureLabels.NameStyle : TextStyle.Label);
            var baseline = box.Top + (box.Height / 2) + (style.CapHeight / 2);
            if (!label.IsName && label.Item.Kind == ItemKind.Run)
            {
                canvas.Bubble(label.Text, style, middle, box.Top + (box.Height / 2), box.Width / 2, PictureLabels.Radius);
                continue;
            }

            canvas.Blank(box.Left, box.Top, box.Width, box.Height);
            if (!label.IsName)
            {
                canvas.Box(box.Left, box.Top, box.Width, box.Height);
            }

            canvas.Text(label.Text, style, middle, baseline, Align.Centre);
        }
    }

    private static void DrawCaption(Canvas canvas, PictureView view, PageBox cell, double top)
    {
        var middle = top + cell.Top + cell.Height + (PictureLayout.CaptionHeight / 2);
        var baseline = middle + (TextStyle.Label.CapHeight / 2);
        canvas.Text(view.Projection.Caption, TextStyle.Label, cell.Left, baseline);
        var right = cell.Left + cell.Width;
        foreach (var (way, word) in view.Arrows.Reverse())
        {
            var isForward = string.Equals(word, PictureWords.Forward, StringComparison.Ordinal);
            var style = isForward ? TextStyle.Label : TextStyle.Small;
            var length = isForward ? LongArrow : ShortArrow;
            canvas.Text(word, style, right, baseline, Align.Right);
            right -= style.Width(word) + 1.5;
            var reach = Math.Max(HeadWidth, Math.Abs(way.X) * length / 2);
            Arrow(canvas, new PagePoint(right - reach, middle) - (length / 2 * way), way, length, isForward ? Canvas.Thick : Canvas.Medium);
            right -= (2 * reach) + 3;
        }
    }

    private static void Arrow(Canvas canvas, PagePoint tail, PagePoint way, double length, double pen)
    {
        var tip = tail + (length * way);
        var (neck, aside) = (tip - (HeadLength * way), new PagePoint(-way.Y, way.X));
        canvas.Path([tail, neck], pen);
        canvas.Path([neck + (HeadWidth * aside), tip, neck - (HeadWidth * aside), neck + (HeadWidth * aside)], Canvas.Medium);
        canvas.Path([neck, tip - (0.5 * way)], HeadWidth);
    }

    private void DrawScale(Canvas canvas, double top)
    {
        var (length, words) = PictureWords.Bar(_picture.Notation, MostBar * Layout.Denominator);
        var width = length.Millimetres / Layout.Denominator;
        var middle = Layout.Cells[1].Top + top - (PictureLayout.CaptionHeight / 2);
        var baseline = middle + (TextStyle.Label.CapHeight / 2);
        canvas.Text(PictureWords.Scale(Layout.Denominator), TextStyle.Label, 0, baseline - 6.5);
        canvas.Path([new(0, middle - 1), new(0, middle + 1)], Canvas.Medium, flatEnds: true);
        canvas.Path([new(width, middle - 1), new(width, middle + 1)], Canvas.Medium, flatEnds: true);
        canvas.Line(0, middle, width, middle);
        canvas.Black(0, middle - 0.5, width / 2, 1);
        canvas.Text(words, TextStyle.Small, width + 2, baseline);
    }
}
