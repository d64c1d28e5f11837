using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// The tool's radius is smaller than publications give for tube of this material and size. Only where the file says nothing of it: whoever
/// knows the tube knows better. The message does not name the line, so that lines on one tube and tool say it once.
/// </summary>
public static class TighterThanPublished
{
    private const string Cure =
        "use a tool with a larger radius, or bend a practice piece, look at it for flats and kinks, and type the smallest "
            + "radius that your tube takes as `smallest-radius`";

    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "tighter-than-published", RuleSubject.Making, "Below the smallest radius that is published for it, tube may flatten or kink.");

    /// <summary>A warning at the radius of each tool that is tighter than what is published for the line's tube.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        var tube = template.Tube;
        if (tube.SmallestRadius is not null)
        {
            yield break;
        }

        var (smallest, words) = Published(tube);

        // Half of the tube's diameter and less is the other rule's subject.
        foreach (var bender in layout.Bends.Select(bend => bend.Bend.Bender).Distinct()
            .Where(bender => bender.Radius > 0.5 * tube.OutsideDiameter
            && (bender.Radius + Tolerances.SameTubeSize).FallsShortOf(smallest)))
        {
            yield return Rule.Warning(
                bender.RadiusAt,
                $"{BenderNames.InWords(bender)} bends {TubeNames.InWords(tube)} to {FindingFigures.Mm(bender.Radius)}, tighter than "
                    + $"{FindingFigures.Mm(smallest)}, {words}: {Cure}");
        }
    }

    private static (Length Smallest, string Words) Published(Tube tube)
    {
        if (PublishedRadius.For(tube) is { } row)
        {
            var check = row.Source.MustBeChecked ? ": check" : string.Empty;
            return (row.Smallest, $"the smallest published for {row.Material.InWords()} of this size ({row.Source.InWords}{check})");
        }

        return tube.InsideDiameter is { } hole
            ? (PublishedRadius.IdealInsideDiameters * hole, $"{PublishedRadius.IdealInsideDiameters} times the inside diameter, which is "
                + $"an ideal for low friction and no limit ({PublishedRadius.Ideal.InWords})")
            : (tube.OutsideDiameter, "the tube's own diameter (common practice, no source; the radius counts to the tube's centreline)");
    }
}
