using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Air rises: from a hump between the ends it comes out at neither. Lines are bled at their highest points first, by loosening joints
/// (TM 10-3930-633-12); a rise of less than the tube's own diameter leaves the air a way past (common practice, no source).
/// </summary>
public static class HoldsAir
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "holds-air",
        RuleSubject.Making,
        "Air in a hump between the two ends is hard to bleed out, and a brake with air in it does not brake.");

    /// <summary>A finding for each hump, at the leg that it lies on. Silent where nobody said which way is up.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout, TubeCentreline centreline) => !template.LiesOnCar
        ? []
        : HighPoint.Of(centreline)
            .Where(hump => template.Tube.OutsideDiameter.FallsShortOf(hump.Height))
            .Select(hump => Rule.Warning(
                layout.Legs[hump.Piece].At,
                $"line {template.Name} has a hump {FindingFigures.Mm(hump.Height)} high, {FindingFigures.Mm(hump.AlongTube)} along the "
                    + "tube from A, and is hard to bleed: let the line rise all the way to one end, or put a joint or a bleed point at the "
                    + "top and crack it there when you bleed (TM 10-3930-633-12)"));
}
