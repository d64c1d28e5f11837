using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Two stretches of the finished line would lie in the same place: the second of them cannot be bent there, or not without forcing the
/// first aside. A wire, thinner than the tube, may have passed.
/// </summary>
public static class MeetsItself
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "meets-itself",
        RuleSubject.Making,
        "Two stretches of a line cannot be in the same place; the thinner wire may have passed there.");

    /// <summary>
    /// An overlap of less than this is touching, which hands put right without being told. The turns of a close-wound coil stand askew, so
    /// that their centrelines are nearer than the pitch by a few hundredths.
    /// </summary>
    private static Length Touching => Length.FromMillimetres(0.1);

    /// <summary>A finding where the centrelines come nearer than the tube is thick; null where they do not.</summary>
    public static Finding? Check(LineTemplate template, RouteLayout layout, SelfApproach approach)
    {
        var overlap = template.Tube.OutsideDiameter - approach.Distance;
        return !Touching.FallsShortOf(overlap)
            ? null
            : Rule.Error(
                TubeAgainstItself.TypedAt(layout, approach.Second),
                $"line {template.Name} runs into itself: {TubeAgainstItself.Stretches(approach)} come {FindingFigures.UpMm(overlap)} "
                    + $"nearer than the tube is thick, {TubeAgainstItself.Places(approach)}; {TubeAgainstItself.Cure(layout, approach)} "
                    + $"so that they pass {FindingFigures.UpMm(overlap + RubsItself.LeastGap)} further apart");
    }
}
