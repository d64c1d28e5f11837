using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A bend from the triangle of a corner and its two neighbours.</summary>
internal static class TapedBend
{
    /// <summary>
    /// What the tube turns at the corner between the sides a and b, in radians: the outer angle of the triangle a, b, c. Meaningless where
    /// the three make no triangle.
    /// </summary>
    /// <remarks>
    /// W. Kahan, Miscalculating Area and Angles of a Needle-like Triangle (Berkeley, 2014), section 5: the parentheses must stay as they
    /// are. His angle C is the inner one, and atan2 with its arguments exchanged gives 180° − C.
    /// </remarks>
    public static double Turn(double a, double b, double c)
    {
        if (a < b)
        {
            (a, b) = (b, a);
        }

        var mu = b >= c ? c - (a - b) : b - (a - c);
        return 2 * Math.Atan2(Math.Sqrt((a + (b + c)) * Math.Max(0, (a - c) + b)), Math.Sqrt(((a - b) + c) * Math.Max(0, mu)));
    }

    /// <summary>The bend at a corner in radians; null, mostly with a finding, where the distances give none.</summary>
    public static double? At(int corner, DistanceTable table, List<Finding> findings)
    {
        if (table.Between(corner - 1, corner) is not { } before
            || table.Between(corner, corner + 1) is not { } after
            || table.Between(corner - 1, corner + 1) is not { } over)
        {
            return null;
        }

        var turn = Turn(before.Distance.Millimetres, after.Distance.Millimetres, over.Distance.Millimetres);
        var longest = before.Distance + after.Distance;
        var shortest = before.Distance > after.Distance ? before.Distance - after.Distance : after.Distance - before.Distance;
        if (over.Distance - longest > Tolerances.TapeSlip)
        {
            findings.Add(Impossible(before, after, over, over.Distance - longest, $"at most {FindingFigures.Mm(longest)}", "much"));
            return null;
        }

        if (turn >= Tolerances.NoCorner.Radians)
        {
            findings.Add(Impossible(before, after, over, shortest - over.Distance, $"more than {FindingFigures.Mm(shortest)}", "little"));
            return null;
        }

        if (turn < Tolerances.InLine.Radians)
        {
            findings.Add(TapedRules.CornerInLine.Error(
                over.At,
                $"the line goes straight on at corner {corner}: distance {over.Name} is {FindingFigures.Mm(over.Distance)} and "
                    + $"{before.Name} and {after.Name} together are {FindingFigures.Mm(longest)}; leave this corner out and number the "
                    + $"later ones one lower"));
            return null;
        }

        return turn;
    }

    private static Finding Impossible(
        TapedDistance before, TapedDistance after, TapedDistance over, Length by, string limit, string word) =>
        TapedRules.TriangleImpossible.Error(
            over.At,
            $"distance {over.Name} is {FindingFigures.Mm(over.Distance)}, {FindingFigures.UpMm(by)} too {word}: with {before.Name} of "
                + $"{FindingFigures.Mm(before.Distance)} and {after.Name} of {FindingFigures.Mm(after.Distance)} it is {limit}; measure "
                + $"{over.Name} again, and if it stays, {before.Name} and {after.Name}");
}
