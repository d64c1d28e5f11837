using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>How many new rolls of one length it takes beside those that are there.</summary>
/// <param name="Filled">The rolls that are cut into; null where no way is known.</param>
/// <param name="Count">New rolls, some of which may be left whole.</param>
/// <param name="AtLeast">Fewer are proven not to do.</param>
/// <param name="IsCertain">Where there is no way: that is proven.</param>
internal sealed record FewestNew(IReadOnlyList<FilledRoll>? Filled, int Count, int AtLeast, bool IsCertain)
{
    /// <summary>Searches down from what plain filling needs, until one less will not do.</summary>
    /// <param name="pieces">May be none.</param>
    /// <param name="there">What the rolls hold that are there.</param>
    /// <param name="bought">What a new roll holds.</param>
    /// <param name="steps">Takes what it needs.</param>
    public static FewestNew Of(IReadOnlyList<long> pieces, IReadOnlyList<long> there, long bought, SearchSteps steps)
    {
        if (pieces.Count == 0)
        {
            return new([], 0, 0, IsCertain: true);
        }

        PieceSizes With(int count) => PieceSizes.Of(pieces, [.. there, .. Enumerable.Repeat(bought, count)]);
        var atLeast = Least(pieces, there, bought);
        var first = First(pieces, there, bought, steps);
        if (first.Filled is not { } filled)
        {
            return first with { AtLeast = atLeast };
        }

        var count = first.Count;
        while (count > atLeast)
        {
            var part = steps.Part(2);
            var fewer = PackingSearch.Find(With(count - 1), part);
            steps.Return(part);
            if (fewer.Filled is null)
            {
                atLeast = fewer.IsCertain ? count : atLeast;
                break;
            }

            filled = fewer.Filled;
            count--;
        }

        // The search gave up: how many are needed at least can still be shown from below.
        while (count > atLeast && !steps.AreUsedUp && PackingSearch.Find(With(atLeast), steps) is { Filled: null, IsCertain: true })
        {
            atLeast++;
        }

        return new(filled, count, atLeast, IsCertain: true);
    }

    /// <summary>The fewest that the lengths alone allow.</summary>
    public static int Least(IReadOnlyList<long> pieces, IReadOnlyList<long> there, long bought)
    {
        if (pieces.Count == 0)
        {
            return 0;
        }

        var shortest = pieces.Min();
        var usable = there.OrderDescending().Take(pieces.Count).Where(roll => roll >= shortest).Sum();
        return (int)Math.Max(0, (pieces.Sum() - usable + bought - 1) / bought);
    }

    /// <summary>
    /// In the plain way; or else what is longer than a new roll on those that are there, and a new one for each other piece.
    /// </summary>
    private static FewestNew First(IReadOnlyList<long> pieces, IReadOnlyList<long> there, long bought, SearchSteps steps)
    {
        if (QuickFilling.WithNew(PieceSizes.Of(pieces, there), bought) is { } quick)
        {
            return new(quick.Filled, quick.Opened, 0, IsCertain: true);
        }

        var part = steps.Part(2);
        var onThose = PackingSearch.Find(PieceSizes.Of([.. pieces.Where(size => size > bought)], there), part);
        steps.Return(part);
        List<long> others = [.. pieces.Where(size => size <= bought)];
        return onThose.Filled is { } filled
            ? new([.. filled, .. others.Select(size => new FilledRoll(bought, [size]))], others.Count, 0, IsCertain: true)
            : new(null, 0, 0, onThose.IsCertain);
    }
}
