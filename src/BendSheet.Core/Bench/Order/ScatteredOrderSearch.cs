using System.Collections.Immutable;
using System.Numerics;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// Every order of work there is, also those that start at several bends at once and join what is bent later: dynamic programming over which
/// bends are made (Bellman 1957), exact for the order with the least <see cref="OrderCost"/>. For lines that no outward order can make.
/// </summary>
internal sealed class ScatteredOrderSearch : IOrderSearch
{
    /// <summary>Each bend more doubles the work; hand-bent lines seldom have so many.</summary>
    public const int MostBends = 10;

    private static readonly TubeEnd[] Ends = [TubeEnd.A, TubeEnd.B];

    private readonly BendingTask _task;
    private readonly SweepReach _swings;
    private readonly double _mostSwing;
    private readonly OrderCost[] _rest;

    /// <summary>Looks at all of them.</summary>
    /// <param name="task">At least one bend, and no more than <see cref="MostBends"/>.</param>
    /// <param name="swings">Of the same line.</param>
    /// <param name="mostSwing">In millimetres; orders with a larger one are left out.</param>
    public ScatteredOrderSearch(BendingTask task, SweepReach swings, double mostSwing = double.PositiveInfinity)
    {
        _task = task;
        _swings = swings;
        _mostSwing = mostSwing;
        _rest = new OrderCost[2 * (All + 1)];
        for (var made = All - 1; made > 0; made--)
        {
            foreach (var held in Ends)
            {
                _rest[(2 * made) + (int)held] = Next(made, held).Select(next => next.Whole).DefaultIfEmpty(OrderCost.Impossible).Min();
            }
        }
    }

    private int All => (1 << _task.Count) - 1;

    /// <inheritdoc/>
    public IEnumerable<(int Bend, OrderCost Cost)> Starts() => Next(0, heldLast: null)
        .GroupBy(start => start.Step.Bend, start => start.Whole).Select(start => (start.Key, start.Min()));

    /// <inheritdoc/>
    public ImmutableArray<BendStep> StartingWith(int first)
    {
        var steps = ImmutableArray.CreateBuilder<BendStep>(_task.Count);
        var at = Next(0, heldLast: null).Where(start => start.Step.Bend == first).MinBy(start => start.Whole.WithoutSwing);
        steps.Add(at.Step);
        while (steps.Count < _task.Count)
        {
            at = Next(at.Made, at.Step.Held).MinBy(next => next.Whole.WithoutSwing);
            steps.Add(at.Step);
        }

        return steps.MoveToImmutable();
    }

    /// <summary>Every way to go on.</summary>
    /// <param name="made">One bit for each bend that is made, bend 0 the lowest.</param>
    /// <param name="heldLast">Null before the first bend.</param>
    private IEnumerable<Move> Next(int made, TubeEnd? heldLast) => Enumerable.Range(0, _task.Count)
        .Where(bend => (made >> bend & 1) == 0)
        .SelectMany(bend => Ends.Select(held => Make(bend, held, made, heldLast is { } last && last != held)).OfType<Move>());

    private Move? Make(int bend, TubeEnd held, int made, bool turned)
    {
        var after = made | (1 << bend);
        var rest = _rest[(2 * after) + (int)held];
        if (rest == OrderCost.Impossible || !_task.Fits(bend, held, Nearest(made & ((1 << bend) - 1)), NextAfter(bend, made)))
        {
            return null;
        }

        var swing = _swings.OfScattered(bend, held, made);
        var isBent = (held == TubeEnd.A ? made >> (bend + 1) : made & ((1 << bend) - 1)) != 0;
        return swing.Millimetres > _mostSwing
            ? null
            : new(new(bend, held, swing), after, rest.After(_task.IsCramped(bend, swing), LongSwing.Is(swing, isBent), turned, swing));
    }

    private static int? Nearest(int before) => before == 0 ? null : BitOperations.Log2((uint)before);

    private static int? NextAfter(int bend, int made) =>
        made >> (bend + 1) is var beyond && beyond == 0 ? null : bend + 1 + BitOperations.TrailingZeroCount(beyond);

    private readonly record struct Move(BendStep Step, int Made, OrderCost Whole);
}
