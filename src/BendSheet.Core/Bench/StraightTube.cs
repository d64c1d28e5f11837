using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>Where a bend lies along the still straight tube, from the cut end of A.</summary>
/// <param name="Start">On the side of A.</param>
/// <param name="Middle">Halfway along the arc.</param>
/// <param name="End">On the side of B.</param>
public readonly record struct BendPlace(Length Start, Length Middle, Length End);

/// <summary>The still straight tube with the places of its bends, whatever the order they are made in.</summary>
/// <param name="Bends">From end A.</param>
/// <param name="DevelopedLength">Tube the finished line is made of: arcs times the arc factor that is used, and what the flares take
/// up.</param>
/// <param name="CutLength">What is cut off the roll: the developed length and the trim.</param>
public sealed record StraightTube(ImmutableArray<BendPlace> Bends, Length DevelopedLength, Length CutLength)
{
    /// <summary>Over the outside.</summary>
    public Length Diameter { get; private init; }

    /// <summary>The tube for a layout without a straight below zero.</summary>
    public static StraightTube Of(LineTemplate template, RouteLayout layout)
    {
        var bends = ImmutableArray.CreateBuilder<BendPlace>(layout.Bends.Length);
        var reached = template.From.FlareAllowance;
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var arc = BenderCalibration.Of(layout.Bends[i].Bend.Bender, template.Tube).ArcFactor * layout.Bends[i].Arc;
            var start = reached + layout.Legs[i].StraightLeft;
            reached = start + arc;
            bends.Add(new(start, start + (0.5 * arc), reached));
        }

        var developed = reached + layout.Legs[^1].StraightLeft + template.To.FlareAllowance;
        return new(bends.MoveToImmutable(), developed, developed + template.To.Trim) { Diameter = template.Tube.OutsideDiameter };
    }
}
