using System.Collections.Immutable;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>What a single mistake at the bench did.</summary>
public enum PieceCauseKind
{
    /// <summary>A bend turned too far or too little.</summary>
    Bend,

    /// <summary>Everything from a bend on is rolled out of its plane.</summary>
    Roll,

    /// <summary>One bend alone is out of its plane, the next ones are not: the dial was misread once.</summary>
    Plane,

    /// <summary>A bend was made at the wrong place along the tube.</summary>
    Mark,

    /// <summary>The first straight is too long or too short.</summary>
    EndA,

    /// <summary>The last straight is too long or too short.</summary>
    EndB,

    /// <summary>One of the measurements on the piece was misread.</summary>
    Misread,
}

/// <summary>One mistake that may explain what was measured on a piece.</summary>
/// <param name="Kind">What.</param>
/// <param name="Bend">The number of the bend; of a misread measurement its place among them, from 0; 0 for an end.</param>
/// <param name="Way">How much of each error one unit of it makes; none for a misread measurement.</param>
/// <param name="Wide">One standard deviation of such a mistake, in millimetres or radians; of a misread measurement in its own deviations.
/// </param>
internal sealed record PieceCause(PieceCauseKind Kind, int Bend, ImmutableArray<(int Error, double Part)> Way, double Wide)
{
    /// <summary>A mistake is so many times what hands scatter.</summary>
    private const double Mistake = 6;

    /// <summary>A tape that was misread, in millimetres: by a division or by ten.</summary>
    private const double TapeMistake = 10;

    /// <summary>A protractor that was misread, in radians.</summary>
    private const double ProtractorMistake = 10 * Math.PI / 180;

    /// <summary>The errors of a piece with only this mistake.</summary>
    /// <param name="piece">With its errors.</param>
    /// <param name="size">In millimetres or radians.</param>
    public double[] Errors(BentPiece piece, double size)
    {
        var errors = new double[piece.Errors.Length];
        foreach (var (error, part) in Way)
        {
            errors[error] = size * part;
        }

        return errors;
    }

    /// <summary>Every mistake that a piece may have.</summary>
    public static IEnumerable<PieceCause> Among(BentPiece piece, IReadOnlyList<WeighedPiece> measured)
    {
        for (var i = 0; i < piece.Errors.Length; i++)
        {
            var error = piece.Errors[i];
            var wide = Mistake * error.Scatter;
            var kind = error.Kind switch
            {
                PieceErrorKind.Bend => PieceCauseKind.Bend,
                PieceErrorKind.Roll => PieceCauseKind.Roll,
                PieceErrorKind.Mark => PieceCauseKind.Mark,
                PieceErrorKind.EndA => PieceCauseKind.EndA,
                _ => PieceCauseKind.EndB,
            };
            yield return new(kind, error.Bend, [(i, 1)], wide);
            if (error.Kind == PieceErrorKind.Roll && piece.NextRoll(error.Bend) is { } next)
            {
                yield return new(PieceCauseKind.Plane, error.Bend, [(i, 1), (next, -1)], wide);
            }
        }

        for (var i = 0; i < measured.Count; i++)
        {
            var size = measured[i].Quantity.IsAngle ? ProtractorMistake : TapeMistake;
            yield return new(PieceCauseKind.Misread, i, [], size / measured[i].Deviation);
        }
    }
}
