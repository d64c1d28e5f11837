using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// Places labels around a drawn tube, each at the nearest place inside the cell where it touches neither the tube nor another label. One
/// whose leader line crosses the tube or another leader line counts as further away.
/// </summary>
internal sealed class LabelsAround
{
    /// <summary>From the middle of a letter at the end of a line.</summary>
    private const double LetterReach = 1.6;

    /// <summary>How much further away, in millimetres, a free place may be instead of one whose leader line crosses something.</summary>
    private const double CrossingCost = 8;

    private readonly Segment[] _tube;
    private readonly double _tubeWidth;
    private readonly ViewCell _cell;
    private readonly IReadOnlyList<Segment> _taken;
    private readonly LabelPlacer<ViewLabel> _placer;

    /// <summary>No label is placed yet.</summary>
    /// <param name="tube">The drawn centreline.</param>
    /// <param name="tubeWidth">On paper.</param>
    /// <param name="cell">Where labels may lie.</param>
    /// <param name="taken">Lines of something else, with letters at their ends.</param>
    public LabelsAround(IReadOnlyList<PagePoint> tube, double tubeWidth, ViewCell cell, IReadOnlyList<Segment> taken)
    {
        _tube = [.. tube.Zip(tube.Skip(1), (from, to) => new Segment(from, to))];
        (_tubeWidth, _cell, _taken) = (tubeWidth, cell, taken);
        _placer = new(IsFree, Crossing);
    }

    /// <summary>Places a label; null, and nothing placed, where there is no free place in the cell.</summary>
    /// <param name="text">Printable.</param>
    /// <param name="halfWidth">Of the label.</param>
    /// <param name="anchors">What it belongs to: one place on the tube or more.</param>
    /// <param name="wanted">The direction it would like to lie in; any where it has no length.</param>
    public ViewLabel? Place(string text, double halfWidth, IReadOnlyList<PagePoint> anchors, PagePoint wanted)
    {
        var middle = 1.0 / anchors.Count * anchors.Aggregate((sum, next) => sum + next);
        var nearest = (_tubeWidth / 2) + ViewLabel.Radius + ViewLabel.Clearance;
        return _placer.Place(
            Rings.Around(middle, wanted, nearest, _cell.Width + _cell.Height)
                .Where(place => IsInside(place.Label, halfWidth))
                .Select(place => new Candidate<ViewLabel>(
                    place.AtLeast,
                    place.Cost,
                    new(text, place.Label, halfWidth, [.. anchors.Select(anchor => Leader(anchor, place.Label))]))));
    }

    /// <summary>From the tube's outside, so that it does not run through the tube.</summary>
    private Segment Leader(PagePoint anchor, PagePoint place)
    {
        var way = place - anchor;
        return new(way.Norm > _tubeWidth ? anchor + (_tubeWidth / 2 / way.Norm * way) : anchor, place);
    }

    private bool IsInside(PagePoint place, double halfWidth) =>
        place.X - halfWidth >= _cell.Left && place.X + halfWidth <= _cell.Left + _cell.Width
        && place.Y - ViewLabel.Radius >= _cell.Top && place.Y + ViewLabel.Radius <= _cell.Top + _cell.Height;

    private bool IsFree(ViewLabel label, IReadOnlyList<ViewLabel> placed) =>
        !placed.Any(label.Meets)
        && !label.Core.IsNearAny(_taken, ViewLabel.Radius + LetterReach)
        && !label.Core.IsNearAny(_tube, (_tubeWidth / 2) + ViewLabel.Radius + (ViewLabel.Clearance / 2));

    private double Crossing(ViewLabel label, IReadOnlyList<ViewLabel> placed) => CrossingCost * label.Leaders.Sum(
        leader => _tube.Count(leader.Crosses) + placed.Sum(other => other.Leaders.Count(leader.Crosses)));
}
