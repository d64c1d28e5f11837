using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Steel tube of 3/16 in for brakes has a wall of at least 0.028 in (a classic-car brake plumbing article). The message does not name the
/// line, so that lines of one tube say it once.
/// </summary>
public static class WallTooThin
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "wall-too-thin", RuleSubject.Making, "Steel tube with a wall thinner than brake tube's was made for something else.");

    private static Length Size => Length.FromInches(3.0 / 16);

    private static Length Thinnest => Length.FromInches(0.028);

    /// <summary>A warning at the wall of a steel tube of that size that is thinner.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template)
    {
        var tube = template.Tube;
        if (tube.Wall is { } wall && tube.IsOfSize(Size) && TubeMaterials.Recognize(tube.Material) == TubeMaterial.Steel
            && (wall + Tolerances.SameWall).FallsShortOf(Thinnest))
        {
            yield return Rule.Warning(
                tube.WallAt,
                $"{TubeNames.InWords(tube)} has a wall of {FindingFigures.Wall(wall)}, and steel brake tube of 3/16 in has at least "
                    + $"{FindingFigures.Wall(Thinnest)} (a classic-car brake plumbing article): use tube that is sold for hydraulic "
                    + "brakes, or measure the wall again");
        }
    }
}
