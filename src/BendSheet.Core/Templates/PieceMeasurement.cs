using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>What is measured on a tube that has been bent.</summary>
public enum PieceKind
{
    /// <summary>The straight-line distance of two places: end faces and the backs of bends.</summary>
    Distance,

    /// <summary>How far a place lies ahead of A along A's straight.</summary>
    Ahead,

    /// <summary>How far a place lies off the line through A's straight.</summary>
    Aside,

    /// <summary>What a bend turned, by protractor.</summary>
    Bend,

    /// <summary>How a bend's plane is rolled against that of the bend before it, by protractor.</summary>
    Roll,
}

/// <summary>A quantity that can be measured on a bent tube.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">Of a distance the first place: 0 is the face of A, then the backs of the bends by their numbers; otherwise 0.</param>
/// <param name="To">The other place, or the only one; one more than there are bends is the face of B. Of an angle the bend's
/// number.</param>
public readonly record struct PieceQuantity(PieceKind Kind, int From, int To)
{
    /// <summary>It is an angle, in radians.</summary>
    public bool IsAngle => Kind is PieceKind.Bend or PieceKind.Roll;

    /// <summary>As it is typed: <c>A-3</c>, <c>B ahead</c>, <c>roll 3</c>.</summary>
    /// <param name="bends">Of the line, to tell which place is end B.</param>
    public string Name(int bends) => Kind switch
    {
        PieceKind.Ahead => $"{Place(To, bends)} ahead",
        PieceKind.Aside => $"{Place(To, bends)} aside",
        PieceKind.Bend => FormattableString.Invariant($"bend {To}"),
        PieceKind.Roll => FormattableString.Invariant($"roll {To}"),
        _ => $"{Place(From, bends)}-{Place(To, bends)}",
    };

    /// <summary>As it is said: <c>A to 3</c>, <c>roll 3</c>.</summary>
    /// <param name="bends">Of the line.</param>
    public string InWords(int bends) => Kind == PieceKind.Distance ? $"{Place(From, bends)} to {Place(To, bends)}" : Name(bends);

    private static string Place(int place, int bends) =>
        place == 0 ? "A" : place == bends + 1 ? "B" : FormattableString.Invariant($"{place}");
}

/// <summary>Such a quantity, measured.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">As it was read, in millimetres or radians.</param>
/// <param name="At">Where it was typed.</param>
public sealed record PieceMeasurement(PieceQuantity Quantity, double Value, SourcePosition At)
{
    /// <summary>One standard deviation in the unit of the value, where it is not the tape's or the protractor's.</summary>
    public double? Within { get; init; }
}

/// <summary>What was seen when a piece was offered up: A screwed in, the piece rolled so that B comes nearest to its port.</summary>
/// <param name="Ahead">How much further ahead than B the port lies; below zero where it lies less far.</param>
/// <param name="Aside">The same aside of A's straight.</param>
/// <param name="At">Where it was typed.</param>
public sealed record TrialFit(Length Ahead, Length Aside, SourcePosition At);
