namespace BendSheet.Core.Stock;

/// <summary>
/// Two plain ways to cut that often do: each piece, longest first, into the first roll, or the fullest roll, that it goes into.
/// </summary>
internal static class QuickFilling
{
    /// <summary>Null where neither way does, which proves nothing.</summary>
    public static IReadOnlyList<FilledRoll>? Find(PieceSizes task) => Find(task, fullest: false) ?? Find(task, fullest: true);

    /// <summary>With as many new rolls of one length as it takes: one is opened for each piece that goes into none before it.</summary>
    /// <param name="task">The rolls that are there.</param>
    /// <param name="roll">What a new roll holds.</param>
    /// <returns>Null where a piece is longer than a new roll and found none that is there.</returns>
    public static (IReadOnlyList<FilledRoll> Filled, int Opened)? WithNew(PieceSizes task, long roll)
    {
        var rolls = task.Rolls.Zip(task.RollCounts).SelectMany(one => Enumerable.Repeat(one.First, one.Second)).ToList();
        var there = rolls.Count;
        var left = rolls.ToList();
        var pieces = rolls.Select(_ => new List<long>()).ToList();
        for (var piece = 0; piece < task.Sizes.Length; piece++)
        {
            for (var (count, from) = (0, 0); count < task.Counts[piece]; count++)
            {
                // Rolls that an equal piece did not go into are too full for this one.
                var first = left.FindIndex(from, room => room >= task.Sizes[piece]);
                if (first < 0)
                {
                    if (task.Sizes[piece] > roll)
                    {
                        return null;
                    }

                    first = left.Count;
                    rolls.Add(roll);
                    left.Add(roll);
                    pieces.Add([]);
                }

                from = first;
                left[first] -= task.Sizes[piece];
                pieces[first].Add(task.Sizes[piece]);
            }
        }

        return ([.. pieces.Select((own, i) => new FilledRoll(rolls[i], own)).Where(filled => filled.Sizes.Count > 0)], rolls.Count - there);
    }

    private static List<FilledRoll>? Find(PieceSizes task, bool fullest)
    {
        var rolls = task.Rolls.Zip(task.RollCounts).SelectMany(roll => Enumerable.Repeat(roll.First, roll.Second)).ToArray();
        var left = rolls.ToArray();
        var pieces = rolls.Select(_ => new List<long>()).ToArray();
        for (var piece = 0; piece < task.Sizes.Length; piece++)
        {
            var size = task.Sizes[piece];
            for (var count = 0; count < task.Counts[piece]; count++)
            {
                var chosen = -1;
                for (var roll = 0; roll < left.Length; roll++)
                {
                    if (left[roll] >= size && (chosen < 0 || left[roll] < left[chosen]))
                    {
                        chosen = roll;
                        if (!fullest)
                        {
                            break;
                        }
                    }
                }

                if (chosen < 0)
                {
                    return null;
                }

                left[chosen] -= size;
                pieces[chosen].Add(size);
            }
        }

        return [.. pieces.Select((own, roll) => new FilledRoll(rolls[roll], own)).Where(filled => filled.Sizes.Count > 0)];
    }
}
