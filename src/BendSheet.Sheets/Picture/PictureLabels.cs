using BendSheet.Core.Picture;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.Picture;

/// <summary>
/// Places the labels of one view: first a number for each item, so that nothing stays without a label for want of room; then the name
/// instead, where there is room for it near by.
/// </summary>
internal sealed class PictureLabels
{
    /// <summary>Of a number's circle or box, in millimetres.</summary>
    public const double Radius = 2.3;

    private const double Nearest = 1.9;

    /// <summary>From one ring of places to the next, for each millimetre from the middle, and at least.</summary>
    private const double Widening = 0.12;
    private const double LeastStep = 1.2;
    private const int Directions = 16;

    /// <summary>No leader is longer than this, in millimetres.</summary>
    private const double FurthestNumber = 55;

    /// <summary>A name further away than this is no help.</summary>
    private const double FurthestName = 11;

    /// <summary>Longer names stand in the key only.</summary>
    private const double WidestName = 55;

    /// <summary>How much further away a label may be instead of one whose leader crosses a line or another leader.</summary>
    private const double CrossingCost = 3;

    /// <summary>And instead of one that points to a place further from the middle.</summary>
    private const double AnchorCost = 0.4;

    private readonly IReadOnlyList<DrawnItem> _drawn;
    private readonly TakenRoom _room;
    private readonly LabelPlacer<PictureLabel> _placer;

    private PictureLabels(IReadOnlyList<DrawnItem> drawn, PageBox cell)
    {
        (_drawn, _room) = (drawn, new(drawn, cell));
        _placer = new(IsFree, Crossing);
    }

    /// <summary>Of a name.</summary>
    public static TextStyle NameStyle => TextStyle.Small;

    /// <summary>The labels of a view, at most one for each item.</summary>
    /// <param name="drawn">The items.</param>
    /// <param name="cell">That no label leaves.</param>
    /// <param name="wanted">Those that are to have a label.</param>
    /// <param name="labelled">Numbers of items that another view has a label for: where room is short they come last.</param>
    public static IReadOnlyList<PictureLabel> Of(
        IReadOnlyList<DrawnItem> drawn, PageBox cell, IReadOnlySet<PictureItem> wanted, IReadOnlySet<int> labelled)
    {
        var labels = new PictureLabels(drawn, cell);
        var placed = new Dictionary<int, PictureLabel>();
        List<DrawnItem> all = [.. drawn.Where(one => wanted.Contains(one.Item))];
        foreach (var item in all.OrderBy(one => labelled.Contains(one.Item.Number)).ThenBy(one => one.Item.Kind))
        {
            if (labels.Place(item, isName: false) is { } number)
            {
                placed[item.Item.Number] = number;
            }
        }

        foreach (var item in all.OrderByDescending(one => one.Item.Kind))
        {
            if (labels.Place(item, isName: true) is { } name)
            {
                placed[item.Item.Number] = name;
            }
        }

        return [.. placed.Values];
    }

    private PictureLabel? Place(DrawnItem item, bool isName)
    {
        var text = isName ? item.Item.Label : PictureWords.Number(item.Item.Number);
        var width = isName
            ? NameStyle.Width(text) + 1.2
            : Math.Max(2 * Radius, TextStyle.Label.Width(text) + 2);
        return isName && width > WidestName
            ? null
            : _placer.Place(Candidates(item, text, isName, width, isName ? NameStyle.LineHeight : 2 * Radius));
    }

    private IEnumerable<Candidate<PictureLabel>> Candidates(DrawnItem item, string text, bool isName, double width, double height)
    {
        var anchors = item.Anchors();
        var furthest = isName ? FurthestName : FurthestNumber;
        if (item.Item.Kind == ItemKind.Zone && Around(anchors[0], width, height) is var inside && _room.IsFree(inside))
        {
            yield return new(0, 0, new(item.Item, text, isName, inside, anchors[0]));
        }

        for (var distance = Nearest; distance < furthest; distance += Math.Max(LeastStep, Widening * distance))
        {
            for (var i = 0; i < anchors.Count; i++)
            {
                for (var direction = 0; direction < Directions; direction++)
                {
                    // Straight up first: a name above its line reads best.
                    var (sin, cos) = Math.SinCos(2 * Math.PI * direction / Directions);
                    var anchor = anchors[i];
                    var reach = distance + (item.Item.Kind == ItemKind.Part ? Math.Min(item.Box.Width, item.Box.Height) / 2 : 0);
                    var middle = anchor + new PagePoint((reach * sin) + (sin * width / 2), (-reach * cos) - (cos * height / 2));
                    var box = Around(middle, width, height);
                    if (_room.IsFree(box))
                    {
                        yield return new(
                            distance,
                            distance + (AnchorCost * i),
                            new(item.Item, text, isName, box, Outside(item, anchor, middle)));
                    }
                }
            }
        }
    }

    private static PageBox Around(PagePoint middle, double width, double height) =>
        new(middle.X - (width / 2), middle.Y - (height / 2), width, height);

    /// <summary>A leader begins at the side of a part's box.</summary>
    private static PagePoint Outside(DrawnItem item, PagePoint anchor, PagePoint towards) => item.Item.Kind == ItemKind.Part
        ? new(
            Math.Clamp(towards.X, item.Box.Left, item.Box.Left + item.Box.Width),
            Math.Clamp(towards.Y, item.Box.Top, item.Box.Top + item.Box.Height))
        : anchor;

    private static bool IsFree(PictureLabel label, IReadOnlyList<PictureLabel> placed)
    {
        foreach (var other in placed)
        {
            // The number that a name stands in the place of is not drawn.
            if (!ReferenceEquals(other.Item, label.Item) && label.Meets(other))
            {
                return false;
            }
        }

        return true;
    }

    private double Crossing(PictureLabel label, IReadOnlyList<PictureLabel> placed)
    {
        var crossed = placed.Count(other => !ReferenceEquals(other.Item, label.Item) && other.Leader.Crosses(label.Leader));
        foreach (var item in _drawn)
        {
            if (item.Item.Kind == ItemKind.Run && !ReferenceEquals(item.Item, label.Item))
            {
                crossed += item.Pieces.Count(label.Leader.Crosses);
            }
        }

        return CrossingCost * crossed;
    }
}
