using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Limits;

/// <summary>
/// Beside a bend of 180° or more the flat parts are carried over unchanged, so the tube's U is wider or narrower than the wire's by
/// twice the difference of the radii. Never silently.
/// </summary>
public static class SpreadChanged
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "spread-changed", RuleSubject.Making, "A U-bend on another radius than the wire's spreads the two legs further or less far apart.");

    /// <summary>A finding at each bend of 180° or more whose tube radius is not the wire's.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i];
            if (bend.Bend.HasCorner || template.Wire.Radius is not { } wire)
            {
                continue;
            }

            var change = 2 * (bend.Radius - wire);
            if (Math.Abs(change.Millimetres) < Tolerances.SamePoint.Millimetres)
            {
                continue;
            }

            var (size, word) = change > Length.Zero ? (change, "further apart") : (Length.Zero - change, "closer together");
            yield return Rule.Warning(
                bend.Bend.TurnAt,
                $"the legs beside bend {i + 1} ({AngleNotation.Figure(bend.Bend.Turn)}) come out {FindingFigures.Mm(size)} {word} in tube than in the wire, because the tool's radius is not the wire's: check that they still fit");
        }
    }
}
