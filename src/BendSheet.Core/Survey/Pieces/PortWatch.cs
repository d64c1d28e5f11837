using System.Collections.Immutable;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// In which order bends are put right while a piece is offered up again and again, and which gap at the port tells when one is done: ahead
/// along A's straight or aside of it.
/// </summary>
/// <param name="Order">Places in the set, the first one done first.</param>
/// <param name="IsAside">For each in that order: the gap aside is looked at.</param>
/// <param name="Variance">How far off B comes to lie in the mean square, in variances of one reading.</param>
internal sealed record PortWatch(ImmutableArray<int> Order, ImmutableArray<bool> IsAside, double Variance)
{
    /// <summary>The best of all orders and gaps.</summary>
    /// <param name="moves">For each bend how far B moves ahead and aside, in millimetres for each radian; at most three.</param>
    /// <param name="least">A gap shows a bend that moves it by so much, in millimetres for each radian.</param>
    /// <returns>Null where a bend shows in neither gap.</returns>
    public static PortWatch? Of(ImmutableArray<double[]> moves, double least)
    {
        PortWatch? best = null;
        foreach (var order in Orders([], moves.Length))
        {
            for (var gaps = 0; gaps < 1 << order.Length; gaps++)
            {
                ImmutableArray<bool> isAside = [.. Enumerable.Range(0, order.Length).Select(k => (gaps & (1 << k)) != 0)];
                if (!order.Index().All(one => Math.Abs(moves[one.Item][isAside[one.Index] ? 1 : 0]) >= least))
                {
                    continue;
                }

                var variance = VarianceOf([.. order.Select(k => moves[k])], isAside);
                if (best is null || variance < best.Variance)
                {
                    best = new(order, isAside, variance);
                }
            }
        }

        return best;
    }

    /// <summary>
    /// Every bend is moved until its gap reads what is to be left, so what that gap was misread at first no longer counts; what the last
    /// readings were off by does, and the first misreading of a gap that nobody looked at.
    /// </summary>
    private static double VarianceOf(ImmutableArray<double[]> moves, ImmutableArray<bool> isAside)
    {
        var sum = 0.0;
        for (var reading = 0; reading < moves.Length + 2; reading++)
        {
            // Misread by one: the first two are the gaps as they were typed, each other one tells when a bend is done.
            double[] off = [reading == 0 ? 1 : 0, reading == 1 ? 1 : 0];
            for (var k = 0; k < moves.Length; k++)
            {
                var gap = isAside[k] ? 1 : 0;
                var by = (off[gap] - (reading == k + 2 ? 1 : 0)) / moves[k][gap];
                off[0] -= by * moves[k][0];
                off[1] -= by * moves[k][1];
            }

            sum += (off[0] * off[0]) + (off[1] * off[1]);
        }

        return sum;
    }

    private static IEnumerable<ImmutableArray<int>> Orders(ImmutableArray<int> begun, int count) => begun.Length == count
        ? [begun]
        : Enumerable.Range(0, count).Where(k => !begun.Contains(k)).SelectMany(k => Orders(begun.Add(k), count));
}
