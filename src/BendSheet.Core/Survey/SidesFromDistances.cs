using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>What the distances over several bends say of the sides, found and seen.</summary>
internal static class SidesFromDistances
{
    /// <summary>A placing that fits better than the one before is taken over at most so many times.</summary>
    private const int MostChanges = 8;

    /// <summary>The placing that fits best, with a finding at each side that the distances leave open or contradict.</summary>
    public static Placing Settle(TapedSearch search, SourcePosition at, List<Finding> findings)
    {
        var best = search.Best();
        if (!double.IsFinite(best.Misfit))
        {
            return best;
        }

        var opposite = new OppositeSides(search);
        var others = opposite.Of(best);
        for (var changes = 0; changes < MostChanges && Better(best, others) is { } better; changes++)
        {
            best = better.Refined(search.Spans, search.KeepsSides);
            others = opposite.Of(best);
        }

        findings.AddRange(search.Rotations
            .Where(rotation => others.TryGetValue(rotation.Bend, out var other) && !OppositeSides.FitsClearlyBetter(best, other))
            .Select(rotation => Open(rotation.Size, best, others[rotation.Bend], at)));
        findings.AddRange(Contradicted(search, best));
        return best;
    }

    /// <summary>
    /// The seen sides that fit clearly better the other way; tried only where the distances miss by more than readings explain.
    /// </summary>
    private static IEnumerable<Finding> Contradicted(TapedSearch search, Placing best)
    {
        var spare = search.Spans.Length - Reconciliation.FreeIn(best.Points.Length).Length;
        if (best.Norm <= Math.Max(Tolerances.TapeSlip.Millimetres, Tolerances.TapeReading.Millimetres * Math.Sqrt(spare)))
        {
            yield break;
        }

        foreach (var rotation in search.Rotations)
        {
            if (rotation is { Known: SideKnown.Seen, Seen: { } seen }
                && search.WithOther(rotation).Best() is var other
                && OppositeSides.FitsClearlyBetter(other, best))
            {
                var (said, found) = seen.Side == Side.Left ? ("left", "right") : ("right", "left");
                yield return TapedRules.SideContradicted.Error(
                    seen.At,
                    $"bend {rotation.Bend} is said to turn {said}, but with the other sides given the distances over several bends fit "
                        + $"clearly better with {found} (off by {Off(other)} instead of {Off(best)}, root of the sum of squares): look "
                        + $"again at bend {rotation.Bend} and at the others with a side, or measure the distances over them again");
            }
        }
    }

    private static Placing? Better(Placing best, Dictionary<int, Placing> others) =>
        others.Values.Where(other => best.Norm - other.Norm > Tolerances.SamePoint.Millimetres).MinBy(other => other.Misfit);

    private static Finding Open(TapedRotation rotation, Placing best, Placing other, SourcePosition at)
    {
        if (!rotation.MayBeFlat)
        {
            return TapedSides.Missing(
                rotation.Bend,
                at,
                $"the distances do not tell which way bend {{0}} turns (left or right, they miss by {Off(best)} or {Off(other)}, root of "
                    + "the sum of squares)");
        }

        var (side, otherSide) = CornerChain.SideOf(best.Points, rotation.Bend) < 0 ? ("left", "right") : ("right", "left");
        return TapedRules.TakenAsFlat.Note(
            rotation.Over.At,
            $"bend {rotation.Bend} lies so nearly in one plane with bend {rotation.Bend - 1} that the tape can hardly tell its side: "
                + $"{side} is taken, which fits a little better; if that is wrong, say `side: {{{rotation.Bend}: {otherSide}}}`");
    }

    private static string Off(Placing placing) => FindingFigures.Mm(Length.FromMillimetres(placing.Norm));
}
