using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>
/// The tube's centreline in space: straights and arcs in turn, from end A to end B, each starting where the one before ends and in its
/// direction.
/// </summary>
public sealed record TubeCentreline
{
    private TubeCentreline(ImmutableArray<Straight> straights, ImmutableArray<Arc> arcs)
    {
        Straights = straights;
        Arcs = arcs;
    }

    /// <summary>The straights, from end A; some may have no length.</summary>
    public ImmutableArray<Straight> Straights { get; }

    /// <summary>The arcs; arc i lies between straight i and straight i + 1.</summary>
    public ImmutableArray<Arc> Arcs { get; }

    /// <summary>Finished end A.</summary>
    public Vector3D EndA => Straights[0].Start.Position;

    /// <summary>Finished end B.</summary>
    public Vector3D EndB => Straights[^1].End;

    /// <summary>Along the centreline from end to end: straights plus arcs.</summary>
    public Length Length =>
        Straights.Aggregate(Length.Zero, (sum, straight) => sum + straight.Length)
        + Arcs.Aggregate(Length.Zero, (sum, arc) => sum + arc.Length);

    /// <summary>End A, the corner of each bend, end B: bends + 2 entries, null for a bend of 180° or more.</summary>
    public ImmutableArray<Vector3D?> Corners => [EndA, .. Arcs.Select(arc => arc.Corner), EndB];

    /// <summary>
    /// How the plane of each arc is rolled against that of the arc before, clockwise seen along the way; entry i is of arc i + 1.
    /// </summary>
    public IEnumerable<Angle> Rolls() => Arcs.Skip(1).Select((arc, i) => Angle.FromRadians(Math.Atan2(
        Arcs[i].End.Axis.Dot(arc.Start.Side), Arcs[i].End.Side.Dot(arc.Start.Side))));

    /// <summary>Whether it has the straights and arcs of another one, and all rolls the other way.</summary>
    public bool IsMirrorImageOf(TubeCentreline other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Arcs.Length == other.Arcs.Length
            && Straights.Zip(other.Straights).All(pair => Same(pair.First.Length.Millimetres, pair.Second.Length.Millimetres))
            && Arcs.Zip(other.Arcs).All(
                pair => Same(pair.First.Length.Millimetres, pair.Second.Length.Millimetres)
                    && Same(pair.First.Turn.Degrees, pair.Second.Turn.Degrees))
            && Rolls().Zip(other.Rolls()).All(pair => Same((pair.First + pair.Second).NearestTurn().Degrees, 0));

        static bool Same(double one, double another) => Math.Abs(one - another) < Tolerances.SamePoint.Millimetres;
    }

    /// <summary>Walks from end A, carrying a frame along: go straight, roll, bend.</summary>
    /// <param name="start">How end A lies.</param>
    /// <param name="straights">One more than arcs, none below zero.</param>
    /// <param name="arcs">The arcs between them.</param>
    /// <exception cref="ArgumentException">A straight is below zero.</exception>
    public static TubeCentreline Walk(Frame start, ReadOnlySpan<Length> straights, ReadOnlySpan<ArcAhead> arcs)
    {
        foreach (var straight in straights)
        {
            if (straight < Length.Zero)
            {
                throw new ArgumentException("A straight below zero is a finding before there is a centreline.", nameof(straights));
            }
        }

        var walkedStraights = ImmutableArray.CreateBuilder<Straight>(straights.Length);
        var walkedArcs = ImmutableArray.CreateBuilder<Arc>(arcs.Length);
        var frame = start;
        for (var i = 0; i < arcs.Length; i++)
        {
            var straight = new Straight(frame, straights[i]);
            var arc = new Arc(frame.Advanced(straight.Length).Rolled(arcs[i].Rotation), arcs[i].Radius, arcs[i].Turn);
            walkedStraights.Add(straight);
            walkedArcs.Add(arc);
            frame = arc.End;
        }

        walkedStraights.Add(new(frame, straights[^1]));
        return new(walkedStraights.MoveToImmutable(), walkedArcs.MoveToImmutable());
    }
}

/// <summary>An arc before it has a place.</summary>
/// <param name="Rotation">How its plane is rolled against that of the arc before, clockwise seen along the way.</param>
/// <param name="Radius">Above zero.</param>
/// <param name="Turn">How far it turns.</param>
public readonly record struct ArcAhead(Angle Rotation, Length Radius, Angle Turn);
