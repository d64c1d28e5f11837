using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Air rises: from a hump between the ends it comes out at neither, and no bleeding brings it out. Common practice, no source; a rise of
/// less than the tube's own diameter leaves the air a way past.
/// </summary>
public static class HoldsAir
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "holds-air",
        RuleSubject.Making,
        "Air in a hump between the two ends cannot be bled out, and a brake with air in it does not brake.");

    /// <summary>A finding for each hump, at the leg that it lies on. Silent where nobody said which way is up.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout, TubeCentreline centreline) => !template.LiesOnCar
        ? []
        : HighPoint.Of(centreline)
            .Where(hump => template.Tube.OutsideDiameter.FallsShortOf(hump.Height))
            .Select(hump => Rule.Warning(
                layout.Legs[hump.Piece].At,
                $"line {template.Name} has a hump {FindingFigures.Mm(hump.Height)} high, {FindingFigures.Mm(hump.AlongTube)} along the "
                    + "tube from A, and air in it cannot be bled out: let the line rise all the way to one end, "
                    + "or put a bleed point there"));
}
