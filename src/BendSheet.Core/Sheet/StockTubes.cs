using System.Globalization;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>One kind of tube in words: the sum, the cutting plan, what to buy.</summary>
internal static class StockTubes
{
    /// <summary>The words.</summary>
    public static StockTube Of(TubePlan tube, LengthNotation notation) => new(
        TubeWords.InWords(tube.Tube, notation),
        [.. Amounts(tube).Select(amount => new StockAmount(amount.Label, Figure.Of(amount.Length, notation)))],
        [.. Rolls(tube, notation)],
        [.. Remarks(tube, notation)]);

    /// <summary>Of all tube to buy; null where nothing is bought or no price is known.</summary>
    public static string? Cost(StockPlan stock)
    {
        var bought = stock.Tubes.Select(tube => tube.Plan).OfType<CuttingPlan>().Where(plan => plan.Bought > 0).ToList();
        var priced = bought.Where(plan => plan.Cost is not null).ToList();
        return priced.Count == 0
            ? null
            : $"Cost of the tube to buy: {Money(priced.Sum(plan => plan.Cost!.Value))}{(priced.Count < bought.Count ? ", without the "
                + "rolls that have no price" : string.Empty)}.";
    }

    private static IEnumerable<(string Label, Length Length)> Amounts(TubePlan tube)
    {
        var need = tube.Need;
        var cut = need.Pieces.Length;
        (PieceUse, string)[] uses =
            [(PieceUse.Line, "line"), (PieceUse.Practice, "practice flare"), (PieceUse.PracticeBend, "practice bend")];
        foreach (var (use, what) in uses)
        {
            var count = need.Pieces.Count(piece => piece.Use == use);
            if (count > 0)
            {
                yield return (Counted.Words(count, what), need.Of(use));
            }
        }

        if (need.CuttingLosses > Length.Zero)
        {
            yield return ($"lost in {Counted.Words(cut, "cut")}", need.CuttingLosses);
        }

        if (need.Spare > Length.Zero)
        {
            yield return ("spare", need.Spare);
        }

        yield return ("needed in all", need.Total);
        if (!tube.Rolls.IsEmpty)
        {
            yield return ("left on rolls", tube.Left);
        }
    }

    private static IEnumerable<StockRoll> Rolls(TubePlan tube, LengthNotation notation) =>
        (tube.Plan?.Rolls ?? []).Where(roll => roll.Before > Length.Zero).OrderBy(roll => roll.Cuts.IsEmpty).Select(roll => new StockRoll(
            roll.Name,
            Figure.Of(roll.Before, notation),
            [.. roll.Cuts.Select(cut => new StockCut(notation.Figure(cut.To), notation.Figure(cut.Piece.Length), cut.Piece.Name))],
            notation.InBoth(roll.Left)));

    private static IEnumerable<string> Remarks(TubePlan tube, LengthNotation notation)
    {
        if (tube.Plan is not { } plan)
        {
            yield return "No roll of this tube is typed in `stock`, so there is no cutting plan.";
            yield break;
        }

        if (!plan.TooLong.IsEmpty)
        {
            yield return $"Longer than any roll: {string.Join(", ", plan.TooLong.Select(piece => piece.Name))}.";
        }

        if (tube.Need.Pieces.IsEmpty)
        {
            yield return "Nothing more is needed of it.";
            yield break;
        }

        if (plan.ToBuy is { } roll)
        {
            var cost = plan.Cost is { } money ? $", cost {Money(money)}" : string.Empty;
            var why = plan.ForSpare == plan.Bought ? "The lines fit what is there, and the spare does not" : "Does not fit what is there";
            yield return $"{why}: buy {Counted.Words(plan.Bought, roll.KindInWords)} of {notation.Size(roll.Length)}{cost}. "
                + (plan.RollsAreProven
                ? "Fewer cannot do."
                : string.Create(CultureInfo.InvariantCulture, $"The search stopped early: fewer than {plan.BoughtAtLeast} cannot do."));
        }
        else if (plan.Fits)
        {
            yield return "Fits what is there.";
        }

        yield return $"Longest piece left: {notation.InBoth(plan.LongestLeft)}"
            + (plan.LeftIsProven
            ? ", and no plan with so few rolls of these lengths leaves a longer one."
            : $". The search stopped early: more than {notation.WithUnit(plan.LongestLeftAtMost)} cannot be.");
    }

    private static string Money(decimal money) =>
        money.ToString(money == decimal.Truncate(money) ? "0" : "0.00", CultureInfo.InvariantCulture);
}
