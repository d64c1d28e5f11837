using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// Tells whether the distances over several bends really say the sides that were found, by trying the other ones.
/// </summary>
internal sealed class OppositeSides(TapedSearch search)
{
    /// <summary>Tries for one bend, and altogether; those first that miss by the least before they are refined.</summary>
    private const int TriesForBend = 2;
    private const int Tries = 8;

    /// <summary>To compare by a factor, a misfit need not be found to the last digit.</summary>
    private const double LeastGain = 1e-3;

    private readonly int[] _open =
    [
        .. search.Rotations.Where(rotation => rotation.Known == SideKnown.FromDistances).Select(rotation => rotation.Bend),
    ];

    /// <summary>
    /// For each bend whose side the distances have to tell, by its number, the best placing found with the other side there. None where
    /// that was not even worth refining, or slides back to the side it came from: then there is one shape only, and how far it is out of
    /// plane is a matter of reading the tape like every other figure.
    /// </summary>
    /// <remarks>
    /// The other side at one bend alone, and with all open ones up to each one before or after it the other way too: of a stretch in the
    /// middle often only its ends are tied to the rest.
    /// </remarks>
    public Dictionary<int, Placing> Of(Placing best)
    {
        var starts = _open
            .SelectMany(bend => StartsFor(bend, best))
            .OrderBy(start => start.Placing.Misfit)
            .Take(Tries);
        var found = new Dictionary<int, Placing>();
        foreach (var (bend, placing) in starts)
        {
            var refined = placing.Refined(search.Spans, search.KeepsSides, LeastGain);
            var stays = CornerChain.SideOf(refined.Points, bend) == CornerChain.SideOf(placing.Points, bend);
            if (stays && (!found.TryGetValue(bend, out var other) || refined.Misfit < other.Misfit))
            {
                found[bend] = refined;
            }
        }

        return found;
    }

    /// <summary>One placing fits the distances clearly better than another: the other misses them by more than twice as much, and by more
    /// than tape can explain; both as the root of the sum of squares.</summary>
    public static bool FitsClearlyBetter(Placing one, Placing other) =>
        other.Norm > Math.Max(2 * one.Norm, Tolerances.TapeSlip.Millimetres);

    private IEnumerable<(int Bend, Placing Placing)> StartsFor(int bend, Placing best)
    {
        var at = Array.IndexOf(_open, bend);
        return Stretch(best, _open.Skip(at)).Concat(Stretch(best, _open.Take(at + 1).Reverse()).Skip(1))
            .OrderBy(placing => placing.Misfit)
            .Take(TriesForBend)
            .Select(placing => (bend, placing));
    }

    private IEnumerable<Placing> Stretch(Placing best, IEnumerable<int> bends)
    {
        var points = best.Points.ToArray();
        foreach (var bend in bends)
        {
            CornerChain.Flip(points, bend);
            yield return new(points.ToArray(), Reconciliation.Misfit(points, search.Spans));
        }
    }
}
