namespace BendSheet.Core.Tests.Stock;

/// <summary>A roll in whole millimetres.</summary>
internal sealed record SmallRoll(int Length, int Left, decimal? Price);

/// <summary>A small task in whole millimetres.</summary>
internal sealed record SmallTask(int[] Measured, int[] Rough, SmallRoll[] Rolls, int Loss, int Spare)
{
    /// <summary>Measured pieces, then those with a rough length.</summary>
    public int[] Pieces => [.. Measured, .. Rough];

    /// <summary>Left in one piece, unless it is longer than any roll.</summary>
    public bool SpareIsInOnePiece => Spare <= Rolls.Max(roll => roll.Length);

    /// <summary>A task that can be looked at in every way.</summary>
    public static SmallTask Random(Random random, bool withRough)
    {
        var longest = random.Next(60, 120);
        int[] Some(int most) => [.. Enumerable.Range(0, random.Next(1, most + 1)).Select(_ => random.Next(5, 8 + (longest / 2)))];
        var lengths = Enumerable.Range(0, random.Next(1, 4)).Select(_ => random.Next(25, longest + 1)).Append(longest).ToArray();
        var priced = random.Next(3) > 0;
        var rolls = Enumerable.Range(0, random.Next(1, 5)).Select(i => i == 0 ? longest : lengths[random.Next(lengths.Length)])
            .Select(length => new SmallRoll(
                length,
                random.Next(5) == 0 ? 0 : random.Next(length / 4, length + 1),
                priced || random.Next(2) == 0 ? random.Next(1, 40) : null)).ToArray();
        return new(
            Some(withRough ? 4 : 6), withRough ? Some(2) : [], rolls, random.Next(0, 3), random.Next(3) == 0 ? 0 : random.Next(1, 70));
    }
}

/// <summary>
/// Every way to hand pieces out to rolls, one after the other: what can be said of all plans with certain rolls. It shares nothing with the
/// search.
/// </summary>
internal sealed class EveryPlan
{
    private readonly int[] _pieces;
    private readonly int[] _rolls;
    private readonly int _loss;
    private readonly SmallTask _task;
    private readonly int[] _used;
    private readonly int _there;

    private EveryPlan(SmallTask task, int[] pieces, int bought, int count)
    {
        _task = task;
        _loss = task.Loss;
        _pieces = [.. pieces.OrderDescending()];
        _rolls = [.. task.Rolls.Select(roll => roll.Left), .. Enumerable.Repeat(bought, count)];
        _there = task.Rolls.Length;
        _used = new int[_rolls.Length];
    }

    /// <summary>The pieces go in.</summary>
    public bool Exists { get; private set; }

    /// <summary>They go in and the spare is left.</summary>
    public bool LeavesSpare => LongestLeft >= 0;

    /// <summary>The longest piece that any plan leaves, of those that leave the spare; -1 where none does.</summary>
    public int LongestLeft { get; private set; } = -1;

    /// <summary>Of the plans that leave it, each set of rolls that are cut into, a bit for each.</summary>
    public HashSet<int> CutInto { get; } = [];

    /// <summary>All plans.</summary>
    public static EveryPlan Of(SmallTask task, int[] pieces, int bought = 0, int count = 0)
    {
        var every = new EveryPlan(task, pieces, bought, count);
        every.Place(0);
        return every;
    }

    /// <summary>The fewest new rolls of a length, or null where no number does.</summary>
    public static int? Fewest(SmallTask task, int[] pieces, int bought, bool withSpare)
    {
        for (var count = 0; count <= pieces.Length + 1 + (task.Spare / bought); count++)
        {
            var every = Of(task, pieces, bought, count);
            if (withSpare ? every.LeavesSpare : every.Exists)
            {
                return count;
            }
        }

        return null;
    }

    private void Place(int piece)
    {
        if (piece == _pieces.Length)
        {
            LookAt();
            return;
        }

        for (var roll = 0; roll < _rolls.Length; roll++)
        {
            // New rolls are alike.
            if (roll > _there && _used[roll - 1] == 0)
            {
                break;
            }

            if (_used[roll] + _pieces[piece] <= _rolls[roll])
            {
                _used[roll] += _pieces[piece] + _loss;
                Place(piece + 1);
                _used[roll] -= _pieces[piece] + _loss;
            }
        }
    }

    private void LookAt()
    {
        Exists = true;
        var (longest, all, cut) = (0, 0, 0);
        for (var roll = 0; roll < _rolls.Length; roll++)
        {
            var left = Math.Max(0, _rolls[roll] - _used[roll]);
            longest = Math.Max(longest, left);
            all += left;
            cut |= _used[roll] > 0 ? 1 << roll : 0;
        }

        if ((_task.SpareIsInOnePiece ? longest : all) < _task.Spare || longest < LongestLeft)
        {
            return;
        }

        if (longest > LongestLeft)
        {
            CutInto.Clear();
            LongestLeft = longest;
        }

        CutInto.Add(cut);
    }
}
