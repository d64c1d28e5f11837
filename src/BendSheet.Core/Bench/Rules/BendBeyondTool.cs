using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>The tool stops before the bend is made; or it makes the bend, but not the little more that the pull needs.</summary>
public static class BendBeyondTool
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "bend-beyond-tool", RuleSubject.Making, "A hand bender stops at its largest bend; a bend beyond it cannot be made on it.");

    /// <summary>A finding at each bend that is larger than its tool makes, and a warning where only the pull angle is.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i].Bend;
            if (bend.Bender.LargestBend is not { } largest)
            {
                continue;
            }

            if (bend.Turn > largest)
            {
                yield return Rule.Error(
                    bend.TurnAt,
                    $"bend {i + 1} is {AngleNotation.Figure(bend.Turn)} and {BenderNames.InWords(bend.Bender)} makes at most "
                        + $"{AngleNotation.Figure(largest)}: use another tool, or make it as two bends with a straight between them");
            }
            else if (BenderCalibration.Of(bend.Bender, template.Tube).Pull(bend.Turn) is var pull && pull > largest)
            {
                yield return Rule.Warning(
                    bend.TurnAt,
                    $"bend {i + 1} is {AngleNotation.Figure(bend.Turn)} and has to be pulled to {AngleNotation.Figure(pull)}, and "
                        + $"{BenderNames.InWords(bend.Bender)} makes at most {AngleNotation.Figure(largest)}: it comes back too far "
                        + "open; use another tool, or make it as two bends with a straight between them");
            }
        }
    }
}
