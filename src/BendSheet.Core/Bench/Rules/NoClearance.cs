using BendSheet.Core.Bench.Order;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// The swept tube hits something before the bend is made: a wall, the bench below the tool, or the tool itself. Warnings, for the tool can
/// be moved; looked at only where the file says what is there. A hand bender is used with either face down, so that the better one counts.
/// </summary>
public static class NoClearance
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "no-room", RuleSubject.Making, "Tube that hits the wall, the bench or the tool while a bend is made springs out of it or kinks.");

    /// <summary>A finding at each bend that lacks clearance, in the order they are made.</summary>
    internal static IEnumerable<Finding> Check(LineTemplate template, BenchPlan plan, SweepReach swings)
    {
        for (var i = 0; i < plan.Order.Steps.Length; i++)
        {
            var step = plan.Order.Steps[i];
            var bend = plan.Bends[step.Bend];
            var half = 0.5 * template.Tube.OutsideDiameter;
            if (bend.Bender.ClearAround is { } around && around.FallsShortOf(step.Swing + half))
            {
                yield return Rule.Warning(
                    bend.Bend.TurnAt,
                    $"bend {bend.Number}, held at {step.Held}, swings tube {FindingFigures.UpMm(step.Swing + half)} from the middle of "
                    + "the former "
                    + $"and there is room for {FindingFigures.Mm(around)}: move {BenderNames.InWords(bend.Bender)} where it is free all "
                    + "round, "
                    + "or hold it in the hand");
            }

            if (bend.Bender is { ClearBelow: null, Body: null })
            {
                continue;
            }

            var before = plan.Order.Steps.Take(i).Select(made => made.Bend).ToHashSet();
            var clearance = ToolClearance.Of(swings, step, before.Contains, bend.Layout.Radius);
            if (InTheWay(clearance, bend, half, 1) is { } onOne && InTheWay(clearance, bend, half, -1) is { } onOther)
            {
                yield return Rule.Warning(
                    bend.Bend.TurnAt,
                    $"bend {bend.Number}, held at {step.Held}: {(onOne.Depth <= onOther.Depth ? onOne : onOther).Message}");
            }
        }
    }

    /// <summary>What is in the way with one face of the tool down; null where nothing is.</summary>
    private static (Length Depth, string Message)? InTheWay(ToolClearance clearance, BenchBend bend, Length half, int side)
    {
        var depth = clearance.Beyond(side) + half;
        if (bend.Bender.Body is { } body && clearance.Nearest(side, body, 2 * half) is { } near)
        {
            return (depth, $"tube that is bent already comes within {FindingFigures.Mm(near)} of the former's middle, where "
                + $"{BenderNames.InWords(bend.Bender)} itself is (its body reaches {FindingFigures.Mm(body)}), whichever face is down: "
                + "move the bends apart, or use a smaller tool");
        }

        return bend.Bender.ClearBelow is { } below && below.FallsShortOf(depth)
            ? (depth, $"bent tube reaches {FindingFigures.UpMm(depth)} below the tube in {BenderNames.InWords(bend.Bender)}, with its "
                + "better face down, "
                + $"and the bench is {FindingFigures.Mm(below)} below: let it hang over the edge of the bench, or raise the tool")
            : null;
    }
}
