using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>What has to come off the rolls; see <see cref="PieceSizes"/>.</summary>
/// <param name="Measured">Pieces whose length is known.</param>
/// <param name="Rough">Pieces whose length is a guess.</param>
/// <param name="Spare">Room to be left in one piece; null where there is none, or where it may be in several.</param>
/// <param name="SpareInAll">Room to be left in all.</param>
/// <param name="There">What the rolls hold that are there.</param>
/// <param name="Loss">Of one cut.</param>
internal sealed record CuttingTask(
    IReadOnlyList<long> Measured, IReadOnlyList<long> Rough, long? Spare, long SpareInAll, IReadOnlyList<long> There, long Loss)
{
    /// <summary>All that is to be cut sooner or later.</summary>
    public List<long> Pieces => [.. Measured, .. Rough];

    /// <summary>A piece of that length, where there is one to be left.</summary>
    public List<long> SparePiece => Spare is { } spare ? [spare] : [];
}

/// <summary>
/// The best way to cut and to buy. Measured pieces and guessed ones are planned together. Only where something has to be bought, and a
/// measured line would then wait for new tube because a guess takes its place, are the measured ones planned first and the rest in what
/// they leave.
/// </summary>
/// <param name="Buy">What is bought; null for nothing.</param>
/// <param name="Count">How many of it.</param>
/// <param name="AtLeast">Fewer are proven not to do.</param>
/// <param name="IsBestLength">No other length is better: proven.</param>
/// <param name="ForSpare">Of these, how many only the spare needs.</param>
/// <param name="Packing">How all is cut.</param>
internal sealed record CuttingSearch(
    BoughtLength? Buy, int Count, int AtLeast, bool IsBestLength, int ForSpare, Packing Packing)
{
    /// <summary>More new rolls than pieces make no difference to how they are cut: one is for the longest piece left.</summary>
    private const int BesidePieces = 2;

    /// <summary>
    /// Measured pieces were planned first, and that has its price: with all pieces planned together there may be a better plan.
    /// </summary>
    public bool MeasuredFirst { get; private init; }

    /// <summary>Null where no way is found.</summary>
    public static CuttingSearch? Of(CuttingTask task, IReadOnlyList<BoughtLength> choices, SearchSteps steps)
    {
        var pieces = task.Pieces;
        List<long> kept = [.. pieces, .. task.SparePiece];
        var part = steps.Part(2);
        var purchase = Purchase.Of(kept, task.There, choices, room => ForSpareInAll(task, room), part);
        steps.Return(part);
        if (purchase.New.Filled is not { } filled)
        {
            return null;
        }

        var count = purchase.New.Count;
        if (purchase.Choice is not { } buy || count == 0)
        {
            return new(null, 0, 0, IsBestLength: true, 0, Packed(task, pieces, filled, 0, 0, steps));
        }

        part = steps.Part(4);
        var withoutSpare = FewestNew.Of(pieces, task.There, buy.Room, part);
        steps.Return(part);
        var forSpare = withoutSpare.Filled is null ? 0 : Math.Max(0, count - withoutSpare.Count);
        var together = Packed(task, pieces, filled, count, buy.Room, steps);
        var search = new CuttingSearch(buy, count, purchase.New.AtLeast, purchase.IsBest, forSpare, together);
        return task.Rough.Count == 0 || task.Measured.Count == 0 ? search : search.WithMeasuredFirst(task, choices, steps);
    }

    private static Packing Packed(
        CuttingTask task, List<long> pieces, IReadOnlyList<FilledRoll> filled, int count, long bought, SearchSteps steps) =>
        Packing.Of(pieces, Rolls(task, pieces.Count, count, bought), Packing.Without(task.Spare, filled), task.Loss, steps);

    private static List<long> Rolls(CuttingTask task, int pieces, int count, long bought) =>
        [.. task.There, .. Enumerable.Repeat(bought, Math.Min(count, pieces + BesidePieces))];

    /// <summary>
    /// The same; or, where measured pieces now wait for more new rolls than they need by themselves, the plan with them first. It stays the
    /// same too where that would buy more although they need a new roll anyhow, and where the guesses and the spare then find no room.
    /// </summary>
    private CuttingSearch WithMeasuredFirst(CuttingTask task, IReadOnlyList<BoughtLength> choices, SearchSteps steps)
    {
        var part = steps.Part(2);
        var first = FewestNew.Of(task.Measured, task.There, Buy!.Room, part);
        steps.Return(part);
        if (first.Filled is not { } filled || NewWithMeasured(task) <= first.Count)
        {
            return this;
        }

        var rolls = Rolls(task, task.Measured.Count, first.Count, Buy.Room);
        part = steps.Part(2);
        var measured = Packing.Of(task.Measured, rolls, filled, task.Loss, part);
        steps.Return(part);
        List<long> left = [.. measured.Filled.Select(roll => roll.Left), .. Packing.Untouched(rolls, measured.Filled)];
        part = steps.Part(2);
        var rest = Purchase.Of(
            [.. task.Rough, .. task.SparePiece], left, first.Count == 0 ? choices : [Buy], room => ForSpareInAll(task, room), part);
        steps.Return(part);
        var buy = rest.Choice ?? Buy;
        var count = first.Count + rest.New.Count;
        if (rest.New.Filled is null || (count > Count && first.Count > 0))
        {
            return this;
        }

        List<long> roomLeft = [.. left, .. Enumerable.Repeat(buy.Room, Math.Min(rest.New.Count, task.Rough.Count + BesidePieces))];
        var guessed = Packing.Of(task.Rough, roomLeft, Packing.Without(task.Spare, rest.New.Filled), task.Loss, steps);
        var both = Joined(measured.Filled, guessed.Filled);
        var longest = Packing.LongestOf([.. rolls, .. roomLeft.Skip(left.Count)], both);
        if (buy == Buy && count == Count && longest == Packing.Left && both.Count == Packing.Filled.Count)
        {
            return this with { Packing = Packing with { Filled = both } };
        }

        var pieces = task.Pieces;
        var longestRolls = Rolls(task, pieces.Count, count, buy.Room).OrderDescending().Take(pieces.Count + 1).ToList();
        return this with
        {
            Buy = buy,
            Count = count,
            AtLeast = buy == Buy ? AtLeast : 0,
            IsBestLength = IsBestLength && buy == Buy && count == Count,
            ForSpare = Math.Max(0, ForSpare + count - Count),
            MeasuredFirst = true,
            Packing = new(both, longest, Math.Min(longestRolls[0], longestRolls.Sum() - pieces.Sum()), 0),
        };
    }

    /// <summary>New rolls that something measured is cut from, where those that are there are used for it first.</summary>
    private int NewWithMeasured(CuttingTask task)
    {
        var measured = task.Measured.GroupBy(size => size).ToDictionary(same => same.Key, same => same.Count());
        var there = task.There.GroupBy(room => room).ToDictionary(same => same.Key, same => same.Count());
        var fresh = new List<FilledRoll>();
        foreach (var roll in Packing.Filled)
        {
            if (there.GetValueOrDefault(roll.Roll) is var count && count > 0)
            {
                there[roll.Roll] = count - 1;
                TakeMeasured(roll);
            }
            else
            {
                fresh.Add(roll);
            }
        }

        return fresh.Count(TakeMeasured);

        bool TakeMeasured(FilledRoll roll)
        {
            var isMeasured = false;
            foreach (var size in roll.Sizes)
            {
                var left = measured.GetValueOrDefault(size);
                measured[size] = left - 1;
                isMeasured |= left > 0;
            }

            return isMeasured;
        }
    }

    /// <summary>The second is cut from what the first one leaves.</summary>
    private static List<FilledRoll> Joined(IReadOnlyList<FilledRoll> first, IReadOnlyList<FilledRoll> second)
    {
        var joined = first.ToList();
        var open = Enumerable.Range(0, joined.Count).ToList();
        foreach (var more in second)
        {
            var at = open.FindIndex(i => first[i].Left == more.Roll);
            if (at < 0)
            {
                joined.Add(more);
                continue;
            }

            joined[open[at]] = joined[open[at]] with { Sizes = [.. joined[open[at]].Sizes, .. more.Sizes] };
            open.RemoveAt(at);
        }

        return joined;
    }

    /// <summary>New rolls that make room for the spare in several pieces: how many at least, and how many whichever way is cut.</summary>
    private static (int AtLeast, int Enough) ForSpareInAll(CuttingTask task, long room)
    {
        if (task.SpareInAll <= 0)
        {
            return (0, 0);
        }

        // What is left of a roll is one cut's loss less than its room, except where the last cut falls on the roll's end.
        var pieces = task.Measured.Count + task.Rough.Count;
        var missing = task.SpareInAll + task.Measured.Sum() + task.Rough.Sum() - task.There.Sum() + (task.Loss * task.There.Count);
        var one = room - task.Loss;
        return (HowMany(missing - (task.Loss * pieces), one), HowMany(missing, one));
    }

    private static int HowMany(long missing, long one) => (int)Math.Min(int.MaxValue / 2, Math.Max(0, (missing + one - 1) / one));
}
