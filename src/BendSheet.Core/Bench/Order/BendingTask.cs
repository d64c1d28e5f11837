using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>What has to be bent, and what the tools need for it.</summary>
/// <param name="Places">Of the bends along the still straight tube.</param>
/// <param name="BareFrom">Where the tube becomes free for the tool, from the cut end of A.</param>
/// <param name="BareTo">Where it stops being free.</param>
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
    public Length TowardsA(int bend, bool made) => TowardsA(bend, made ? bend - 1 : null);

    /// <summary>Straight tube towards B: up to the next bend where that is made, and otherwise up to the end.</summary>
    public Length TowardsB(int bend, bool made) => TowardsB(bend, made ? bend + 1 : null);

    /// <summary>Whether a bend can be made with its neighbours made or still straight, and nothing made beyond a straight one.</summary>
    public bool Fits(int bend, TubeEnd held, bool madeTowardsA, bool madeTowardsB) =>
        Fits(bend, held, madeTowardsA ? bend - 1 : null, madeTowardsB ? bend + 1 : null);

    /// <summary>Whether a bend can be made between the nearest bends that are made; null where all is straight up to the end.</summary>
    public bool Fits(int bend, TubeEnd held, int? madeTowardsA, int? madeTowardsB)
    {
        var needs = Needs(bend, held);
        return !TowardsA(bend, madeTowardsA).FallsShortOf(needs.TowardsA) && !TowardsB(bend, madeTowardsB).FallsShortOf(needs.TowardsB);
    }

    private Length TowardsA(int bend, int? made) => Places[bend].Start - (made is { } near ? Places[near].End : BareFrom);

    private Length TowardsB(int bend, int? made) => (made is { } near ? Places[near].Start : BareTo) - Places[bend].End;
}
