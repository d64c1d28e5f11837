using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>What has to be bent, and what the tools need for it.</summary>
/// <param name="Places">Of the bends along the still straight tube.</param>
/// <param name="BareFrom">Where the tube becomes free for the tool, from the cut end of A.</param>
/// <param name="BareTo">Where it stops being so.</param>
/// <param name="HeldAtA">Straight tube that each bend needs held from A.</param>
/// <param name="HeldAtB">What it needs held from B.</param>
/// <param name="MostReach">How far the centreline may swing at each bend; null where the file does not say what is round the tool.</param>
internal sealed record BendingTask(
    ImmutableArray<BendPlace> Places,
    Length BareFrom,
    Length BareTo,
    ImmutableArray<StraightNeeded> HeldAtA,
    ImmutableArray<StraightNeeded> HeldAtB,
    ImmutableArray<Length?> MostReach)
{
    /// <summary>How many bends there are.</summary>
    public int Count => Places.Length;

    /// <summary>The task of a line whose ends are finished in a certain way.</summary>
    public static BendingTask Of(RouteLayout layout, StraightTube tube, FlareTiming atA, FlareTiming atB) => new(
        tube.Bends,
        atA.Taken,
        tube.CutLength - atB.Taken,
        [.. layout.Bends.Select((bend, i) => StraightNeeded.Of(bend.Bend.Bender, TubeEnd.A, tube.Bends[i]))],
        [.. layout.Bends.Select((bend, i) => StraightNeeded.Of(bend.Bend.Bender, TubeEnd.B, tube.Bends[i]))],
        [.. layout.Bends.Select(bend => bend.Bend.Bender.ClearAround - (0.5 * tube.Diameter))]);

    /// <summary>Whether a swing hits what is round the tool.</summary>
    public bool IsCramped(int bend, Length swing) => MostReach[bend] is { } most && most.FallsShortOf(swing);

    /// <summary>The straight tube that a bend needs.</summary>
    public StraightNeeded Needs(int bend, TubeEnd held) => (held == TubeEnd.A ? HeldAtA : HeldAtB)[bend];

    /// <summary>Straight tube towards A: up to the bend before where that is made, and otherwise up to the end.</summary>
    public Length TowardsA(int bend, bool made) => Places[bend].Start - (made ? Places[bend - 1].End : BareFrom);

    /// <summary>Straight tube towards B: up to the next bend where that is made, and otherwise up to the end.</summary>
    public Length TowardsB(int bend, bool made) => (made ? Places[bend + 1].Start : BareTo) - Places[bend].End;

    /// <summary>Whether a bend can be made with its neighbours made or still straight.</summary>
    public bool Fits(int bend, TubeEnd held, bool madeTowardsA, bool madeTowardsB)
    {
        var needs = Needs(bend, held);
        return !TowardsA(bend, madeTowardsA).FallsShortOf(needs.TowardsA) && !TowardsB(bend, madeTowardsB).FallsShortOf(needs.TowardsB);
    }
}
