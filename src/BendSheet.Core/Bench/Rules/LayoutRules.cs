using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>Every limit that can be checked before the line has a shape.</summary>
public static class LayoutRules
{
    /// <summary>What does not hold, rule by rule.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout) =>
    [
        .. LegTooShort.Check(template, layout),
        .. EndTooShort.Check(template, layout),
        .. BendBeyondTool.Check(template, layout),
        .. PullDoubtful.Check(template, layout),
        .. BendTooTight.Check(template, layout),
        .. TighterThanPublished.Check(template, layout),
        .. SpreadChanged.Check(template, layout),
        .. NearlyU.Check(template, layout),
        .. NoBend.Check(template),
        .. NotForBrakes.Check(template),
        .. WallTooThin.Check(template),
        .. FlareAndWall.Check(template),
        .. FlareAndSeat.Check(template),
    ];
}
