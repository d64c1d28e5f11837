using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Plain copper and aluminium are not for brake lines (a classic-car brake plumbing article). Copper-nickel is neither of these. The
/// message does not name the line, so that lines of one tube say it once.
/// </summary>
public static class NotForBrakes
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "not-for-brakes",
        RuleSubject.Making,
        "Plain copper and aluminium fatigue and crack, and a cracked line does not brake.");

    /// <summary>A warning at the material of a tube that is not for brakes.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template)
    {
        var tube = template.Tube;
        if (TubeMaterials.Recognize(tube.Material) is { } material and (TubeMaterial.Copper or TubeMaterial.Aluminium))
        {
            yield return Rule.Warning(
                tube.MaterialAt,
                $"{TubeNames.InWords(tube)} is {material.InWords()}, which is not for brake lines (a classic-car brake plumbing "
                    + "article): use tube that is sold for hydraulic brakes");
        }
    }
}
