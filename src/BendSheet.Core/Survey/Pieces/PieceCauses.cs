using System.Collections.Immutable;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>A mistake with what the piece would be if it was made.</summary>
/// <param name="Cause">The mistake; null where hands only scatter.</param>
/// <param name="Estimate">Of the piece; a reading that was misread does not count in it.</param>
/// <param name="Misfit">The less, the better it explains what was measured.</param>
internal sealed record Explained(PieceCause? Cause, PieceEstimate Estimate, double Misfit);

/// <summary>Looks for the one mistake that explains best what was measured on a piece.</summary>
internal static class PieceCauses
{
    /// <summary>Twice the logarithm of how much likelier one explanation must be than another to stand alone.</summary>
    public const double TellsApart = 6;

    /// <summary>So many mistakes are worked out in full, those that promise most.</summary>
    private const int MostTried = 8;

    /// <summary>The explanations, the best first; one of them is that hands scatter and nothing else is wrong.</summary>
    public static ImmutableArray<Explained> Of(BentPiece piece, IReadOnlyList<WeighedPiece> measured)
    {
        if (measured.Count == 0)
        {
            return [new(null, PieceEstimate.Unmeasured(piece), 0)];
        }

        var scatter = PieceEstimate.Of(piece, measured);
        return
        [
            .. PieceCause.Among(piece, measured)
                .Select(cause => (Cause: cause, Screened: scatter.Screen(piece, measured, cause)))
                .OrderBy(one => one.Screened.Misfit)
                .Take(MostTried)
                .Select(one => Worked(piece, measured, one.Cause, one.Screened.Size))
                .Prepend(new(null, scatter, scatter.Misfit))
                .OrderBy(one => one.Misfit),
        ];
    }

    private static Explained Worked(BentPiece piece, IReadOnlyList<WeighedPiece> measured, PieceCause cause, double size)
    {
        var estimate = PieceEstimate.Of(piece, measured, cause, size);
        if (cause.Kind != PieceCauseKind.Misread)
        {
            return new(cause, estimate, estimate.Misfit);
        }

        WeighedPiece[] others = [.. measured.Where((_, i) => i != cause.Bend)];
        return new(cause, others.Length == 0 ? PieceEstimate.Unmeasured(piece) : PieceEstimate.Of(piece, others), estimate.Misfit);
    }
}
