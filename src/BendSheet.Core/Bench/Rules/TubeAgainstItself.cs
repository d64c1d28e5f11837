using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>The finished shape against itself: the one place where it comes nearest, if that is too near.</summary>
public static class TubeAgainstItself
{
    /// <summary>At most one finding: contact, or too little air between.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout, TubeCentreline centreline)
    {
        if (layout.Bends.IsEmpty)
        {
            return [];
        }

        // The room inside the tightest bend, whose own two sides are no approach. A radius that no tube can follow is another rule's
        // subject.
        var diameter = template.Tube.OutsideDiameter;
        var radius = layout.Bends.Min(bend => bend.Radius);
        var clearance = radius - (0.5 * diameter);
        if (clearance <= Length.Zero)
        {
            return [];
        }

        var within = diameter + (clearance < RubsItself.LeastGap ? clearance : RubsItself.LeastGap);
        return SelfApproach.Of(centreline, within) is { } approach
            ? [MeetsItself.Check(template, layout, approach) ?? RubsItself.Finding(template, layout, approach)]
            : [];
    }

    /// <summary>Where the later of the two places was typed.</summary>
    internal static SourcePosition TypedAt(RouteLayout layout, TubePlace place) =>
        place.InBend ? layout.Bends[place.Number].Bend.TurnAt : layout.Legs[place.Number].At;

    /// <summary><c>straight 1 and bend 4</c>.</summary>
    internal static string Stretches(SelfApproach approach) =>
        approach.First.InBend == approach.Second.InBend && approach.First.Number == approach.Second.Number
        ? $"two places of {Stretch(approach.First)}"
        : $"{Stretch(approach.First)} and {Stretch(approach.Second)}";

    /// <summary><c>120.0 mm (4.724 in) and 340.0 mm (13.386 in) along the tube from A</c>.</summary>
    internal static string Places(SelfApproach approach) =>
        $"{FindingFigures.Mm(approach.First.AlongTube)} and {FindingFigures.Mm(approach.Second.AlongTube)} along the tube from A";

    /// <summary>What moves them apart: in a coil its pitch does, and a flat bend comes back to where it started.</summary>
    internal static string Cure(RouteLayout layout, SelfApproach approach) =>
        InCoil(layout, approach.First) || InCoil(layout, approach.Second)
        ? "give the coil a larger pitch"
        : layout.Bends.Take(approach.Second.Number + 1).Skip(approach.First.Number)
        .Any(bend => bend.Bend.Turn > Tolerances.NoCorner + Tolerances.InLine)
            ? "make the large bend between them a `coil` with a pitch, or change a leg or a bend"
            : "change a leg, a bend or a rotation between them";

    private static bool InCoil(RouteLayout layout, TubePlace place) => place.InBend && layout.Bends[place.Number].Bend.FromTangent;

    private static string Stretch(TubePlace place) =>
        FormattableString.Invariant($"{(place.InBend ? "bend" : "straight")} {place.Number + 1}");
}
