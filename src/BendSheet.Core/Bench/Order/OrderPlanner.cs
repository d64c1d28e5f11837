using BendSheet.Core.Centreline;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using OrderCost = (int TurnRounds, int Swing);

namespace BendSheet.Core.Bench.Order;

/// <summary>Chooses the order of work of a line: which ends are flared when, which bend comes first, from which end each one is held.</summary>
internal static class OrderPlanner
{
    /// <summary>The best order that the line can be made in.</summary>
    /// <param name="template">As measured.</param>
    /// <param name="layout">Without a straight below zero.</param>
    /// <param name="tube">Its still straight tube.</param>
    /// <param name="swings">Of the same line.</param>
    /// <returns>Null where it cannot be made in any order.</returns>
    public static OrderOfWork? Find(LineTemplate template, RouteLayout layout, StraightTube tube, Swings swings) =>
        Best(EndWork.Choices(TubeEnd.A, template.From, layout.Legs[0].StraightLeft), EndWork.Choices(TubeEnd.B, template.To, layout.Legs[^1].StraightLeft), layout, tube, swings);

    /// <summary>The best order among some ways to finish the ends.</summary>
    public static OrderOfWork? Best(IEnumerable<EndWork> waysAtA, IEnumerable<EndWork> waysAtB, RouteLayout layout, StraightTube tube, Swings swings)
    {
        (OrderCost Cost, int Start, OrderOfWork Order)? best = null;
        foreach (var atB in waysAtB)
        {
            foreach (var atA in waysAtA)
            {
                if (layout.Bends.IsEmpty)
                {
                    return new([], atA.FlaredFirst, atB.FlaredFirst);
                }

                if (OrderSearch.Find(BendingTask.Of(layout, tube, atA, atB), swings) is not { } found)
                {
                    continue;
                }

                var start = OrderSearch.RankOfStart(found.Steps[0].Bend, found.Steps.Length);
                if (best is not { } known || (found.Cost, start).CompareTo((known.Cost, known.Start)) < 0)
                {
                    best = (found.Cost, start, new(found.Steps, atA.FlaredFirst, atB.FlaredFirst));
                }
            }
        }

        return best?.Order;
    }

    /// <summary>From A to B, held from A: the order that figures are given for where none works.</summary>
    public static OrderOfWork FromA(RouteLayout layout, Swings swings) => new(
        [.. layout.Bends.Select((_, i) => new BendStep(i, TubeEnd.A, layout.Bends.Length > OrderSearch.MostBends ? swings.AtMost(i, TubeEnd.A) : swings.Of(i, TubeEnd.A, 0)))],
        FlareAFirst: false,
        FlareBFirst: false);
}
