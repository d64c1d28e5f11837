using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Limits;

/// <summary>The tool stops before the bend is made.</summary>
public static class BendBeyondTool
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "bend-beyond-tool", RuleSubject.Making, "A hand bender stops at its largest bend; a bend beyond it cannot be made on it.");

    /// <summary>A finding at each bend that is larger than its tool makes.</summary>
    public static IEnumerable<Finding> Check(RouteLayout layout)
    {
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i].Bend;
            if (bend.Bender.LargestBend is { } largest && bend.Turn > largest)
            {
                yield return Rule.Error(
                    bend.TurnAt,
                    $"bend {i + 1} is {AngleNotation.Figure(bend.Turn)} and {BenderNames.InWords(bend.Bender)} makes at most {AngleNotation.Figure(largest)}: use another tool, or make it as two bends with a straight between them");
            }
        }
    }
}
