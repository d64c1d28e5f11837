using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>How the side of a bend is known.</summary>
internal enum SideKnown
{
    /// <summary>There is none: it turns in the plane of the bend before.</summary>
    Flat,

    /// <summary>It was seen, or stands for what has still to be seen; the sides that hang on it are found from the distances.</summary>
    Anchor,

    /// <summary>It was seen, and the distances may agree with it or not.</summary>
    Seen,

    /// <summary>The distances over several bends have to tell.</summary>
    FromDistances,
}

/// <summary>A rotation with what is known of its side.</summary>
/// <param name="Size">Its size, which is what the distances say.</param>
/// <param name="Known">How its side is known.</param>
/// <param name="Sign">+1 to the right, −1 to the left; 0 where the distances have to tell.</param>
/// <param name="Seen">What was typed.</param>
internal sealed record SidedRotation(TapedRotation Size, SideKnown Known, int Sign, TapedSide? Seen)
{
    /// <summary>The number of its bend.</summary>
    public int Bend => Size.Bend;

    /// <summary>
    /// Whether points keep to the side that is known. A side seen at a bend that may be flat to the tape is not held against least squares,
    /// unless other sides hang on it.
    /// </summary>
    public bool KeptBy(ReadOnlySpan<Vector3D> points) =>
        !(Known == SideKnown.Anchor || (Known == SideKnown.Seen && !Size.MayBeFlat)) || CornerChain.SideOf(points, Bend) * Sign >= 0;
}

/// <summary>
/// Which sides must be seen. Distances over one rotation never tell its side; a distance over two or more ties their sides together, but
/// a shape and its mirror image stay alike. So of all rotations tied together one side must be seen.
/// </summary>
internal static class TapedSides
{
    /// <summary>Sides for bends that have none, and the same bend twice.</summary>
    public static IEnumerable<Finding> Check(DistanceTable table, IReadOnlyList<TapedSide> sides)
    {
        var said = new HashSet<int>();
        foreach (var side in sides)
        {
            if (side.Bend <= 1 || side.Bend >= table.Last)
            {
                yield return TapedRules.SideOutOfPlace.Error(
                    side.At,
                    side.Bend == 1
                        ? "there is no bend before bend 1 to count its side from: leave its side out"
                        : $"there is no bend {side.Bend} to give a side for: the distances name {table.Last - 1} bends, and the second "
                            + "is the first with a side");
            }
            else if (!said.Add(side.Bend))
            {
                yield return TapedRules.SideOutOfPlace.Error(side.At, $"bend {side.Bend} has its side here a second time: keep one");
            }
        }
    }

    /// <summary>The rotations with their sides, as far as they are known before the distances over several bends are looked at.</summary>
    /// <remarks>Where a side must be seen, the finding says so and the bend turns to the right for the time being.</remarks>
    public static ImmutableArray<SidedRotation> Rotations(
        IReadOnlyList<TapedRotation> rotations,
        DistanceTable table,
        IReadOnlyList<TapedSide> sides,
        SourcePosition at,
        List<Finding> findings)
    {
        var known = new List<SidedRotation>();
        foreach (var tied in Tied(rotations, table))
        {
            var seen = tied.Select(rotation => rotation.IsFlat ? null : sides.FirstOrDefault(side => side.Bend == rotation.Bend)).ToList();
            var anchor = seen.FindIndex(side => side is not null);
            if (anchor < 0)
            {
                anchor = tied.FindIndex(rotation => !rotation.IsFlat && !rotation.MayBeFlat);
                if (anchor >= 0)
                {
                    findings.Add(Missing(tied[anchor].Bend, at));
                }
            }

            known.AddRange(anchor < 0
                ? tied.Select(rotation => Flattened(rotation, findings))
                : tied.Select((rotation, i) => new SidedRotation(
                    rotation,
                    rotation.IsFlat
                        ? SideKnown.Flat
                        : i == anchor
                        ? SideKnown.Anchor
                        : seen[i] is null
                        ? SideKnown.FromDistances
                        : SideKnown.Seen,
                    seen[i] is { } side ? (side.Side == Side.Right ? 1 : -1) : rotation.IsFlat || i == anchor ? 1 : 0,
                    seen[i])));
        }

        return [.. known];
    }

    /// <summary>The finding that asks for a side.</summary>
    public static Finding Missing(int bend, SourcePosition at, string why = "the tape cannot tell which way bend {0} turns") =>
        TapedRules.SideMissing.Error(
            at,
            $"{why.Replace("{0}", FormattableString.Invariant($"{bend}"), StringComparison.Ordinal)}: look along leg {bend} from end A "
                + $"with the side that bend {bend - 1} turned to held upwards, and say `side: {{{bend}: left}}` or `side: {{{bend}: "
                + $"right}}`");

    /// <summary>Nearer to flat than the tape can tell and no side seen: flat, and said so where it makes a difference.</summary>
    private static SidedRotation Flattened(TapedRotation rotation, List<Finding> findings)
    {
        if (!rotation.IsFlat && Math.Abs(rotation.Size - rotation.NearerFlat) > Tolerances.InLine.Radians)
        {
            findings.Add(TapedRules.TakenAsFlat.Note(
                rotation.Over.At,
                $"bend {rotation.Bend} is taken to lie in one plane with bend {rotation.Bend - 1}: distance {rotation.Over.Name} is "
                    + $"{FindingFigures.Mm(rotation.Over.Distance)}, and {FindingFigures.Mm(rotation.Flat)} would be flat, which a tape "
                    + $"can hardly tell apart; if it does leave the plane, say `side: {{{rotation.Bend}: left}}` or `side: "
                    + $"{{{rotation.Bend}: right}}`"));
        }

        return new(rotation.IsFlat ? rotation : rotation.Flattened(), SideKnown.Flat, 1, null);
    }

    /// <summary>Rotations along the line, parted wherever no distance goes over the last one before and the next one after.</summary>
    private static IEnumerable<List<TapedRotation>> Tied(IReadOnlyList<TapedRotation> rotations, DistanceTable table)
    {
        List<TapedRotation> tied = [];
        var last = 0;
        foreach (var rotation in rotations)
        {
            if (last > 0 && !rotation.IsFlat && !table.All.Any(taped => taped.From <= last - 2 && taped.To >= rotation.Bend + 1))
            {
                yield return tied;
                tied = [];
            }

            tied.Add(rotation);
            last = rotation.IsFlat ? last : rotation.Bend;
        }

        yield return tied;
    }
}
