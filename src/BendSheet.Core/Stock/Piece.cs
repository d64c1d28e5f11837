using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>What a piece of tube is for, in the order in which a roll is cut.</summary>
public enum PieceUse
{
    /// <summary>A flare is tried on it, before the lines, because what a flare uses up is measured on it.</summary>
    Practice,

    /// <summary>A bend is tried on it, before the lines, because what the tool does is measured on it.</summary>
    PracticeBend,

    /// <summary>Becomes a line.</summary>
    Line,

    /// <summary>
    /// May become a line that has no template yet: its length is a guess, so room is kept for it and nothing is cut.
    /// </summary>
    Rough,
}

/// <summary>A piece of tube that is to come off a roll whole.</summary>
/// <param name="Name">Of the line, or what else it is.</param>
/// <param name="Length">Above zero.</param>
/// <param name="Use">What for.</param>
/// <param name="At">Where it was typed, for findings.</param>
public sealed record Piece(string Name, Length Length, PieceUse Use, SourcePosition At)
{
    /// <summary>A flare or a bend is tried on it; it never becomes a line.</summary>
    public bool IsPractice => Use is PieceUse.Practice or PieceUse.PracticeBend;
}
