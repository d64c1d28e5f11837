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
        foreach (var (use, what, more) in new[]
        {
            (PieceUse.Line, "line", ""), (PieceUse.Rough, "line", " without a template"), (PieceUse.Practice, "practice flare", ""),
            (PieceUse.PracticeBend, "practice bend", ""),
        })
        {
            var count = need.Pieces.Count(piece => piece.Use == use);
            if (count > 0)
            {
                yield return (Counted.Words(count, what) + more, need.Of(use));
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
        (tube.Plan?.Rolls ?? []).Where(roll => roll.Before > Length.Zero).Select(roll => new StockRoll(
            roll.Name,
            Figure.Of(roll.Before, notation),
            [
                .. roll.Cuts.Where(cut => cut.Piece.Use != PieceUse.Rough).Select(
                    cut => new StockCut(
                        notation.Figure(cut.To), notation.Figure(cut.Piece.Length), notation.Figure(cut.Left), cut.Piece.Name)),
            ],
            [
                .. roll.Cuts.Where(cut => cut.Piece.Use == PieceUse.Rough).Select(
                    cut => new StockRoom(cut.Piece.Name, $"about {notation.WithUnit(cut.Piece.Length)}")),
            ],
            notation.InBoth(roll.Left))).OrderBy(roll => roll.Cuts.IsEmpty).ThenBy(roll => roll.Planned.IsEmpty);

    private static IEnumerable<string> Remarks(TubePlan tube, LengthNotation notation)
    {
        if (tube.Plan is not { } plan)
        {
            yield return "The file lists no roll of this tube, so there is no cutting plan.";
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
            yield return $"{WhyBuy(plan)}: buy {Counted.Words(plan.Bought, roll.KindInWords)} of {notation.Size(roll.Length)}{cost}."
                + FewerCannot(tube, plan);
        }
        else if (plan.Fits)
        {
            yield return "Fits what is there.";
        }

        if (plan.MeasuredFirst)
        {
            yield return "Lines with a template are planned first, the others in what they leave: with those measured, another plan may be "
                + "better.";
        }

        yield return $"Longest piece left: {notation.InBoth(plan.LongestLeft)}"
            + (plan.MeasuredFirst ? "."
            : plan.LeftIsProven ? ", and no other way to cut these rolls leaves a longer one."
            : $". Whether more can be left is not proven: more than {notation.WithUnit(plan.LongestLeftAtMost)} cannot.");
        if (plan is { Cut: > 1, LeftIsProven: true, CutIsProven: true, MeasuredFirst: false })
        {
            yield return string.Create(
                CultureInfo.InvariantCulture, $"{plan.Cut} rolls are cut into: with fewer, so long a piece cannot be left.");
        }
    }

    private static string WhyBuy(CuttingPlan plan)
    {
        var fromNew = plan.Rolls.Where(roll => roll.IsBought).SelectMany(roll => roll.Cuts).ToList();
        return plan.ForSpare == plan.Bought ? "The lines fit what is there, and the spare does not"
            : fromNew.Count > 0 && fromNew.TrueForAll(cut => cut.Piece.Use == PieceUse.Rough)
            ? "What is measured fits what is there, and lines without a template do not"
            : "Does not fit what is there";
    }

    private static string FewerCannot(TubePlan tube, CuttingPlan plan)
    {
        var lengths = tube.Rolls.GroupBy(roll => roll.Length).ToList();
        return plan switch
        {
            { MeasuredFirst: true, RollsAreProven: false } => string.Empty,
            { RollsAreProven: false } => string.Create(
                CultureInfo.InvariantCulture, $" Whether fewer would do is not proven: fewer than {plan.BoughtAtLeast} cannot."),
            _ when lengths.Count == 1 => " Fewer cannot do.",
            { MeasuredFirst: true, LengthIsProven: false } => " Fewer of this length cannot do.",
            { LengthIsProven: false } => " Fewer of this length cannot do; whether another would be better is not proven.",
            _ when lengths.TrueForAll(same => same.Any(roll => roll.Price is not null)) =>
                " Fewer of this length cannot do, and no other one of yours costs less.",
            _ => " Fewer of this length cannot do, and of no other one of yours would fewer do.",
        };
    }

    private static string Money(decimal money) =>
        money.ToString(money == decimal.Truncate(money) ? "0" : "0.00", CultureInfo.InvariantCulture);
}
