using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// Places labels around a drawn tube. Places all around are tried, the nearest first and beginning in the direction where the label would
/// like to lie. One is free where the label touches neither the tube nor another label or its leader line, where its own leader line
/// passes under no other label, and inside the cell. Of the free places the nearest is taken; one whose leader line crosses
/// the tube or another leader line counts as further away.
/// </summary>
/// <param name="tube">The drawn centreline.</param>
/// <param name="tubeWidth">On paper.</param>
/// <param name="cell">Where labels may lie.</param>
/// <param name="taken">Lines of something else, with letters at their ends.</param>
internal sealed class LabelPlaces(IReadOnlyList<PagePoint> tube, double tubeWidth, ViewCell cell, IReadOnlyList<Segment> taken)
{
    private const double Clearance = 0.7;
    private const double Step = 1.5;

    /// <summary>Between a label and a line that is not its own.</summary>
    private const double FromLeader = 0.4;

    /// <summary>From the middle of a letter at the end of a line.</summary>
    private const double LetterReach = 1.6;

    /// <summary>How much further away, in millimetres, a free place may be instead of one whose leader line crosses something.</summary>
    private const double CrossingCost = 8;

    /// <summary>The same for a place a quarter turn away from where the label would like to lie.</summary>
    private const double TurnCost = 1.5;

    /// <summary>Directions tried, in degrees from the wanted one.</summary>
    private static readonly double[] Turns = [0, 25, -25, 50, -50, 75, -75, 100, -100, 130, -130, 155, -155, 180];

    private readonly Segment[] _tube = [.. tube.Zip(tube.Skip(1), (from, to) => new Segment(from, to))];
    private readonly List<ViewLabel> _placed = [];

    /// <summary>Places a label; null, and nothing placed, where there is no free place in the cell.</summary>
    /// <param name="text">Printable.</param>
    /// <param name="halfWidth">Of the label.</param>
    /// <param name="anchors">What it belongs to: one place on the tube or more.</param>
    /// <param name="wanted">The direction it would like to lie in; any where it has no length.</param>
    public ViewLabel? Place(string text, double halfWidth, IReadOnlyList<PagePoint> anchors, PagePoint wanted)
    {
        var heading = wanted.Norm > 0.01 ? Math.Atan2(wanted.Y, wanted.X) : -Math.PI / 2;
        var anchor = 1.0 / anchors.Count * anchors.Aggregate((sum, next) => sum + next);
        var nearest = (tubeWidth / 2) + ViewLabel.Radius + Clearance;
        var furthest = cell.Width + cell.Height;
        ViewLabel? best = null;
        var least = double.PositiveInfinity;
        for (var distance = nearest; distance < Math.Min(furthest, least); distance += Step)
        {
            foreach (var turn in Turns)
            {
                var cost = distance + (Math.Abs(turn) / 90 * TurnCost);
                if (cost >= least)
                {
                    continue;
                }

                var (sin, cos) = Math.SinCos(heading + (turn * Math.PI / 180));
                var place = anchor + new PagePoint(distance * cos, distance * sin);
                if (!IsFree(place, halfWidth))
                {
                    continue;
                }

                var label = new ViewLabel(text, place, halfWidth, [.. anchors.Select(from => Leader(from, place))]);
                if (!label.Leaders.Any(PassesUnderLabel) && cost + (CrossingCost * Crossed(label.Leaders)) is var whole && whole < least)
                {
                    (best, least) = (label, whole);
                }
            }
        }

        if (best is not null)
        {
            _placed.Add(best);
        }

        return best;
    }

    /// <summary>From the tube's outside, so that it does not run through the tube.</summary>
    private Segment Leader(PagePoint anchor, PagePoint place)
    {
        var way = place - anchor;
        return new(way.Norm > tubeWidth ? anchor + (tubeWidth / 2 / way.Norm * way) : anchor, place);
    }

    private bool IsFree(PagePoint place, double halfWidth)
    {
        if (place.X - halfWidth < cell.Left || place.X + halfWidth > cell.Left + cell.Width
            || place.Y - ViewLabel.Radius < cell.Top || place.Y + ViewLabel.Radius > cell.Top + cell.Height)
        {
            return false;
        }

        var core = ViewLabel.CoreAt(place, halfWidth);
        foreach (var other in _placed)
        {
            if (IsNear(core, other.Core, (2 * ViewLabel.Radius) + Clearance)
                || IsNearAny(core, other.Leaders, ViewLabel.Radius + FromLeader))
            {
                return false;
            }
        }

        return !IsNearAny(core, taken, ViewLabel.Radius + LetterReach)
            && !IsNearAny(core, _tube, (tubeWidth / 2) + ViewLabel.Radius + (Clearance / 2));
    }

    private bool PassesUnderLabel(Segment leader) => _placed.Exists(other => leader.DistanceTo(other.Core) < ViewLabel.Radius + FromLeader);

    private int Crossed(IReadOnlyList<Segment> leaders) =>
        leaders.Sum(leader => _tube.Count(leader.Crosses) + _placed.Sum(other => other.Leaders.Count(leader.Crosses)));

    private static bool IsNearAny(Segment core, IReadOnlyList<Segment> pieces, double distance)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            if (IsNear(core, pieces[i], distance))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsNear(Segment core, Segment piece, double distance) =>
        !core.IsClearOf(piece, distance) && core.DistanceTo(piece) < distance;
}
