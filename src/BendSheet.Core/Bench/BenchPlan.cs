using System.Collections.Immutable;
using BendSheet.Core.Centreline;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>What the hands do with one line: marks, angles and lengths of the still straight tube, bent from A to B.</summary>
/// <param name="Bends">From end A.</param>
/// <param name="FirstStraight">Straight tube from the finished end A to the first bend, or to end B where there is none.</param>
/// <param name="CentrelineLength">Straights plus arcs of the finished shape.</param>
/// <param name="DevelopedLength">Tube the finished line is made of: arcs times the tool's arc factor, and what the flares take up.</param>
/// <param name="CutLength">What is cut off the roll: the developed length and the trim.</param>
/// <param name="FlareFaceA">From the cut end of A to its finished flare face; zero where A is not flared.</param>
public sealed record BenchPlan(
    ImmutableArray<BenchBend> Bends,
    Length FirstStraight,
    Length CentrelineLength,
    Length DevelopedLength,
    Length CutLength,
    Length FlareFaceA)
{
    /// <summary>The plan of a line whose centreline exists.</summary>
    public static BenchPlan Of(LineTemplate template, RouteLayout layout, TubeCentreline centreline)
    {
        var dials = DialReading.Of(template.Route);
        var bends = ImmutableArray.CreateBuilder<BenchBend>(layout.Bends.Length);
        var reached = template.From.Takes;
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i];
            var bender = bend.Bend.Bender;
            var learned = LearnedTool.Of(bender, template.Tube);
            var arc = learned.ArcFactor * bend.Arc;
            var start = reached + layout.Legs[i].StraightLeft;
            var middle = start + (0.5 * arc);
            reached = start + arc;
            bends.Add(new(
                i + 1,
                bend,
                dials[i],
                learned.Pull(bend.Bend.Turn),
                start,
                middle,
                End: reached,
                Mark.Of(bender, start, middle),
                layout.Legs[i + 1].StraightLeft,
                Lever.OfBend(centreline, i),
                Lever.OfRotation(centreline, i)));
        }

        var developed = reached + layout.Legs[^1].StraightLeft + template.To.Takes;
        return new(
            bends.MoveToImmutable(),
            layout.Legs[0].StraightLeft,
            centreline.Length,
            developed,
            developed + template.To.Trim,
            template.From.Takes);
    }
}
