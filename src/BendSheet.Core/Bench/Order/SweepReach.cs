using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>How far the swept side of every bend reaches from the tool, whatever the order of work.</summary>
/// <param name="layout">Without a straight below zero.</param>
/// <param name="tube">Its still straight tube, at its longest: not yet flared and not yet trimmed.</param>
/// <param name="pulls">How far the tool is pulled, for each bend.</param>
internal sealed class SweepReach(RouteLayout layout, StraightTube tube, IReadOnlyList<Angle> pulls)
{
    private readonly Length[]?[] _towardsA = new Length[layout.Bends.Length][];
    private readonly Length[]?[] _towardsB = new Length[layout.Bends.Length][];

    /// <summary>The reach of a bend's swept side, from the former's axis to the tube's centreline.</summary>
    /// <param name="bend">From 0.</param>
    /// <param name="held">The other side is swept.</param>
    /// <param name="made">How many bends next to it on the swept side are made already; the others are still straight.</param>
    public Length Of(int bend, TubeEnd held, int made)
    {
        var known = held == TubeEnd.A ? _towardsB : _towardsA;
        var reaches = known[bend] ??= ArmOf(bend, held == TubeEnd.A ? TubeEnd.B : TubeEnd.A).Reaches();
        return reaches[made];
    }

    /// <summary>The longest the reach can be: all of the tube on that side straight.</summary>
    public Length AtMost(int bend, TubeEnd held)
    {
        var place = tube.Bends[bend];
        var length = held == TubeEnd.A ? tube.CutLength - place.Start : place.End;
        return Length.FromMillimetres(
            Math.Sqrt(
                (length.Millimetres * length.Millimetres)
                    + (layout.Bends[bend].Radius.Millimetres * layout.Bends[bend].Radius.Millimetres)));
    }

    /// <summary>The tube on one side of a bend.</summary>
    /// <param name="bend">From 0.</param>
    /// <param name="towards">The side.</param>
    /// <param name="held">It is the side that is held: the arm then begins where the bend does, and does not move.</param>
    public SweptTube ArmOf(int bend, TubeEnd towards, bool held = false)
    {
        var own = layout.Bends[bend];
        var outwards = towards == TubeEnd.B
            ? Enumerable.Range(bend + 1, layout.Bends.Length - bend - 1)
                .Select(i => new ArmBend(layout.Legs[i].StraightLeft, layout.Bends[i].Bend.Rotation, layout.Bends[i], TubeIn(i)))
            : Enumerable.Range(0, bend).Reverse()
                .Select(i => new ArmBend(layout.Legs[i + 1].StraightLeft, layout.Bends[i + 1].Bend.Rotation, layout.Bends[i], TubeIn(i)));
        var last = towards == TubeEnd.B ? tube.CutLength - tube.Bends[^1].End : tube.Bends[0].Start;
        return new(own, held ? Length.Zero : TubeIn(bend), pulls[bend], [.. outwards], last);
    }

    private Length TubeIn(int bend) => tube.Bends[bend].End - tube.Bends[bend].Start;
}
