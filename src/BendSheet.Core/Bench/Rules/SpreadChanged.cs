using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// A bend of 180° or more begins and ends where the wire has it along its legs, so the legs come out further apart or closer together than
/// the wire's. Never silently.
/// </summary>
/// <remarks>Chord of an arc, 2·R·|sin(bend/2)|: for a U-bend twice the radius.</remarks>
public static class SpreadChanged
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "spread-changed", RuleSubject.Making, "A U-bend on a radius other than the wire's puts the two legs a different distance apart.");

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

            var chord = 2 * Math.Abs(Math.Sin(bend.Bend.Turn.Radians / 2));
            var wider = wire.FallsShortOf(bend.Radius);
            var size = chord * (wider ? bend.Radius - wire : wire - bend.Radius);
            if (size <= Tolerances.SamePoint)
            {
                continue;
            }

            var word = wider ? "further apart" : "closer together";
            yield return Rule.Warning(
                bend.Bend.TurnAt,
                $"the legs beside bend {i + 1} ({AngleNotation.Figure(bend.Bend.Turn)}) come out {FindingFigures.Mm(size)} {word} in "
                    + "tube than in the wire, because the tool's radius is not the wire's: check that they still fit");
        }
    }
}
