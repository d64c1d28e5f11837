using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>What the hands do with one line: marks, angles and lengths of the still straight tube, and the order of work.</summary>
/// <param name="Bends">From end A.</param>
/// <param name="FirstStraight">Straight tube from the finished end A to the first bend, or to end B where there is none.</param>
/// <param name="CentrelineLength">Straights plus arcs of the finished shape.</param>
/// <param name="DevelopedLength">Tube the finished line is made of: arcs times the tool's arc factor, and what the flares take up.</param>
/// <param name="CutLength">What is cut off the roll: the developed length and the trim.</param>
/// <param name="FlareFaceA">From the cut end of A to its finished flare face; zero where A is not flared.</param>
/// <param name="Order">What is done after what.</param>
public sealed record BenchPlan(
    ImmutableArray<BenchBend> Bends,
    Length FirstStraight,
    Length CentrelineLength,
    Length DevelopedLength,
    Length CutLength,
    Length FlareFaceA,
    OrderOfWork Order)
{
    /// <summary>
    /// What the marks count from, as a place along the straight tube: the finished face of A where A is flared before the bends, or else
    /// its cut end.
    /// </summary>
    public Length Datum => Order.FlareAFirst ? FlareFaceA : Length.Zero;

    /// <summary>The bends in the order they are made.</summary>
    public IEnumerable<BenchBend> InWorkingOrder => Order.Steps.Select(step => Bends[step.Bend]);

    /// <summary>How the bending plane turns from the bend made before, the shorter way round; not at all for the first one.</summary>
    public Angle RollTo(BenchBend bend) =>
        bend.Step > 1 ? (bend.Dial + -Bends[Order.Steps[bend.Step - 2].Bend].Dial).NearestTurn() : Angle.Zero;

    /// <summary>The plan of a line whose centreline exists.</summary>
    /// <param name="template">As measured.</param>
    /// <param name="layout">Without a straight below zero.</param>
    /// <param name="centreline">Of that layout.</param>
    /// <param name="tube">Its still straight tube.</param>
    /// <param name="pulls">What the tool is pulled to, for each bend.</param>
    /// <param name="order">What is done after what.</param>
    /// <param name="penned">Dial reading of the pen line where it is on the tube already; null where the first bend has it inside.</param>
    public static BenchPlan Of(
        LineTemplate template,
        RouteLayout layout,
        TubeCentreline centreline,
        StraightTube tube,
        ImmutableArray<Angle> pulls,
        OrderOfWork order,
        Angle? penned = null)
    {
        var dials = DialReading.Of(template.Route);
        var bends = new BenchBend[layout.Bends.Length];
        for (var turn = 0; turn < order.Steps.Length; turn++)
        {
            var step = order.Steps[turn];
            var i = step.Bend;
            var bend = layout.Bends[i];
            bends[i] = new(
                i + 1,
                bend,
                dials[i],
                pulls[i],
                tube.Bends[i],
                Mark.Of(bend.Bend.Bender, step.Held, tube.Bends[i]))
            {
                Step = turn + 1,
                Held = step.Held,
                LineAt = PenLine.At(dials[i], penned ?? dials[order.Steps[0].Bend], step.Held),
                Swing = step.Swing,
                StraightAfter = layout.Legs[i + 1].StraightLeft,
                Lever = Lever.OfBend(centreline, i, aboutStart: step.Held == TubeEnd.B),
            };
        }

        return new(
            [.. bends],
            layout.Legs[0].StraightLeft,
            centreline.Length,
            tube.DevelopedLength,
            tube.CutLength,
            template.From.FlareAllowance,
            order);
    }
}
