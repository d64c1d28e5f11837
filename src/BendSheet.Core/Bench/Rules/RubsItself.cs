using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Two stretches pass so near that a line which shakes wears through. The sixteenth of an inch is common practice, no source: training
/// texts give it at second hand for the room between a line and what it passes.
/// </summary>
public static class RubsItself
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "rubs-itself", RuleSubject.Making, "Two stretches that nearly touch chafe through as the car shakes.");

    /// <summary>The least air between two stretches.</summary>
    public static Length LeastGap => Length.FromInches(1.0 / 16);

    /// <summary>The finding about an approach that is no contact.</summary>
    public static Finding Finding(LineTemplate template, RouteLayout layout, SelfApproach approach)
    {
        var gap = approach.Distance - template.Tube.OutsideDiameter;
        var near = gap <= Tolerances.SamePoint ? "touch" : $"pass {FindingFigures.Mm(gap)} from each other";
        return Rule.Warning(
            TubeAgainstItself.TypedAt(layout, approach.Second),
            $"line {template.Name}: {TubeAgainstItself.Stretches(approach)} {near}, {TubeAgainstItself.Places(approach)}, and tube that "
                + $"near chafes through; {TubeAgainstItself.Cure(layout, approach)} so that {FindingFigures.UpMm(LeastGap)} stay "
                + "between, or clip the two together");
    }
}
