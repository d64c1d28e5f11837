using System.Collections.Immutable;
using BendSheet.Core.Bench.Limits;
using BendSheet.Core.Bench.Order;
using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Fit;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>One line taken all the way from its template to its bench plan. Start reading here.</summary>
/// <param name="Template">As measured.</param>
/// <param name="Layout">Carried over to the tool's radius; null where the template cannot be.</param>
/// <param name="Centreline">In space; null where a leg is too short for its bends.</param>
/// <param name="Plan">What the hands do; null where there is no centreline.</param>
/// <param name="Findings">All that is to be said about this line.</param>
public sealed record SolvedLine(
    LineTemplate Template,
    RouteLayout? Layout,
    TubeCentreline? Centreline,
    BenchPlan? Plan,
    ImmutableArray<Finding> Findings)
{
    /// <summary>Where its clips go; null where the file asks for none.</summary>
    public ClipPlan? Clips { get; private init; }

    /// <summary>The same line with more to be said about it.</summary>
    public SolvedLine With(IEnumerable<Finding> more) => this with { Findings = [.. Findings, .. more] };

    /// <summary>Template → layout → centreline → plan, and at each stage what does not hold.</summary>
    public static SolvedLine Of(LineTemplate template)
    {
        var (layout, findings) = RouteLayout.Of(template);
        if (layout is null)
        {
            return new(template, null, null, null, findings);
        }

        findings = findings.AddRange(LayoutLimits.Of(template, layout));
        if (layout.Legs.Any(leg => leg.StraightLeft < Length.Zero))
        {
            return new(template, layout, null, null, findings);
        }

        var centreline = TubeCentreline.Of(layout, template.Start);
        var tube = StraightTube.Of(template, layout);
        ImmutableArray<Angle> pulls = [.. layout.Bends.Select(bend => LearnedTool.Of(bend.Bend.Bender, template.Tube).Pull(bend.Bend.Turn))];
        var swings = new Swings(layout, tube, pulls);
        var order = OrderPlanner.Find(template, layout, tube, swings);
        var plan = BenchPlan.Of(template, layout, centreline, tube, pulls, order ?? OrderPlanner.FromA(layout, swings));
        var clips = ClipPlan.Of(template, layout, tube);
        return new(
            template,
            layout,
            centreline,
            plan,
            [
                .. findings,
                .. order is null ? NoOrder.Why(template, layout, tube, swings) : NoRoom.Check(template, plan, swings),
                .. HoldsAir.Check(template, layout, centreline),
                .. TubeAgainstItself.Check(template, layout, centreline),
                .. ClipsFarApart.Check(template),
                .. NoPlaceForClip.Check(template, clips),
                .. FinishedDiffers.Check(template, centreline),
            ])
        {
            Clips = clips,
        };
    }
}
