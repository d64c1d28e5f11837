using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// The tool's radius is smaller than the file says the tube can take: it flattens or kinks. A warning; an error where the radius to the
/// centreline is not more than half the tube's diameter, which no tube can follow.
/// </summary>
public static class BendTooTight
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "bend-too-tight", RuleSubject.Making, "Bent tighter than this, the tube flattens or kinks.");

    /// <summary>A finding at the radius of each tool that is too tight for the line's tube.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        foreach (var bender in layout.Bends.Select(bend => bend.Bend.Bender).Distinct())
        {
            if (bender.Radius <= 0.5 * template.Tube.OutsideDiameter)
            {
                yield return Rule.Error(
                    bender.RadiusAt,
                    $"line {template.Name}: {BenderNames.InWords(bender)} has a radius of {FindingFigures.Mm(bender.Radius)}, not more "
                        + $"than half of the tube's {FindingFigures.Mm(template.Tube.OutsideDiameter)}: give the bend radius to the "
                        + "tube's centreline");
            }
            else if (template.Tube.SmallestRadius is { } smallest && bender.Radius.FallsShortOf(smallest))
            {
                yield return Rule.Warning(
                    bender.RadiusAt,
                    $"line {template.Name}: {BenderNames.InWords(bender)} bends to {FindingFigures.Mm(bender.Radius)}, tighter than the "
                        + $"{FindingFigures.Mm(smallest)} that the file gives as this tube's smallest radius: use a tool with a larger "
                        + "radius, or check the figure with the tube's maker");
            }
        }
    }
}
