using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// Every order of work that grows outwards from one bend. Whatever was done first, the bends made so far are one stretch of
/// neighbours, so that this stretch and the end held last say all that the rest depends on: dynamic programming over the stretches
/// (Bellman 1957), exact for the order with the least <see cref="OrderCost"/>.
/// </summary>
internal sealed class OrderSearch : IOrderSearch
{
    /// <summary>
    /// Beyond this many bends only orders that start at an end are looked at: no hand-bent line has so many, but a coil has.
    /// </summary>
    public const int MostBends = 120;

    private static readonly TubeEnd[] Ends = [TubeEnd.A, TubeEnd.B];

    private readonly BendingTask _task;
    private readonly SweepReach _swings;
    private readonly double _mostSwing;
    private readonly OrderCost[][] _rest;

    /// <summary>Looks at all of them.</summary>
    /// <param name="task">At least one bend.</param>
    /// <param name="swings">Of the same line.</param>
    /// <param name="mostSwing">In millimetres; orders with a larger one are left out.</param>
    public OrderSearch(BendingTask task, SweepReach swings, double mostSwing = double.PositiveInfinity)
    {
        _task = task;
        _swings = swings;
        _mostSwing = mostSwing;
        _rest = new OrderCost[task.Count + 1][];
        _rest[task.Count] = new OrderCost[2];
        for (var length = task.Count - 1; length > 0; length--)
        {
            FillStretches(length);
        }
    }

    private bool OnlyFromEnds => _task.Count > MostBends;

    /// <inheritdoc/>
    public IEnumerable<(int Bend, OrderCost Cost)> Starts()
    {
        IEnumerable<int> bends = OnlyFromEnds ? [0, _task.Count - 1] : Enumerable.Range(0, _task.Count);
        return bends.Distinct().SelectMany(StartsWith).GroupBy(start => start.Step.Bend, start => start.Whole)
            .Select(start => (start.Key, start.Min()));
    }

    /// <inheritdoc/>
    /// <remarks>Of several it is the one that holds A, and goes towards B, as early as it can.</remarks>
    public ImmutableArray<BendStep> StartingWith(int first)
    {
        var steps = ImmutableArray.CreateBuilder<BendStep>(_task.Count);
        var at = StartsWith(first).MinBy(start => start.Whole.WithoutSwing);
        steps.Add(at.Step);
        while (steps.Count < _task.Count)
        {
            at = Next(at.First, at.Last, at.Step.Held).MinBy(next => next.Whole.WithoutSwing);
            steps.Add(at.Step);
        }

        return steps.MoveToImmutable();
    }

    private void FillStretches(int length)
    {
        var slots = OnlyFromEnds ? 2 : _task.Count - length + 1;
        var costs = new OrderCost[2 * slots];
        for (var slot = 0; slot < slots; slot++)
        {
            var first = OnlyFromEnds && slot == 1 ? _task.Count - length : slot;
            foreach (var held in Ends)
            {
                costs[(2 * slot) + (int)held] = LeastBeyond(first, first + length - 1, held);
            }
        }

        _rest[length] = costs;
    }

    /// <summary>The best of the ways to go on from a stretch.</summary>
    private OrderCost LeastBeyond(int first, int last, TubeEnd heldLast)
    {
        var least = OrderCost.Impossible;
        foreach (var held in Ends)
        {
            if (last + 1 < _task.Count && Cost(last + 1, held, first, last + 1, held != heldLast) is { } towardsB && towardsB < least)
            {
                least = towardsB;
            }

            if (first > 0 && Cost(first - 1, held, first - 1, last, held != heldLast) is { } towardsA && towardsA < least)
            {
                least = towardsA;
            }
        }

        return least;
    }

    /// <summary>What it takes to make all bends beyond a stretch.</summary>
    private OrderCost Rest(int first, int last, TubeEnd held)
    {
        var length = last - first + 1;
        var slot = length == _task.Count ? 0 : OnlyFromEnds && first > 0 ? 1 : first;
        return _rest[length][length == _task.Count ? 0 : (2 * slot) + (int)held];
    }

    /// <summary>The ways to make a bend first.</summary>
    private IEnumerable<Move> StartsWith(int bend) => Ends.Select(held => Make(bend, held, bend, bend, turned: false)).OfType<Move>();

    /// <summary>Every way to go on from a stretch, towards B first.</summary>
    private IEnumerable<Move> Next(int first, int last, TubeEnd heldLast)
    {
        if (last + 1 < _task.Count)
        {
            foreach (var held in Ends)
            {
                if (Make(last + 1, held, first, last + 1, held != heldLast) is { } move)
                {
                    yield return move;
                }
            }
        }

        if (first > 0)
        {
            foreach (var held in Ends)
            {
                if (Make(first - 1, held, first - 1, last, held != heldLast) is { } move)
                {
                    yield return move;
                }
            }
        }
    }

    /// <summary>One bend at the edge of the stretch that it belongs to afterwards; null where it cannot be made so.</summary>
    private Move? Make(int bend, TubeEnd held, int first, int last, bool turned) =>
        Cost(bend, held, first, last, turned) is { } whole
            ? new(new(bend, held, Swing(bend, held, first, last)), first, last, whole)
            : null;

    /// <summary>The same, and all that comes after it.</summary>
    private OrderCost? Cost(int bend, TubeEnd held, int first, int last, bool turned)
    {
        if (!_task.Fits(bend, held, madeTowardsA: bend > first, madeTowardsB: bend < last))
        {
            return null;
        }

        var swing = Swing(bend, held, first, last);
        var rest = Rest(first, last, held);
        return swing.Millimetres > _mostSwing || rest == OrderCost.Impossible
            ? null
            : rest.After(_task.IsCramped(bend, swing), LongSwing.Is(swing, Swept(bend, held, first, last) > 0), turned, swing);
    }

    private Length Swing(int bend, TubeEnd held, int first, int last) =>
        OnlyFromEnds ? _swings.AtMost(bend, held) : _swings.Of(bend, held, Swept(bend, held, first, last));

    /// <summary>How many bends of a stretch lie on the swept side of one at its edge.</summary>
    private static int Swept(int bend, TubeEnd held, int first, int last) => held == TubeEnd.A ? last - bend : bend - first;

    private readonly record struct Move(BendStep Step, int First, int Last, OrderCost Whole);
}
