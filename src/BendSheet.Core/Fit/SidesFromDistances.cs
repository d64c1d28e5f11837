using System.Collections.Immutable;
using BendSheet.Core.Bench.Limits;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fit;

/// <summary>What the distances over several bends say of the sides, found and seen.</summary>
internal static class SidesFromDistances
{
    /// <summary>Placings that turn out to fit better than the one before are taken over so many times.</summary>
    private const int MostChanges = 8;

    /// <summary>The placing that fits best, with a finding at each side that the distances leave open or contradict.</summary>
    public static Placing Settle(
        Placing best, ImmutableArray<SidedRotation> rotations, IReadOnlyList<TapedSpan> spans, SourcePosition at, List<Finding> findings)
    {
        var opposite = new OppositeSides(rotations, spans);
        var others = opposite.Of(best);
        for (var changes = 0; changes < MostChanges && Better(best, others, rotations) is { } better; changes++)
        {
            best = better.Refined(spans);
            others = opposite.Of(best);
        }

        foreach (var rotation in rotations)
        {
            var other = others.GetValueOrDefault(rotation.Bend);
            if (rotation.Known == SideKnown.FromDistances && other is not null && !OppositeSides.FitsClearlyBetter(best, other))
            {
                findings.Add(Open(rotation.Size, best, other, at));
            }
            else if (rotation.Seen is { } seen && rotation.Known != SideKnown.Flat && Contradicted(rotation, best, other))
            {
                var (said, found) = seen.Side == Side.Left ? ("left", "right") : ("right", "left");
                findings.Add(TapedRules.SideContradicted.Error(
                    seen.At,
                    $"bend {rotation.Bend} is said to turn {said}, but with the other sides given the distances over several bends fit clearly better with {found}{By(best, other)}: look again at bend {rotation.Bend} and at the others with a side, or measure the distances over them again"));
            }
        }

        return best;
    }

    private static Placing? Better(Placing best, Dictionary<int, Placing> others, ImmutableArray<SidedRotation> rotations) =>
        rotations.Where(rotation => rotation.Known == SideKnown.FromDistances)
            .Select(rotation => others.GetValueOrDefault(rotation.Bend))
            .OfType<Placing>()
            .Where(other => best.Norm - other.Norm > Tolerances.SamePoint.Millimetres)
            .MinBy(other => other.Misfit);

    /// <summary>The other side fits clearly better, or least squares has taken the bend over to it.</summary>
    private static bool Contradicted(SidedRotation rotation, Placing best, Placing? other) =>
        (rotation.Known == SideKnown.Seen && other is not null && OppositeSides.FitsClearlyBetter(other, best))
        || !Placing.Keeps(best.Points, rotation);

    private static string By(Placing best, Placing? other) => other is null
        ? string.Empty
        : $" (off by {Off(other)} instead of {Off(best)}, root of the sum of squares)";

    private static Finding Open(TapedRotation rotation, Placing best, Placing other, SourcePosition at)
    {
        if (!rotation.MayBeFlat)
        {
            return TapedSides.Missing(
                rotation.Bend, at, $"the distances do not tell which way bend {{0}} turns (left or right, they miss by {Off(best)} or {Off(other)}, root of the sum of squares)");
        }

        var (side, otherSide) = CornerChain.SideOf(best.Points, rotation.Bend) < 0 ? ("left", "right") : ("right", "left");
        return TapedRules.TakenAsFlat.Note(
            rotation.Over.At,
            $"bend {rotation.Bend} lies so nearly in one plane with bend {rotation.Bend - 1} that the tape can hardly tell its side: {side} is taken, which fits a little better; if that is wrong, say `side: {{{rotation.Bend}: {otherSide}}}`");
    }

    private static string Off(Placing placing) => FindingFigures.Mm(Length.FromMillimetres(placing.Norm));
}
