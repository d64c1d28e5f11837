using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>How far off a tool and the hands on it come out from what was aimed at: one standard deviation each.</summary>
/// <param name="Mark">Of a bend along the tube.</param>
/// <param name="Bend">Of what a bend turns.</param>
/// <param name="Roll">Of how a bend's plane is rolled against the one before.</param>
public sealed record HandScatter(Length Mark, Angle Bend, Angle Roll)
{
    /// <summary>Where a file says nothing. Common practice, no source.</summary>
    public static HandScatter CommonPractice { get; } =
        new(Length.FromMillimetres(1), Angle.FromDegrees(1.5), Angle.FromDegrees(2));
}
