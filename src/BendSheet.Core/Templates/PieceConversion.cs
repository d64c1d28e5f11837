using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// From what the ruler read on a test piece to what its bend took up and gained. The piece is its own template: the wire of
/// <see cref="LegConversion"/> is the tube itself, one end of each leg is free.
/// </summary>
public static class PieceConversion
{
    /// <summary>
    /// Tube that the bend took up: what was there before, less the flat parts beside a bend of the tool's radius. By the radius alone it
    /// is R·bend.
    /// </summary>
    /// <param name="piece">For a bend of 180° or more its legs are flat parts.</param>
    /// <param name="turn">The finished bend.</param>
    /// <param name="radius">The tool's, to the tube's centreline.</param>
    public static Length TubeInBend(TestPiece piece, Angle turn, Length radius)
    {
        var flat = piece.Habit == MeasuredTo.Straight
            ? piece.FirstLeg + piece.SecondLeg
            : CornerToCorner(piece, turn, radius) - (2 * Math.Tan(turn.Radians / 2) * radius);
        return piece.Length - flat;
    }

    /// <summary>Straight tube from the end of the first leg to the start of a bend of the tool's radius.</summary>
    public static Length StartOfBend(TestPiece piece, Angle turn, Length radius) => piece.Habit == MeasuredTo.Straight
        ? piece.FirstLeg
        : LegConversion.CornerToCorner(piece.FirstLeg, piece.Habit, new(piece.OutsideDiameter, radius), null, turn)
            - (Math.Tan(turn.Radians / 2) * radius);

    /// <summary>What the bend gained against the way over its corner: both legs to the corner, less the tube that was there.</summary>
    /// <param name="piece">With the diameter that its habit needs.</param>
    /// <param name="turn">The finished bend, below 180°.</param>
    /// <param name="radius">The tool's, to the tube's centreline.</param>
    public static Length Gain(TestPiece piece, Angle turn, Length radius) => CornerToCorner(piece, turn, radius) - piece.Length;

    private static Length CornerToCorner(TestPiece piece, Angle turn, Length radius)
    {
        var tube = new Wire(piece.OutsideDiameter, radius);
        return LegConversion.CornerToCorner(piece.FirstLeg, piece.Habit, tube, null, turn)
            + LegConversion.CornerToCorner(piece.SecondLeg, piece.Habit, tube, turn, null);
    }
}
