using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>
/// How pieces are cut from given rolls so that the longest piece left is as long as can be, a roll that is left whole counting as one; then
/// so that as few rolls as can be are cut into; then so that the longest of them are left whole. Figures as in <see cref="PieceSizes"/>.
/// </summary>
/// <param name="Filled">The rolls that are cut into.</param>
/// <param name="Left">The longest piece left.</param>
/// <param name="LeftAtMost">More is proven not to be possible.</param>
/// <param name="CutAtLeast">Fewer rolls cut into are proven not to leave so long a piece.</param>
internal sealed record Packing(IReadOnlyList<FilledRoll> Filled, long Left, long LeftAtMost, int CutAtLeast)
{
    /// <summary>A hundredth of a millimetre, in millionths: less is lost in the width of a pen line.</summary>
    private const long SameLeft = 10_000;

    /// <summary>The best there is, or the best that is found before the steps are used up.</summary>
    /// <param name="pieces">May be none.</param>
    /// <param name="rolls">At least one.</param>
    /// <param name="filled">A way to cut them that is known.</param>
    /// <param name="loss">Of one cut, which is in every figure.</param>
    /// <param name="steps">Takes what it needs.</param>
    public static Packing Of(
        IReadOnlyList<long> pieces, IReadOnlyList<long> rolls, IReadOnlyList<FilledRoll> filled, long loss, SearchSteps steps)
    {
        if (pieces.Count == 0)
        {
            return new([], rolls.Max(), rolls.Max(), 0);
        }

        List<long> longestFirst = [.. rolls.OrderDescending()];
        var (best, atMost) = LongestLeft(pieces, longestFirst, filled, steps);
        var left = LongestOf(longestFirst, best);
        var (fewest, cutAtLeast) = FewestCut(pieces, longestFirst, best, left > loss ? left : 0, steps);
        var whole = LongestWhole(pieces, longestFirst, fewest, (left > loss ? left : 0, left >= atMost), steps);
        var final = LongestOf(longestFirst, whole);
        return new(whole, final, Math.Max(atMost, final), Math.Min(cutAtLeast, whole.Count));
    }

    /// <summary>The longest piece left, of a roll that is cut into or of one that is not.</summary>
    public static long LongestOf(IReadOnlyList<long> rolls, IReadOnlyList<FilledRoll> filled) =>
        filled.Select(roll => roll.Left).Concat(Untouched(rolls, filled)).Max();

    /// <summary>The rolls that are not cut into.</summary>
    public static List<long> Untouched(IEnumerable<long> rolls, IReadOnlyList<FilledRoll> filled)
    {
        var cut = filled.GroupBy(roll => roll.Roll).ToDictionary(same => same.Key, same => same.Count());
        var untouched = new List<long>();
        foreach (var roll in rolls)
        {
            if (cut.TryGetValue(roll, out var count) && count > 0)
            {
                cut[roll] = count - 1;
            }
            else
            {
                untouched.Add(roll);
            }
        }

        return untouched;
    }

    /// <summary>The same without a piece that only kept room free, where there is one.</summary>
    public static IReadOnlyList<FilledRoll> Without(long? size, IReadOnlyList<FilledRoll> filled)
    {
        if (size is not { } kept)
        {
            return filled;
        }

        var result = filled.ToList();
        var at = result.FindIndex(roll => roll.Sizes.Contains(kept));
        var sizes = result[at].Sizes.ToList();
        sizes.Remove(kept);
        result[at] = result[at] with { Sizes = sizes };
        return [.. result.Where(roll => roll.Sizes.Count > 0)];
    }

    /// <summary>
    /// The longest piece left is one more piece that has to go in: it is found between what there is and what there can be.
    /// </summary>
    private static (IReadOnlyList<FilledRoll> Filled, long AtMost) LongestLeft(
        IReadOnlyList<long> pieces, List<long> rolls, IReadOnlyList<FilledRoll> filled, SearchSteps steps)
    {
        var left = LongestOf(rolls, filled);
        var atMost = Math.Min(rolls.Take(pieces.Count + 1).Sum() - pieces.Sum(), rolls[0]);
        var (wanted, below) = (atMost, atMost);
        while (below - left >= SameLeft && !steps.AreUsedUp)
        {
            var answer = Find([.. pieces, wanted], rolls, steps);
            if (answer.Filled is { } better)
            {
                filled = Without(wanted, better);
                left = LongestOf(rolls, filled);
            }
            else
            {
                // Not known: something shorter may still be found; what is proven stays.
                below = wanted;
                atMost = answer.IsCertain ? wanted : atMost;
            }

            wanted = left + ((below - left) / 2);
        }

        return (filled, atMost - left < SameLeft ? left : atMost);
    }

    /// <summary>
    /// As few rolls cut into as can be. The longest do wherever others would; so for each number there are two ways to keep the longest
    /// piece: a roll of it is put aside whole, or it is one more piece.
    /// </summary>
    private static (IReadOnlyList<FilledRoll> Filled, int AtLeast) FewestCut(
        IReadOnlyList<long> pieces, List<long> rolls, IReadOnlyList<FilledRoll> filled, long left, SearchSteps steps)
    {
        var need = pieces.Sum();
        var atLeast = 0;
        for (var room = 0L; room < need && atLeast < rolls.Count; atLeast++)
        {
            room += rolls[atLeast];
        }

        var aside = left > 0 ? rolls.FindLastIndex(roll => roll >= left) : -1;
        List<long> others = aside < 0 ? rolls : [.. rolls.Where((_, i) => i != aside)];
        while (filled.Count > atLeast)
        {
            var count = filled.Count - 1;
            var answer = left == 0 || aside >= 0 ? Find(pieces, others.Take(count), steps) : Answer.No;
            if (answer.Filled is null && left > 0)
            {
                var kept = Find([.. pieces, left], rolls.Take(count), steps);
                answer = kept.Filled is { } found ? new(Without(left, found), IsCertain: true)
                    : kept.IsCertain ? answer : Answer.Unknown;
            }

            if (answer.Filled is null)
            {
                atLeast = answer.IsCertain ? filled.Count : atLeast;
                break;
            }

            filled = answer.Filled;
        }

        return (filled, atLeast);
    }

    /// <summary>
    /// With as many rolls cut into, the longest possible are left whole. The longest piece left stays; IsLongest: it is proven the longest.
    /// </summary>
    private static IReadOnlyList<FilledRoll> LongestWhole(
        IReadOnlyList<long> pieces,
        List<long> rolls,
        IReadOnlyList<FilledRoll> filled,
        (long Length, bool IsLongest) left,
        SearchSteps steps)
    {
        var count = filled.Count;
        var kept = rolls.ToList();
        var isLeft = left.Length == 0;
        for (var at = 0; at < kept.Count && kept.Count > count && !steps.AreUsedUp;)
        {
            // A roll longer than the longest piece that can be left is cut into in every plan.
            if (kept[at] > left.Length && left.IsLongest && left.Length > 0)
            {
                at++;
                continue;
            }

            var (run, most) = (0, Math.Min(kept.Count - count, kept.Count - at));
            var isLeftHere = isLeft || kept[at] >= left.Length;
            for (var (tried, tooMany) = (most, most + 1); tooMany - run > 1 && !steps.AreUsedUp; tried = (run + tooMany) / 2)
            {
                var those = kept.Where((_, i) => i < at || i >= at + tried).Take(count);
                var answer = Find(isLeftHere ? pieces : [.. pieces, left.Length], those, steps);
                if (answer.Filled is { } found)
                {
                    filled = isLeftHere ? found : Without(left.Length, found);
                    run = tried;
                }
                else
                {
                    tooMany = tried;
                }
            }

            kept.RemoveRange(at, run);
            isLeft |= run > 0 && isLeftHere;
            at++;
        }

        return filled;
    }

    private static Answer Find(IReadOnlyCollection<long> pieces, IEnumerable<long> rolls, SearchSteps steps)
    {
        if (steps.AreUsedUp)
        {
            return Answer.Unknown;
        }

        var part = steps.Part(8);
        var answer = PackingSearch.Find(PieceSizes.Of(pieces, rolls), part);
        steps.Return(part);
        return answer;
    }
}
