using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Limits;

/// <summary>
/// Bent from A to B, the held side of a bend is the straight before it, with its far end already bent; the swept side is still straight
/// up to end B. A warning: turned round or in another order the bend may still be made.
/// </summary>
public static class TooLittleToHold
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "too-little-to-hold", RuleSubject.Making, "A hand bender needs straight tube to hold on one side and to sweep on the other.");

    /// <summary>A finding at each bend that has less straight beside it than its tool needs.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        // End B is trimmed and flared after the bends, so what these take is still there to be swept.
        var beyond = template.To.Takes + template.To.Trim;
        var findings = new List<Finding>();
        for (var i = layout.Bends.Length - 1; i >= 0; i--)
        {
            var bend = layout.Bends[i].Bend;
            beyond += layout.Legs[i + 1].StraightLeft;
            if (beyond >= Length.Zero && beyond.FallsShortOf(bend.Bender.Follow))
            {
                findings.Add(Finding(i, bend, "swept", beyond, bend.Bender.Follow));
            }

            var held = layout.Legs[i].StraightLeft;
            if (held >= Length.Zero && held.FallsShortOf(bend.Bender.Grip))
            {
                findings.Add(Finding(i, bend, "held", held, bend.Bender.Grip));
            }

            beyond += bend.Bender.ArcFactor * layout.Bends[i].Arc;
        }

        findings.Reverse();
        return findings;
    }

    private static Finding Finding(int index, Bend bend, string side, Length left, Length need) => Rule.Warning(
        bend.TurnAt,
        $"bend {index + 1} has {FindingFigures.Mm(left)} of straight tube on its {side} side and {BenderNames.InWords(bend.Bender)} needs {FindingFigures.Mm(need)} when the line is bent from A to B: try the bend on scrap first, or move the bends apart");
}
