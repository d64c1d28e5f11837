using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Stock;

namespace BendSheet.Core.Car;

/// <summary>A solved car, held against the tube and the hardware that are there.</summary>
/// <param name="Plan">Whether the tube will do, and how it is cut.</param>
/// <param name="Shopping">What to buy.</param>
/// <param name="Findings">Those of the car and of its stock, in the order of the file.</param>
public sealed record CarStock(StockPlan Plan, ShoppingList Shopping, ImmutableArray<Finding> Findings)
{
    /// <summary>What the findings come to.</summary>
    public Verdict Verdict => Findings.Verdict();

    /// <summary>Solved lines and network → stock → shopping list.</summary>
    /// <param name="car">All lines of the file. Of a wrong file nothing is counted: its lines are left out, and what is there would look
    /// like enough.</param>
    internal static CarStock Of(CarPlan car)
    {
        var isWrong = car.Verdict == Verdict.WrongFile || car.Measured.Findings.Verdict() == Verdict.WrongFile;
        var lines = isWrong ? [] : car.Lines;
        var rough = isWrong ? [] : car.RoughLines;
        var notation = car.Measured.Notation;
        var stores = isWrong ? Stores.Empty : car.Measured.Stores;
        var needs = PlumbingNeeds.Of(car.Network, notation)
            .Select(
                need => new ShoppingItem(need.Sort, need.Kind, string.Empty, need.Count, need.UsedAt)
                {
                    Article = need.Article,
                    Have = Math.Min(need.Have, need.Count),
                });
        var plan = StockPlan.Of(lines, rough, stores);
        var shopping = ShoppingList.Of(lines, rough, plan, stores.Have, needs, notation);
        return new(plan, shopping, [.. car.Findings.Concat(plan.Findings).Concat(shopping.Findings).InFileOrder()]);
    }
}
