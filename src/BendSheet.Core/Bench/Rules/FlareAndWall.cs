using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Each flare is made in walls up to some thickness. The message names neither the line nor the fitting, so that everything on one tube
/// says it once.
/// </summary>
public static class FlareAndWall
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "flare-and-wall", RuleSubject.Making, "A wall thicker than the flare is made for splits, or does not seal on its seat.");

    /// <summary>A warning at the wall of a tube that is too thick for the flare of an end.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template)
    {
        var tube = template.Tube;
        var flares = new[] { template.From, template.To }.Select(end => end.Fitting?.Flare).OfType<Flare>().Distinct();
        foreach (var size in flares.Select(flare => FlareSize.For(flare, tube)))
        {
            if (size is { LargestWall: { } largest } && tube.Wall is { } wall && largest.FallsShortOf(wall - Tolerances.SameWall))
            {
                yield return Rule.Warning(
                    tube.WallAt,
                    $"{TubeNames.InWords(tube)} has a wall of {FindingFigures.Wall(wall)}, and the {size.Flare.InWords()} on tube of "
                        + $"this size is for at most {FindingFigures.Wall(largest)} ({size.Source.InWords}: check): use tube with a "
                        + "thinner wall, or ask the fitting's maker which flare goes with this one");
            }
        }
    }
}
