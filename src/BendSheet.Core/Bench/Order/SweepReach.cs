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
    private readonly Dictionary<(int Bend, TubeEnd Held, int Made), Length> _scattered = [];

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

    /// <summary>The same with bends made anywhere on the swept side, and straight tube between them.</summary>
    /// <param name="bend">From 0.</param>
    /// <param name="held">The other side is swept.</param>
    /// <param name="made">One bit for each bend that is made, bend 0 the lowest; those on the held side do not count.</param>
    public Length OfScattered(int bend, TubeEnd held, int made)
    {
        var swept = held == TubeEnd.A ? made >> (bend + 1) << (bend + 1) : made & ((1 << bend) - 1);
        if (!_scattered.TryGetValue((bend, held, swept), out var reach))
        {
            var arm = ArmOf(bend, held == TubeEnd.A ? TubeEnd.B : TubeEnd.A, i => (swept >> i & 1) == 1);
            _scattered[(bend, held, swept)] = reach = arm.Reaches()[^1];
        }

        return reach;
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

    /// <summary>The tube on one side of a bend, all the bends on it in the order in which they come from there.</summary>
    /// <param name="bend">From 0.</param>
    /// <param name="towards">The side.</param>
    public SweptTube ArmOf(int bend, TubeEnd towards) => ArmOf(bend, towards, _ => true);

    /// <summary>The tube on one side of a bend, with some of the bends on it.</summary>
    /// <param name="bend">From 0.</param>
    /// <param name="towards">The side.</param>
    /// <param name="isOnIt">Bends that are not on it are straight tube.</param>
    /// <param name="held">It is the side that is held: the arm then begins where the bend does, and does not move.</param>
    public SweptTube ArmOf(int bend, TubeEnd towards, Func<int, bool> isOnIt, bool held = false)
    {
        var outwards = new List<ArmBend>();
        var (straight, roll) = (Length.Zero, Angle.Zero);
        var bends = towards == TubeEnd.B
            ? Enumerable.Range(bend + 1, layout.Bends.Length - bend - 1)
            : Enumerable.Range(0, bend).Reverse();
        foreach (var i in bends)
        {
            // A straight and a rotation lie between two bends, and belong to the one further from A.
            var further = towards == TubeEnd.B ? i : i + 1;
            straight += layout.Legs[further].StraightLeft;
            roll += layout.Bends[further].Bend.Rotation;
            if (isOnIt(i))
            {
                outwards.Add(new(straight, roll, layout.Bends[i], TubeIn(i)));
                (straight, roll) = (Length.Zero, Angle.Zero);
            }
            else
            {
                straight += TubeIn(i);
            }
        }

        var last = straight + (towards == TubeEnd.B ? tube.CutLength - tube.Bends[^1].End : tube.Bends[0].Start);
        return new(layout.Bends[bend], held ? Length.Zero : TubeIn(bend), pulls[bend], outwards, last);
    }

    private Length TubeIn(int bend) => tube.Bends[bend].End - tube.Bends[bend].Start;
}
