namespace BendSheet.Core.Tests.Stock;

/// <summary>Looks at every way to hand a few pieces out to rolls: an oracle for the search.</summary>
internal static class EveryCutting
{
    /// <summary>Fewest new rolls, and then the longest piece left on any roll.</summary>
    public static (int Bought, int Left) Best(IReadOnlyList<int> pieces, IReadOnlyList<int> there, int bought, int loss)
    {
        for (var count = 0; ; count++)
        {
            int[] rolls = [.. there, .. Enumerable.Repeat(bought, count)];
            var best = LongestLeft(pieces, 0, rolls, [.. rolls.Select(_ => 0)], loss);
            if (best >= 0)
            {
                return (count, best);
            }
        }
    }

    /// <summary>-1 where the pieces do not go in.</summary>
    private static int LongestLeft(IReadOnlyList<int> pieces, int piece, int[] rolls, int[] used, int loss)
    {
        if (piece == pieces.Count)
        {
            return rolls.Zip(used, (roll, taken) => Math.Max(0, roll - taken)).Max();
        }

        var best = -1;
        for (var roll = 0; roll < rolls.Length; roll++)
        {
            if (used[roll] + pieces[piece] <= rolls[roll])
            {
                used[roll] += pieces[piece] + loss;
                best = Math.Max(best, LongestLeft(pieces, piece + 1, rolls, used, loss));
                used[roll] -= pieces[piece] + loss;
            }
        }

        return best;
    }
}
