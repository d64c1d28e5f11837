using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.Labels;

/// <summary>Places all around something: ring by ring outwards, each from the direction in which the label would like to lie.</summary>
internal static class Rings
{
    private const double Step = 1.5;

    /// <summary>How much further away, in millimetres, a place may be instead of one a quarter turn from the wanted direction.</summary>
    private const double TurnCost = 1.5;

    /// <summary>Directions, in degrees from the wanted one.</summary>
    private static readonly double[] Turns = [0, 25, -25, 50, -50, 75, -75, 100, -100, 130, -130, 155, -155, 180];

    /// <summary>Middles of the label; a place costs its distance, in millimetres.</summary>
    /// <param name="anchor">The middle of the rings.</param>
    /// <param name="wanted">The direction the label would like to lie in; any where it has no length.</param>
    /// <param name="nearest">Radius of the first ring.</param>
    /// <param name="furthest">No ring is as large.</param>
    public static IEnumerable<Candidate<PagePoint>> Around(PagePoint anchor, PagePoint wanted, double nearest, double furthest)
    {
        var heading = wanted.Norm > 0.01 ? Math.Atan2(wanted.Y, wanted.X) : -Math.PI / 2;
        for (var distance = nearest; distance < furthest; distance += Step)
        {
            foreach (var turn in Turns)
            {
                var (sin, cos) = Math.SinCos(heading + (turn * Math.PI / 180));
                yield return new(
                    distance, distance + (Math.Abs(turn) / 90 * TurnCost), anchor + new PagePoint(distance * cos, distance * sin));
            }
        }
    }
}
