using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>What lies there before anything is cut, and what the work uses up beside the lines.</summary>
/// <param name="Rolls">In the order of the file.</param>
/// <param name="CuttingLoss">Tube lost to each cut, zero or more.</param>
/// <param name="Spare">Held back for lines that go wrong, as a part of the tube still needed for lines: 0.1 is a tenth.</param>
/// <param name="Practice">Pieces that flares and bends are tried on.</param>
/// <param name="Have">Hardware on hand, in the order of the file.</param>
public sealed record Stores(
    ImmutableArray<Roll> Rolls, Length CuttingLoss, double Spare, ImmutableArray<Practice> Practice, ImmutableArray<InTheDrawer> Have)
{
    /// <summary>What squaring and deburring a cut takes off, about a saw blade's width (common practice, no source).</summary>
    public static Length UsualCuttingLoss => Length.FromMillimetres(1);

    /// <summary>A file that says nothing.</summary>
    public static Stores Empty { get; } = new([], UsualCuttingLoss, 0, [], []);
}

/// <summary>Flares and bends that are tried before the first line is cut.</summary>
/// <param name="Flares">How many, each on a piece of its own.</param>
/// <param name="Length">Of one piece that is flared.</param>
/// <param name="Tube">That they are tried on.</param>
/// <param name="At">Where it was typed.</param>
public sealed record Practice(int Flares, Length Length, Tube Tube, SourcePosition At)
{
    /// <summary>How many of them are tried already, from 0 to <see cref="Flares"/>: they need no tube any more.</summary>
    public int Done { get; init; }

    /// <summary>Enough for a flaring bar to hold and for a nut to slide on (common practice, no source).</summary>
    public static Length UsualLength => Length.FromMillimetres(60);

    /// <summary>Enough for one bend with a leg on either side that a ruler measures well (common practice, no source).</summary>
    public static Length UsualBendLength => Length.FromMillimetres(200);

    /// <summary>How many bends, each on a piece of its own.</summary>
    public int Bends { get; init; }

    /// <summary>How many of them are tried already, from 0 to <see cref="Bends"/>.</summary>
    public int BendsDone { get; init; }

    /// <summary>Of one piece that is bent.</summary>
    public Length BendLength { get; init; } = UsualBendLength;
}

/// <summary>Hardware that need not be bought.</summary>
/// <param name="Name">The person's own word: <c>nut</c>, <c>an3 nut</c>.</param>
/// <param name="Count">How many there were before the first line was made, or how many there are where that is said.</param>
/// <param name="At">Where the name was typed.</param>
public sealed record InTheDrawer(string Name, int Count, SourcePosition At)
{
    /// <summary>Counted since: what lines that are made used is no longer among them.</summary>
    public bool IsLeft { get; init; }
}
