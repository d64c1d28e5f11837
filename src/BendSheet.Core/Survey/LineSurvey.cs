using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A measurement beside what the adjustment made of it. In millimetres or radians.</summary>
/// <param name="Name">As in the file: <c>leg 2</c>, <c>B ahead</c>.</param>
/// <param name="Measured">As it was read.</param>
/// <param name="Within">One standard deviation.</param>
/// <param name="Adjusted">As all measurements together have it.</param>
/// <param name="Redundancy">How much of it the others check, from 0 to 1.</param>
/// <param name="IsAngle">It is an angle, in radians.</param>
/// <param name="At">Where it was typed.</param>
public sealed record SurveyedMeasurement(
    string Name, double Measured, double Within, double Adjusted, double Redundancy, bool IsAngle, SourcePosition At)
{
    /// <summary>It is a rotation, which goes one way or the other.</summary>
    public bool IsRotation { get; init; }

    /// <summary>Below this nothing checks a measurement, and its residual is only rounding.</summary>
    private const double LeastRedundancy = 1e-9;

    /// <summary>
    /// The residual, measured minus adjusted, in its own standard deviations; null where nothing checks it. Beyond ±3.29 in one honest
    /// measurement of a thousand.
    /// </summary>
    public double? Standardised => Redundancy > LeastRedundancy ? (Measured - Adjusted) / (Within * Math.Sqrt(Redundancy)) : null;
}

/// <summary>What a line's measurements come to: the line they agree on best, and how sure that is.</summary>
/// <param name="Line">Adjusted; as it was typed, to the last bit, where nothing is measured twice.</param>
/// <param name="Measurements">The route's figures, then what is measured beside it, in the order of the file.</param>
/// <param name="ChiSquare">The weighed sum of the squares of all residuals.</param>
/// <param name="ToSpare">Measurements beyond what the shape needs: degrees of freedom.</param>
public sealed record LineSurvey(
    LineTemplate Line, ImmutableArray<SurveyedMeasurement> Measurements, double ChiSquare, int ToSpare)
{
    /// <summary>How far B may be off its port once the line is rolled in A to suit: one standard deviation.</summary>
    public required Length Miss { get; init; }

    /// <summary>The part of the miss that lies along the last straight, which trim left on at B takes up.</summary>
    public required Length Along { get; init; }

    /// <summary>How far off square the last straight may enter: one standard deviation.</summary>
    public required Angle Askew { get; init; }

    /// <summary>The root of the trace of end B's covariance, in the frame of A's straight and the first bend.</summary>
    public required Length Spread { get; init; }

    /// <summary>What to measure next, until the line fits as well as wanted; none where it does.</summary>
    public ImmutableArray<NextMeasurement> Next { get; init; } = [];

    /// <summary>The measurements do not agree: one or more of them must be wrong, and the line is not to be believed.</summary>
    public bool IsSuspect { get; internal init; }

    /// <summary>What was probably misread, the likeliest first; none where nothing is suspected, or no single slip explains it.</summary>
    public ImmutableArray<Slip> Slips { get; internal init; } = [];

    /// <summary>Every likely slip was tried; otherwise there may be one that explains it and is not named.</summary>
    public bool AllSlipsTried { get; internal init; } = true;

    /// <summary>The measurement that would tell the slips apart; null where there is one or none.</summary>
    public string? TellsSlipsApart { get; internal init; }

    /// <summary>Nobody said how well it was measured.</summary>
    public bool IsCommonPractice { get; internal init; }

    /// <summary>It may be less sure: part of the shape is too flat for its distances to say how sure it is.</summary>
    public bool IsAtLeast { get; internal init; }

    /// <summary>
    /// A line of more figures, three to a bend, is not adjusted: work and memory grow with the third power, and no line has so many.
    /// </summary>
    public const int MostFigures = 180;

    /// <summary>B is as sure as wanted.</summary>
    public bool FitsAs(WantedFit wanted) => Miss <= wanted.Miss && Askew <= wanted.Askew;

    /// <summary>Adjusts a line and says how sure it is. First order: JCGM 100:2008, 5.1 and JCGM 102:2011, 6.2.</summary>
    /// <returns>Null where the line has no bend, no shape, nothing that was measured, or more than can be adjusted.</returns>
    public static LineSurvey? Of(LineTemplate template) => Surveying.Of(template)?.Survey(SlipSearch.StepsOfFile);
}
