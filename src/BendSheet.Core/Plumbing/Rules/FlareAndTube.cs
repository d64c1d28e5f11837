using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// Tube that does not take the flare of its fitting: bubble flares are made on metric brake tube only (ISO 4038, from memory), and
/// stainless tube splits where a double flare folds it back on itself (common practice, no source). Walls have a rule of their own.
/// </summary>
public static class FlareAndTube
{
    private static readonly double[] MetricSizes = [4.75, 6, 8, 10];

    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "flare-and-tube", RuleSubject.Making, "A flare that is not made for this tube splits, or does not fill its seat.");

    /// <summary>
    /// A warning at the fitting's flare. The message does not name the line, so that every end with the fitting says it once.
    /// </summary>
    public static IEnumerable<Finding> Check(PortUse use)
    {
        if (use.End is not { Fitting: { } fitting, Tube: { } tube })
        {
            yield break;
        }

        if (fitting.Flare == Flare.Bubble && !MetricSizes.Any(size => tube.IsOfSize(Length.FromMillimetres(size))))
        {
            yield return Rule.Warning(
                fitting.FlareAt,
                $"fitting {fitting.Name} has a bubble flare, and it sits on tube of "
                    + $"{new LengthNotation(Imperial: true, 64).Size(tube.OutsideDiameter)}: bubble flares are for tube of 4.75, 6, 8 or "
                    + "10 mm (ISO 4038, from memory: check); use such tube, or another flare and port");
        }
        else if (fitting.Flare == Flare.Double45 && TubeMaterials.Recognize(tube.Material) == TubeMaterial.StainlessSteel)
        {
            yield return Rule.Warning(
                fitting.FlareAt,
                $"fitting {fitting.Name} has a double flare, and it sits on stainless steel, which splits when it is folded back (common "
                    + "practice, no source): use a 37° single flare with a sleeve and such a port, or another tube");
        }
    }
}
