using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>What is to be said when the tube that is there is held against what is needed.</summary>
public static class StockRules
{
    /// <summary>More names would only hide the figures.</summary>
    private const int MostNamed = 6;

    /// <summary>Something has to be bought.</summary>
    public static Rule TooSmall { get; } = new(
        "stock-too-small", RuleSubject.Making, "It is better to know before the first cut that the tube will run out.");

    /// <summary>A line is longer than any roll.</summary>
    public static Rule PieceTooLong { get; } = new(
        "longer-than-roll", RuleSubject.Making, "A line cannot be longer than the tube that it is cut from.");

    /// <summary>The search stopped early.</summary>
    public static Rule NotProven { get; } = new(
        "plan-not-proven",
        RuleSubject.Making,
        "A plan not compared with every other one may not be the best, and must say so.");

    /// <summary>Lines are made, and nobody said what they left on the roll.</summary>
    public static Rule LeftNotTyped { get; } = new(
        "left-not-typed",
        RuleSubject.Making,
        "Once lines have been cut from a roll, only you can say what is left on it.");

    /// <summary>The findings on one kind of tube, at its first roll or at the line.</summary>
    public static IEnumerable<Finding> Check(TubePlan tube)
    {
        if (tube.Plan is not { } plan)
        {
            yield break;
        }

        foreach (var piece in plan.TooLong)
        {
            var longest = tube.Rolls.MaxBy(roll => roll.Length)!;
            yield return PieceTooLong.Error(
                piece.At,
                $"{NameOf(piece)} takes {FindingFigures.UpMm(piece.Length)} of tube and the longest {longest.KindInWords} is "
                    + $"{FindingFigures.DownMm(longest.Length)}: make it in two lines with a union, or type a longer roll in `stock`");
        }

        if (plan.Bought > 0)
        {
            // Only the spare is missing: the lines can be begun, but one that goes wrong cannot be made again.
            var isOnlySpare = plan.ForSpare == plan.Bought;
            yield return isOnlySpare
                ? TooSmall.Warning(tube.Rolls[0].At, Short(tube, plan))
                : TooSmall.Error(tube.Rolls[0].At, Short(tube, plan));
        }

        if (WhatIsNotProven(tube, plan) is { } open)
        {
            yield return NotProven.Note(tube.Rolls[0].At, open);
        }
    }

    private static string? WhatIsNotProven(TubePlan tube, CuttingPlan plan) => plan switch
    {
        // What is measured comes first, and the plan says so.
        { MeasuredFirst: true } => null,
        { RollsAreProven: false } => string.Create(
            CultureInfo.InvariantCulture,
            $"the plan for {tube.InWords} buys {plan.Bought}, and whether fewer would do is not proven: fewer than "
                + $"{plan.BoughtAtLeast} cannot"),
        { LengthIsProven: false } =>
            $"the plan for {tube.InWords} buys lengths of {FindingFigures.Mm(plan.ToBuy!.Length)}, and whether another length would be "
                + "better is not proven",
        { LeftIsProven: false } =>
            $"the plan for {tube.InWords} leaves {FindingFigures.Mm(plan.LongestLeft)} in one piece, and whether more could be left is not "
                + $"proven: more than {FindingFigures.UpMm(plan.LongestLeftAtMost)} cannot",
        { CutIsProven: false } => string.Create(
            CultureInfo.InvariantCulture,
            $"the plan for {tube.InWords} cuts into {plan.Cut} rolls, and whether fewer would do is not proven: fewer than "
                + $"{plan.CutAtLeast} cannot"),
        _ => null,
    };

    /// <summary>For each tube of which lines are made and no roll says what is left of it.</summary>
    /// <param name="tubes">All.</param>
    /// <param name="made">The tube of each line that is made.</param>
    public static IEnumerable<Finding> LeftUnknown(IEnumerable<TubePlan> tubes, IReadOnlyCollection<Tube> made)
    {
        foreach (var tube in tubes.Where(tube => !tube.Rolls.IsEmpty && tube.Rolls.All(roll => !roll.LeftIsTyped)))
        {
            var count = made.Count(one => TubeKinds.AreOne(one, tube.Tube));
            if (count > 0)
            {
                yield return LeftNotTyped.Warning(
                    tube.Rolls[0].At,
                    $"{Counted.Words(count, "line")} of {tube.InWords} {Counted.Noun(count, "is", "are")} made and no roll of it says "
                    + "what is left: "
                    + "it is taken as whole; measure it and add `left`");
            }
        }
    }

    private static string Short(TubePlan tube, CuttingPlan plan)
    {
        var fromNew = plan.Rolls.Where(roll => roll.IsBought).ToList();
        var missing = tube.Need.Total - tube.Left;
        var names = fromNew.SelectMany(roll => roll.Cuts.Select(cut => cut.Piece)).Where(piece => !piece.IsPractice)
            .Select(piece => piece.Name).ToList();
        var spare = plan.ForSpare > 0;
        var what = string.Join(", ", names.Take(MostNamed))
            + (names.Count > MostNamed ? FormattableString.Invariant($" and {names.Count - MostNamed} more") : string.Empty);
        var by = missing > Units.Length.Zero
            ? $"it is {FindingFigures.UpMm(missing)} short"
            : "it is enough in all and the pieces do not go into it whole";
        var waiting = what.Length == 0 ? (spare ? "the spare" : "practice pieces") : what + (spare ? " and the spare" : string.Empty);
        return $"{tube.InWords}: {FindingFigures.UpMm(tube.Need.Total)} needed, {FindingFigures.DownMm(tube.Left)} left: {by}; "
            + $"buy {Counted.Words(plan.Bought, plan.ToBuy!.KindInWords)} of {FindingFigures.Mm(plan.ToBuy.Length)} for {waiting}";
    }

    private static string NameOf(Piece piece) => piece.IsPractice ? piece.Name : $"line {piece.Name}";
}
