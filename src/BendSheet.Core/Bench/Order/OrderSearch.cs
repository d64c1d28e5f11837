using System.Collections.Immutable;
using BendSheet.Core.Workshop;
using OrderCost = (int TurnRounds, int Swing);

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// Finds the order in which bends can be made: fewest turn-rounds of the tube, then the smaller swing, then starting at A, or else at
/// B rather than in the middle. Whatever was done first, the bends made so far are one stretch of neighbours, so that this stretch and the
/// end held last say all that the rest depends on: dynamic programming over the stretches (Bellman 1957), exact.
/// </summary>
/// <remarks>
/// What is best for the rest is best for the whole as long as turn-rounds are added up and after them the largest swing is taken; it is
/// not so for a third wish behind a maximum. Therefore the best two are found first, and the best start among all orders that keep them.
/// </remarks>
internal sealed class OrderSearch
{
    /// <summary>Beyond this many bends only orders that start at an end are looked at: no hand-bent line has so many, but a coil has.</summary>
    public const int MostBends = 120;

    /// <summary>Swings are compared in whole steps of this: nobody clears a bench more finely.</summary>
    private const double SwingStepMm = 100;

    private static readonly OrderCost Impossible = (int.MaxValue, int.MaxValue);

    private static readonly TubeEnd[] Ends = [TubeEnd.A, TubeEnd.B];

    private readonly BendingTask _task;
    private readonly Swings _swings;
    private readonly int _mostSwing;
    private readonly OrderCost[][] _rest;

    private OrderSearch(BendingTask task, Swings swings, int mostSwing)
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

    /// <summary>The best order.</summary>
    /// <param name="task">At least one bend.</param>
    /// <param name="swings">Of the same line.</param>
    /// <returns>None where there is no order; what it takes compares as it matters, turn-rounds before the largest swing in whole steps.</returns>
    public static (OrderCost Cost, ImmutableArray<BendStep> Steps)? Find(BendingTask task, Swings swings)
    {
        var free = new OrderSearch(task, swings, int.MaxValue);
        var best = free.Starts().Select(start => start.Whole).DefaultIfEmpty(Impossible).Min();
        return best == Impossible ? null : (best, new OrderSearch(task, swings, best.Swing).WithBestStart(best.TurnRounds));
    }

    private ImmutableArray<BendStep> WithBestStart(int turnRounds)
    {
        var steps = ImmutableArray.CreateBuilder<BendStep>(_task.Count);
        var at = Starts().First(start => start.Whole.TurnRounds == turnRounds);
        steps.Add(at.Step);
        while (steps.Count < _task.Count)
        {
            var left = Rest(at.First, at.Last, at.Step.Held).TurnRounds;
            at = Next(at.First, at.Last, at.Step.Held).First(next => next.Whole.TurnRounds == left);
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
                costs[(2 * slot) + (int)held] = Next(first, first + length - 1, held)
                    .Select(next => next.Whole).DefaultIfEmpty(Impossible).Min();
            }
        }

        _rest[length] = costs;
    }

    /// <summary>What it takes to make all bends beyond a stretch.</summary>
    private OrderCost Rest(int first, int last, TubeEnd held)
    {
        var length = last - first + 1;
        var slot = length == _task.Count ? 0 : OnlyFromEnds && first > 0 ? 1 : first;
        return _rest[length][length == _task.Count ? 0 : (2 * slot) + (int)held];
    }

    /// <summary>How good it is to start with a bend: at A, at B, in the middle nearer to A; less is better.</summary>
    public static int RankOfStart(int bend, int count) => bend == 0 ? 0 : bend == count - 1 ? 1 : bend + 1;

    /// <summary>Every way to make the first bend, the best start first.</summary>
    private IEnumerable<Move> Starts()
    {
        IEnumerable<int> bends = OnlyFromEnds
            ? [0, _task.Count - 1]
            : Enumerable.Range(0, _task.Count).OrderBy(bend => RankOfStart(bend, _task.Count));
        return bends.SelectMany(bend => Ends.Select(held => Make(bend, held, bend, bend, turned: false))).OfType<Move>();
    }

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
    private Move? Make(int bend, TubeEnd held, int first, int last, bool turned)
    {
        if (!_task.Fits(bend, held, madeTowardsA: bend > first, madeTowardsB: bend < last))
        {
            return null;
        }

        var swing = OnlyFromEnds ? _swings.AtMost(bend, held) : _swings.Of(bend, held, held == TubeEnd.A ? last - bend : bend - first);
        var steps = (int)Math.Ceiling(swing.Millimetres / SwingStepMm);
        var rest = Rest(first, last, held);
        return steps > _mostSwing || rest == Impossible
            ? null
            : new(new(bend, held, swing), first, last, (rest.TurnRounds + (turned ? 1 : 0), Math.Max(rest.Swing, steps)));
    }

    private readonly record struct Move(BendStep Step, int First, int Last, OrderCost Whole);
}
