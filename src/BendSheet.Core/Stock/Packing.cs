namespace BendSheet.Core.Stock;

/// <summary>
/// How pieces are cut from the rolls that are there and from as few new ones as can be, so that the longest piece left is as long as can
/// be; a roll that is left whole counts as one. Figures as in <see cref="PieceSizes"/>.
/// </summary>
/// <param name="Filled">The rolls that are cut into.</param>
/// <param name="Bought">New rolls among them, or beside them.</param>
/// <param name="BoughtAtLeast">Fewer are proven not to do.</param>
/// <param name="Left">The longest piece left.</param>
/// <param name="LeftAtMost">More is proven not to be possible with so many new rolls.</param>
internal sealed record Packing(IReadOnlyList<FilledRoll> Filled, int Bought, int BoughtAtLeast, long Left, long LeftAtMost)
{
    /// <summary>
    /// Steps for the number of rolls, and as many for what is left: a car's lines take a few thousand, and all of them less than a tenth of
    /// a second.
    /// </summary>
    private const long MostSteps = 600_000;

    /// <summary>With more pieces than anybody cuts by hand the plain ways have to do.</summary>
    private const int MostPieces = 2_000;

    /// <summary>A hundredth of a millimetre, in millionths: less is lost in the width of a pen line.</summary>
    private const long SameLeft = 10_000;

    /// <summary>The packing of pieces none of which is longer than all rolls.</summary>
    /// <param name="pieces">May be none.</param>
    /// <param name="there">The rolls that are there, at least one.</param>
    /// <param name="bought">What a new roll holds.</param>
    public static Packing Of(IReadOnlyList<long> pieces, IReadOnlyList<long> there, long bought)
    {
        if (pieces.Count == 0)
        {
            return new([], 0, 0, there.Max(), there.Max());
        }

        var (filled, count, atLeast) = FewestBought(pieces, there, bought);
        List<long> rolls = [.. there, .. Enumerable.Repeat(bought, count)];
        var steps = new SearchSteps(pieces.Count > MostPieces ? 0 : MostSteps);
        var (best, left, atMost) = LongestLeft(pieces, rolls, filled, steps);
        var longest = left;
        while (Untouched(rolls, best).Contains(left) && there.Contains(left))
        {
            // A roll that is left whole cannot be bettered: it is put aside, and the next best is looked for among the others.
            rolls.Remove(left);
            (best, left, _) = LongestLeft(pieces, rolls, best, steps);
        }

        return new(LeaveWhole(pieces, rolls, there, best, left, steps), count, atLeast, longest, atMost);
    }

    private static (IReadOnlyList<FilledRoll> Filled, int Count, int AtLeast) FewestBought(
        IReadOnlyList<long> pieces, IReadOnlyList<long> there, long bought)
    {
        PieceSizes With(int count) => PieceSizes.Of(pieces, [.. there, .. Enumerable.Repeat(bought, count)]);
        var task = With(0);
        var usable = there.Where(roll => roll >= task.Sizes[^1]).Sum();
        var atLeast = (int)Math.Max(0, (task.Need - usable + bought - 1) / bought);
        var (filled, count) = QuickFilling.WithNew(task, bought);
        var steps = new SearchSteps(pieces.Count > MostPieces ? 0 : MostSteps);
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
        while (count > atLeast && PackingSearch.Find(With(atLeast), steps) is { Filled: null, IsCertain: true })
        {
            atLeast++;
        }

        return (filled, count, atLeast);
    }

    /// <summary>
    /// The longest piece left is one more piece that has to go in: it is found between what there is and what there can be.
    /// </summary>
    private static (IReadOnlyList<FilledRoll> Filled, long Left, long AtMost) LongestLeft(
        IReadOnlyList<long> pieces, List<long> rolls, IReadOnlyList<FilledRoll> filled, SearchSteps steps)
    {
        var left = LongestOf(rolls, filled);
        var atMost = Math.Min(rolls.Sum() - pieces.Sum(), rolls.Max());
        var (wanted, below) = (atMost, atMost);
        while (below - left >= SameLeft && !steps.AreUsedUp)
        {
            var part = steps.Part(8);
            var answer = PackingSearch.Find(PieceSizes.Of([.. pieces, wanted], rolls), part);
            steps.Return(part);
            if (answer.Filled is { } better)
            {
                filled = Without(wanted, better);
                left = LongestOf(rolls, filled);
            }
            else
            {
                // Where nobody knows, what is shorter may still be found; the proof stays where it was.
                below = wanted;
                atMost = answer.IsCertain ? wanted : atMost;
            }

            wanted = left + ((below - left) / 2);
        }

        return (filled, left, atMost - left < SameLeft ? left : atMost);
    }

    /// <summary>Rolls that are there and need not be cut into are left whole, the longest first.</summary>
    private static IReadOnlyList<FilledRoll> LeaveWhole(
        IReadOnlyList<long> pieces,
        List<long> rolls,
        IReadOnlyList<long> there,
        IReadOnlyList<FilledRoll> filled,
        long left,
        SearchSteps steps)
    {
        var untouched = Untouched(rolls, filled);
        var fewer = rolls.ToList();
        untouched.ForEach(roll => fewer.Remove(roll));
        foreach (var roll in filled.Select(one => one.Roll).Where(there.Contains).OrderDescending().ToList())
        {
            fewer.Remove(roll);
            var part = steps.Part(8);
            var kept = left > 0 && roll < left ? PieceSizes.Of([.. pieces, left], fewer) : PieceSizes.Of(pieces, fewer);
            var answer = fewer.Count == 0 || steps.AreUsedUp ? Answer.Unknown : PackingSearch.Find(kept, part);
            steps.Return(part);
            if (answer.Filled is { } without)
            {
                filled = roll < left ? Without(left, without) : without;
            }
            else
            {
                fewer.Add(roll);
            }
        }

        return filled;
    }

    private static long LongestOf(List<long> rolls, IReadOnlyList<FilledRoll> filled) =>
        filled.Select(roll => roll.Left).Concat(Untouched(rolls, filled)).Max();

    private static List<long> Untouched(List<long> rolls, IReadOnlyList<FilledRoll> filled)
    {
        var untouched = rolls.ToList();
        foreach (var roll in filled)
        {
            untouched.Remove(roll.Roll);
        }

        return untouched;
    }

    /// <summary>The same without the piece that only kept the room free.</summary>
    private static List<FilledRoll> Without(long size, IReadOnlyList<FilledRoll> filled)
    {
        var result = filled.ToList();
        var at = result.FindIndex(roll => roll.Sizes.Contains(size));
        var sizes = result[at].Sizes.ToList();
        sizes.Remove(size);
        result[at] = result[at] with { Sizes = sizes };
        if (sizes.Count == 0)
        {
            result.RemoveAt(at);
        }

        return result;
    }
}
