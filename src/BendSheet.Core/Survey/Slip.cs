using BendSheet.Core.Findings;

namespace BendSheet.Core.Survey;

/// <summary>What a tired person misreads or mistypes.</summary>
public enum SlipKind
{
    /// <summary>A rotation the other way.</summary>
    Sense,

    /// <summary>The angle between the legs for the bend, or the other way round.</summary>
    Included,

    /// <summary>The ruler's other face: outside for inside.</summary>
    Face,

    /// <summary>Two digits exchanged.</summary>
    Digits,

    /// <summary>A centimetre, an inch or a foot too many or too few.</summary>
    Misread,

    /// <summary>No figure that is easily mistaken for this one makes everything agree, but everything agrees without it.</summary>
    Other,
}

/// <summary>A measurement that was probably misread. In millimetres or radians.</summary>
/// <param name="Name">Of the measurement.</param>
/// <param name="Kind">How it was probably misread.</param>
/// <param name="Measured">As it was typed.</param>
/// <param name="Instead">What it probably should be: what was meant, or what all the others say.</param>
/// <param name="IsAngle">It is an angle, in radians.</param>
/// <param name="AgreesTo">The root mean square of what all measurements beside the route then miss, in millimetres.</param>
/// <param name="At">Where it was typed.</param>
public sealed record Slip(
    string Name, SlipKind Kind, double Measured, double Instead, bool IsAngle, double AgreesTo, SourcePosition At)
{
    /// <summary>It is a rotation, which goes one way or the other.</summary>
    public bool IsRotation { get; init; }
}
