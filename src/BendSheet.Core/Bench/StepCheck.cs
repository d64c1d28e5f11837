using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>
/// The one distance on the part-bent tube that shows best whether the bend just made went right: between the ends and the backs of bends
/// that exist then.
/// </summary>
/// <param name="From">0 is end A, then the bends by their numbers.</param>
/// <param name="To">One more than there are bends is end B.</param>
/// <param name="Distance">As it should be.</param>
/// <remarks>
/// Turn, roll and mark are each put out by what hands scatter; a slip that moves a distance by p standard deviations of the tape is worth
/// p²/(1 + p²): a distance that shows all of them goes before one that shows a single one too well.
/// </remarks>
public sealed record StepCheck(int From, int To, Length Distance)
{
    /// <summary>A distance worth less than this proves nothing.</summary>
    private const double LeastWorth = 0.3;

    /// <summary>Further bends on either side say little that the nearer ones do not.</summary>
    private const int Nearest = 6;

    /// <summary>Distances worth the same within this: the shorter is the easier to tape.</summary>
    private const double SameWorth = 0.1;

    /// <summary>The check after a bend is made.</summary>
    /// <param name="line">With a plan.</param>
    /// <param name="bends">Those just made, from 0; several where a coil is wound in one go.</param>
    /// <param name="isMade">Which bends are made then.</param>
    /// <returns>Null where no distance shows it.</returns>
    public static StepCheck? Of(SolvedLine line, (int First, int Last) bends, Func<int, bool> isMade)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(isMade);
        var now = PartBent.Of(line, bends, isMade).Touched;
        var scatter = line.Plan!.Bends[bends.First].Bender.Scatter ?? HandScatter.CommonPractice;
        var slips = new BendSlip[]
        {
            new(scatter.Bend, default, default), new(default, scatter.Roll, default), new(default, default, scatter.Mark),
        };
        var slipped = Array.ConvertAll(slips, slip => PartBent.Of(line, bends, isMade, slip).Touched);
        var tape = PieceWeighing.Tape(line.Template);
        var places = Places(now.Length, bends, place => now[place] is not null).ToList();
        var checks = places
            .SelectMany(from => places.Where(to => to > from), (from, to) => (From: from, To: to, Mm: Distance(now, from, to)))
            .Select(one => (
                one.From, one.To, one.Mm, Worth: slipped.Sum(touched => Worth((Distance(touched, one.From, one.To) - one.Mm) / tape))))
            .ToList();
        var most = checks.Max(one => one.Worth);
        var best = checks.Where(one => one.Worth >= most - SameWorth).MinBy(one => one.Mm);
        return most < LeastWorth ? null : new(best.From, best.To, Length.FromMillimetres(best.Mm));

        static double Distance(IReadOnlyList<Geometry.Vector3D?> touched, int from, int to) =>
            touched[from]!.Value.DistanceTo(touched[to]!.Value);
    }

    private static double Worth(double part) => part * part / (1 + (part * part));

    /// <summary>Both ends, the bends just made, and the nearest ones on either side.</summary>
    private static IEnumerable<int> Places(int count, (int First, int Last) bends, Func<int, bool> isThere)
    {
        var before = Enumerable.Range(1, bends.First).Reverse().Where(isThere).Take(Nearest).Reverse();
        var own = Enumerable.Range(bends.First + 1, bends.Last - bends.First + 1).Where(isThere);
        var after = Enumerable.Range(bends.Last + 2, count - bends.Last - 3).Where(isThere).Take(Nearest);
        return [0, .. before, .. own, .. after, count - 1];
    }
}
