using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Centreline;

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

    /// <summary>Walks the layout from end A, carrying a frame along: go straight, roll, bend.</summary>
    /// <param name="layout">With no straight below zero.</param>
    /// <param name="start">How the line lies; <see cref="Frame.Default"/> where the template does not say.</param>
    /// <exception cref="ArgumentException">A leg is too short for its bends.</exception>
    public static TubeCentreline Of(RouteLayout layout, Frame start)
    {
        if (layout.Legs.Any(leg => leg.StraightLeft < Length.Zero))
        {
            throw new ArgumentException("A leg is too short for its bends; that is a finding before there is a centreline.", nameof(layout));
        }

        var straights = ImmutableArray.CreateBuilder<Straight>(layout.Legs.Length);
        var arcs = ImmutableArray.CreateBuilder<Arc>(layout.Bends.Length);
        var frame = start;
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var straight = new Straight(frame, layout.Legs[i].StraightLeft);
            var bend = layout.Bends[i].Bend;
            var arc = new Arc(frame.Advanced(straight.Length).Rolled(bend.Rotation), bend.Bender.Radius, bend.Turn);
            straights.Add(straight);
            arcs.Add(arc);
            frame = arc.End;
        }

        straights.Add(new(frame, layout.Legs[^1].StraightLeft));
        return new(straights.MoveToImmutable(), arcs.MoveToImmutable());
    }
}
