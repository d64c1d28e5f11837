using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// Chooses the order of work of a line: which ends are flared when, which bend comes first, from which end each one is held. The least
/// <see cref="OrderCost"/>, then the better way to finish the ends, then starting at A, or else at B rather than in the middle.
/// </summary>
internal static class OrderPlanner
{
    /// <summary>
    /// Swings within this of the smallest one count as equal: nobody clears a bench more finely, and an order that starts at an end is
    /// easier to follow.
    /// </summary>
    private static readonly Length SameSwing = Length.FromMillimetres(100);

    /// <summary>The best order that the line can be made in.</summary>
    /// <param name="template">As measured.</param>
    /// <param name="layout">Without a straight below zero.</param>
    /// <param name="tube">Its still straight tube.</param>
    /// <param name="swings">Of the same line.</param>
    /// <returns>Null where it cannot be made in any order.</returns>
    public static OrderOfWork? Find(LineTemplate template, RouteLayout layout, StraightTube tube, SweepReach swings) =>
        Best(
            FlareTiming.Choices(TubeEnd.A, template.From, layout.Legs[0].StraightLeft),
            FlareTiming.Choices(TubeEnd.B, template.To, layout.Legs[^1].StraightLeft), layout, tube, swings);

    /// <summary>The best order among some ways to finish the ends, the better way first.</summary>
    public static OrderOfWork? Best(
        IEnumerable<FlareTiming> waysAtA, IEnumerable<FlareTiming> waysAtB, RouteLayout layout, StraightTube tube, SweepReach swings)
    {
        var ways = waysAtB.SelectMany(atB => waysAtA.Select(atA => (AtA: atA, AtB: atB)));
        if (layout.Bends.IsEmpty)
        {
            return ways.Select(way => new OrderOfWork([], way.AtA.FlaredFirst, way.AtB.FlaredFirst)).FirstOrDefault();
        }

        var count = layout.Bends.Length;
        return Best(ways, count, (way, most) => new OrderSearch(BendingTask.Of(layout, tube, way.AtA, way.AtB), swings, most))
            ?? (count > ScatteredOrderSearch.MostBends
                ? null
                : Best(ways, count, (way, most) => new ScatteredOrderSearch(BendingTask.Of(layout, tube, way.AtA, way.AtB), swings, most)));
    }

    /// <summary>The best of the orders that one kind of search finds for each way to finish the ends, the better way first.</summary>
    private static OrderOfWork? Best(
        IEnumerable<(FlareTiming AtA, FlareTiming AtB)> ways,
        int count,
        Func<(FlareTiming AtA, FlareTiming AtB), double, IOrderSearch> search)
    {
        var starts = ways
            .SelectMany(way => search(way, double.PositiveInfinity).Starts(), (way, start) => (Way: way, start.Bend, start.Cost)).ToList();
        if (starts.Count == 0)
        {
            return null;
        }

        var least = starts.Min(start => start.Cost);
        var most = least.SwingMm + SameSwing.Millimetres;
        var equal = starts.Where(start => start.Cost.WithoutSwing == least.WithoutSwing && start.Cost.SwingMm <= most).ToList();
        var (flares, first, _) = equal.Where(start => start.Way == equal[0].Way)
            .MinBy(start => start.Bend == 0 ? 0 : start.Bend == count - 1 ? 1 : start.Bend + 1);
        return new(search(flares, most).StartingWith(first), flares.AtA.FlaredFirst, flares.AtB.FlaredFirst);
    }

    /// <summary>An order that was begun, for a line whose other bends have changed a little.</summary>
    /// <param name="begun">As the sheet had it.</param>
    /// <param name="template">As it is now.</param>
    /// <param name="layout">Of that.</param>
    /// <param name="tube">Of that.</param>
    /// <param name="swings">Of that.</param>
    /// <returns>The same order with its swings as they are now; and the first bend that can no longer be made in it, null where all
    /// can.</returns>
    public static (OrderOfWork Order, int? Stopped) GoOn(
        OrderOfWork begun, LineTemplate template, RouteLayout layout, StraightTube tube, SweepReach swings)
    {
        var atA = Timing(TubeEnd.A, template.From, layout.Legs[0].StraightLeft, begun.FlareAFirst);
        var atB = Timing(TubeEnd.B, template.To, layout.Legs[^1].StraightLeft, begun.FlareBFirst);
        var task = BendingTask.Of(layout, tube, atA ?? default, atB ?? default);
        int? stopped = atA is null ? 0 : atB is null ? layout.Bends.Length - 1 : null;
        var steps = ImmutableArray.CreateBuilder<BendStep>();
        var made = new SortedSet<int>();
        foreach (var step in begun.Steps)
        {
            var (before, beyond) = (made.GetViewBetween(0, step.Bend), made.GetViewBetween(step.Bend, layout.Bends.Length));
            int? nearA = before.Count > 0 ? before.Max : null;
            int? nearB = beyond.Count > 0 ? beyond.Min : null;
            stopped ??= task.Fits(step.Bend, step.Held, nearA, nearB) ? null : step.Bend;
            steps.Add(step with { Swing = Swing(step, step.Held == TubeEnd.A ? beyond : before) });
            made.Add(step.Bend);
        }

        Length Swing(BendStep step, SortedSet<int> swept) => layout.Bends.Length > OrderSearch.MostBends
            ? swings.AtMost(step.Bend, step.Held)
            : swept.Count == 0 || Math.Max(swept.Max - step.Bend, step.Bend - swept.Min) == swept.Count
                ? swings.Of(step.Bend, step.Held, swept.Count)
                : swings.OfScattered(step.Bend, step.Held, swept.Aggregate(0, (bits, bend) => bits | (1 << bend)));

        return (begun with { Steps = steps.ToImmutable() }, stopped);
    }

    private static FlareTiming? Timing(TubeEnd which, LineEnd end, Length straight, bool flaredFirst) =>
        FlareTiming.Choices(which, end, straight).Where(way => way.FlaredFirst == flaredFirst).Select(way => (FlareTiming?)way)
            .FirstOrDefault();

    /// <summary>From A to B, held from A: the order whose figures are given where none can be worked in.</summary>
    public static OrderOfWork FromA(RouteLayout layout, SweepReach swings) => new(
        [.. layout.Bends.Select(
            (_, i) => new BendStep(
                i, TubeEnd.A, layout.Bends.Length > OrderSearch.MostBends ? swings.AtMost(i, TubeEnd.A) : swings.Of(i, TubeEnd.A, 0)))],
        FlareAFirst: false,
        FlareBFirst: false);
}
