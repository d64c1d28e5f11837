using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using MathNet.Numerics.Distributions;

namespace BendSheet.Core.Bench;

/// <summary>
/// Where a tool's own line really stands: how far the pen mark under it was from the start, or the middle, of the bend. It is the
/// tool's, whatever the tube.
/// </summary>
/// <param name="Offset">From the start or the middle of the bend to the mark, positive towards the swept side; what marks are made
/// with.</param>
/// <param name="IsTyped">Somebody typed it, which counts more than test pieces.</param>
/// <param name="Pieces">The test pieces with a mark, in the order of the file, each with what it shows.</param>
public sealed record ToolLine(Length Offset, bool IsTyped, ImmutableArray<(BenderTest Test, Length Offset)> Pieces)
{
    /// <summary>What a ruler is read to.</summary>
    private const double ReadingMm = 0.5;

    /// <summary>The line of a tool.</summary>
    public static ToolLine Of(Bender bender)
    {
        ImmutableArray<(BenderTest Test, Length Offset)> pieces = bender.Tests.IsEmpty
            ? []
            : [.. bender.Tests.Where(test => test.Piece?.Mark is not null)
                .Select(test => (test, OffsetOf(test.Piece!, test.Got, bender.Radius, bender.Mark)))];
        return new(bender.Offset ?? MeanOf(pieces) ?? Length.Zero, bender.Offset is not null, pieces);
    }

    /// <summary>It was learned from test pieces, and is used.</summary>
    public bool IsLearned => !IsTyped && !Pieces.IsEmpty;

    /// <summary>What the pieces show: the mean of them; null without any.</summary>
    public Length? Learned => MeanOf(Pieces);

    /// <summary>
    /// How far the learned figure may be off, either way, 19 times in 20: from three pieces on by their own scatter (Student's t of a
    /// mean); of one or two, which say nothing of it, what two readings of each leave open.
    /// </summary>
    public Length Either
    {
        get
        {
            var count = Pieces.Length;
            if (count < 3)
            {
                return Length.FromMillimetres(ReadingMm * Math.Sqrt(2.0 / Math.Max(1, count)));
            }

            var mean = Learned!.Value.Millimetres;
            var deviation = Math.Sqrt(Pieces.Sum(piece => Math.Pow(piece.Offset.Millimetres - mean, 2)) / (count - 1));
            var t = StudentT.InvCDF(0, 1, count - 1, (1 + Springback.Probability) / 2);
            return Length.FromMillimetres(t * deviation / Math.Sqrt(count));
        }
    }

    /// <summary>What one piece shows.</summary>
    /// <param name="piece">With a mark.</param>
    /// <param name="turn">The finished bend.</param>
    /// <param name="radius">The tool's.</param>
    /// <param name="mark">What the tool's line stands over.</param>
    public static Length OffsetOf(TestPiece piece, Angle turn, Length radius, MarkPlace mark) =>
        piece.Mark!.Value - PieceConversion.StartOfBend(piece, turn, radius)
            - (mark == MarkPlace.Middle ? 0.5 * PieceConversion.TubeInBend(piece, turn, radius) : Length.Zero);

    private static Length? MeanOf(ImmutableArray<(BenderTest Test, Length Offset)> pieces) => pieces.IsEmpty
        ? null
        : Length.FromMillimetres(pieces.Average(piece => piece.Offset.Millimetres));
}
