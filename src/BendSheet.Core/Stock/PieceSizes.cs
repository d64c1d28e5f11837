namespace BendSheet.Core.Stock;

/// <summary>
/// A task of the search: equal pieces and equal rolls are one entry with a count. Every figure is in millionths of a millimetre, below
/// which two lengths are the same, and has one cut's loss in it: pieces that add up to a roll with its loss use it to the end, and the last
/// of them needs no cut.
/// </summary>
/// <param name="Sizes">Of the pieces, longest first, each once.</param>
/// <param name="Counts">How many of each size.</param>
/// <param name="Rolls">What the rolls hold, shortest first, each once.</param>
/// <param name="RollCounts">How many of each.</param>
internal sealed record PieceSizes(long[] Sizes, int[] Counts, long[] Rolls, int[] RollCounts)
{
    /// <summary>
    /// The task of a list of pieces and a list of rolls, in any order. As many rolls as there are pieces are enough, and the longest of
    /// them do wherever others would: what is cut from a shorter roll can be cut from a longer one that is whole.
    /// </summary>
    public static PieceSizes Of(IReadOnlyCollection<long> pieces, IEnumerable<long> rolls)
    {
        var sizes = pieces.GroupBy(size => size).OrderByDescending(same => same.Key).ToList();
        var lengths = rolls.OrderDescending().Take(pieces.Count).GroupBy(length => length).OrderBy(same => same.Key).ToList();
        return new(
            [.. sizes.Select(same => same.Key)],
            [.. sizes.Select(same => same.Count())],
            [.. lengths.Select(same => same.Key)],
            [.. lengths.Select(same => same.Count())]);
    }

    /// <summary>All pieces together.</summary>
    public long Need => Sizes.Zip(Counts, (size, count) => size * count).Sum();

    /// <summary>All rolls together.</summary>
    public long Room => Rolls.Zip(RollCounts, (length, count) => length * count).Sum();
}

/// <summary>One roll's pieces.</summary>
/// <param name="Roll">What the roll holds.</param>
/// <param name="Sizes">Longest first.</param>
internal sealed record FilledRoll(long Roll, IReadOnlyList<long> Sizes)
{
    /// <summary>What is left; a cut's loss is in it where no cut is needed.</summary>
    public long Left => Roll - Sizes.Sum();
}

/// <summary>Whether pieces go into rolls.</summary>
/// <param name="Filled">How; null where they do not, or where nobody knows.</param>
/// <param name="IsCertain">The answer is proven. That they go always is.</param>
internal sealed record Answer(IReadOnlyList<FilledRoll>? Filled, bool IsCertain)
{
    public static Answer No { get; } = new(null, IsCertain: true);

    public static Answer Unknown { get; } = new(null, IsCertain: false);
}
