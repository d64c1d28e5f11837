using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>A bend that was made on a tool to learn something of it: how far it came back, how much tube it took up, or both.</summary>
/// <param name="Got">The finished bend, above zero.</param>
/// <param name="At">Where it was typed.</param>
public sealed record BenderTest(Angle Got, SourcePosition At)
{
    /// <summary>What the tool was pulled to, not less than what came of it; null where nobody looked.</summary>
    public Angle? Pull { get; init; }

    /// <summary>The tube before and after; null where it was not measured.</summary>
    public TestPiece? Piece { get; init; }

    /// <summary>The tube it was made of; null where it counts for every tube.</summary>
    public Tube? Tube { get; init; }

    /// <summary>Whether it says something about this tube: one that names no tube does for every tube.</summary>
    /// <param name="tube">Null asks for what holds for every tube.</param>
    public bool CountsFor(Tube? tube) => Tube is null || Tube == tube;
}

/// <summary>A piece of tube with one bend in it, measured before and after. Both its ends are free.</summary>
/// <param name="Length">Straight tube before.</param>
/// <param name="FirstLeg">One leg after, as the ruler read it: that of the held side, where a mark was made.</param>
/// <param name="SecondLeg">The other one.</param>
/// <param name="Habit">What the ruler touched; for a bend of 180° or more only <see cref="MeasuredTo.Straight"/>.</param>
/// <param name="OutsideDiameter">Of the tube; needed for legs measured outside or inside.</param>
public sealed record TestPiece(Length Length, Length FirstLeg, Length SecondLeg, MeasuredTo Habit, Length? OutsideDiameter)
{
    /// <summary>
    /// From the end of the first leg, whose side was held, to the pen mark that the tool's line stood over; null where there was none.
    /// </summary>
    public Length? Mark { get; init; }
}
