using BendSheet.Core.Findings;

namespace BendSheet.Core.Survey;

/// <summary>
/// Which way a bend leaves the plane of the bend before it, which no tape can tell. Look along the leg between them from A towards B,
/// with the side that the bend before turned to held upwards.
/// </summary>
public enum Side
{
    /// <summary>The bend turns to the left: its rotation is negative, counter-clockwise.</summary>
    Left,

    /// <summary>The bend turns to the right: its rotation is positive, clockwise.</summary>
    Right,
}

/// <summary>What was seen at a bend.</summary>
/// <param name="Bend">The bend's number, which is its corner's; never 1, which has no bend before it.</param>
/// <param name="Side">Where it turns.</param>
/// <param name="At">Where it was typed.</param>
public sealed record TapedSide(int Bend, Side Side, SourcePosition At);
