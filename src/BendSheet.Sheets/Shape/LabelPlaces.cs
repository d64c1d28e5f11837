using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Shape;

/// <summary>
/// Places labels around a drawn tube: for each the nearest place, beginning in the direction it would like, where it touches neither the
/// tube nor another label and lies inside the cell.
/// </summary>
/// <param name="tube">The drawn centreline.</param>
/// <param name="tubeWidth">On paper.</param>
/// <param name="cell">Where labels may lie.</param>
internal sealed class LabelPlaces(IReadOnlyList<PagePoint> tube, double tubeWidth, ViewCell cell)
{
    /// <summary>Of every label, as a circle.</summary>
    public const double Radius = 2.3;

    private const double Clearance = 0.9;
    private const double Step = 1.5;

    /// <summary>Directions tried, nearest to the wanted one first.</summary>
    private static readonly double[] Turns = [0, 25, -25, 50, -50, 75, -75, 100, -100, 130, -130, 155, -155, 180];

    private readonly List<PagePoint> _placed = [];

    /// <summary>The middle of a label; null where there is no free place: no number is better than one printed over another or over the tube.</summary>
    /// <param name="anchor">What it belongs to.</param>
    /// <param name="wanted">The direction it would like to lie in; any where it has no length.</param>
    public PagePoint? Place(PagePoint anchor, PagePoint wanted)
    {
        var heading = wanted.Norm > 0.01 ? Math.Atan2(wanted.Y, wanted.X) : -Math.PI / 2;
        var nearest = (tubeWidth / 2) + Radius + Clearance;
        for (var distance = nearest; distance < nearest + 40; distance += Step)
        {
            foreach (var turn in Turns)
            {
                var (sin, cos) = Math.SinCos(heading + (turn * Math.PI / 180));
                var place = anchor + new PagePoint(distance * cos, distance * sin);
                if (InsideCell(place) && !MeetsLabel(place) && !MeetsTube(place))
                {
                    _placed.Add(place);
                    return place;
                }
            }
        }

        return null;
    }

    private bool InsideCell(PagePoint place) =>
        place.X - Radius >= cell.Left && place.X + Radius <= cell.Left + cell.Width
        && place.Y - Radius >= cell.Top && place.Y + Radius <= cell.Top + cell.Height;

    private bool MeetsLabel(PagePoint place) => _placed.Exists(other => (other - place).Norm < (2 * Radius) + Clearance);

    private bool MeetsTube(PagePoint place)
    {
        var needed = (tubeWidth / 2) + Radius + (Clearance / 2);
        for (var i = 0; i + 1 < tube.Count; i++)
        {
            if (Distance(place, tube[i], tube[i + 1]) < needed)
            {
                return true;
            }
        }

        return false;
    }

    private static double Distance(PagePoint place, PagePoint from, PagePoint to)
    {
        var along = to - from;
        var arm = place - from;
        var squared = (along.X * along.X) + (along.Y * along.Y);
        var part = squared == 0 ? 0 : Math.Clamp(((arm.X * along.X) + (arm.Y * along.Y)) / squared, 0, 1);
        return (arm - (part * along)).Norm;
    }
}
