using BendSheet.Core.Findings;

namespace BendSheet.Core.Survey;

/// <summary>What can be wrong with a set of taped distances.</summary>
public static class TapedRules
{
    /// <summary>A corner that no distance names, or a number that no corner has.</summary>
    public static Rule CornerNumbers { get; } = File(
        "corner-numbers", "Corners are numbered from end A without gaps, so that it is clear which distance is which.");

    /// <summary>From a corner to itself, nothing, or longer than any line.</summary>
    public static Rule NoDistance { get; } = File(
        "no-distance", "A distance is between two different corners, and a tape must be able to show it.");

    /// <summary>The same pair of corners twice.</summary>
    public static Rule DistanceSaidTwice { get; } = File(
        "distance-said-twice", "With two figures for one distance, nobody can tell which is right.");

    /// <summary>Without it the corners have no place.</summary>
    public static Rule DistanceMissing { get; } = File(
        "distance-missing", "A corner is found from the three before it; with fewer distances it could lie anywhere.");

    /// <summary>Three distances that no three points have.</summary>
    public static Rule TriangleImpossible { get; } = File(
        "triangle-impossible", "Two sides of a triangle must together be longer than the third.");

    /// <summary>A corner where the tape shows no bend.</summary>
    public static Rule CornerInLine { get; } = File(
        "corner-in-line", "Where the line goes straight on there is no corner, and nothing to measure the next roll from.");

    /// <summary>A distance over two bends that no rotation gives.</summary>
    public static Rule RotationImpossible { get; } = File(
        "rotation-impossible", "With these bends, no roll puts the two outer corners that near or that far apart.");

    /// <summary>Left and right fit alike.</summary>
    public static Rule SideMissing { get; } = File(
        "side-missing", "A shape and its mirror image have the same distances: a guess could make the wrong hand.");

    /// <summary>A side for a bend that has none.</summary>
    public static Rule SideOutOfPlace { get; } = File(
        "side-out-of-place", "The first bend has no bend before it to take a side from, and a corner that does not exist has no side.");

    /// <summary>The distances say the other side.</summary>
    public static Rule SideContradicted { get; } = File(
        "side-contradicted", "Distances over several bends say the other side: the side or a distance was written down wrongly.");

    /// <summary>Flat, as far as the tape can tell.</summary>
    public static Rule TakenAsFlat { get; } = File(
        "taken-as-flat", "In a nearly flat shape one millimetre on the tape is many degrees of rotation, so what is assumed is said.");

    /// <summary>One distance against all others.</summary>
    public static Rule DistanceMisfit { get; } = File(
        "distance-misfit", "A distance that does not agree with the others was misread, or is between other corners.");

    private static Rule File(string name, string why) => new(name, RuleSubject.File, why);
}
