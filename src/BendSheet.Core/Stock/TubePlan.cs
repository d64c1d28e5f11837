using System.Collections.Immutable;
using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>What is needed of one kind of tube from now on: lines that are made need nothing.</summary>
/// <param name="Pieces">Practice pieces, then lines in the order of the file, with a template or without.</param>
/// <param name="CuttingLosses">One cut for each piece.</param>
/// <param name="Spare">Held back for lines that go wrong.</param>
public sealed record TubeNeed(ImmutableArray<Piece> Pieces, Length CuttingLosses, Length Spare)
{
    /// <summary>The sum over pieces of one use.</summary>
    public Length Of(PieceUse use) => Pieces.Where(piece => piece.Use == use).Aggregate(Length.Zero, (sum, piece) => sum + piece.Length);

    /// <summary>All together.</summary>
    public Length Total => Pieces.Aggregate(CuttingLosses + Spare, (sum, piece) => sum + piece.Length);
}

/// <summary>One kind of tube: what is needed of it, what is there, and how it is cut.</summary>
/// <param name="Tube">As the file calls it where it is used first.</param>
/// <param name="Need">From now on.</param>
/// <param name="Rolls">Of this tube, in the order of the file.</param>
/// <param name="Plan">Null where no roll of this tube is typed.</param>
public sealed record TubePlan(Tube Tube, TubeNeed Need, ImmutableArray<Roll> Rolls, CuttingPlan? Plan)
{
    /// <summary>What the file calls it, each name once; none where it has no name.</summary>
    public required ImmutableArray<string> Names { get; init; }

    /// <summary>In a sentence: <c>the tube</c>, <c>tube main</c>, <c>tubes main and brake (one tube under 2 names)</c>.</summary>
    public string InWords => Names.Length < 2
        ? TubeNames.InWords(Tube)
        : FormattableString.Invariant($"tubes {string.Join(", ", Names[..^1])} and {Names[^1]} (one tube under {Names.Length} names)");

    /// <summary>What is left on all rolls.</summary>
    public Length Left => Rolls.Aggregate(Length.Zero, (sum, roll) => sum + (roll.Count * roll.Left));
}
