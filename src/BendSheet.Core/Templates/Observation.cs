using BendSheet.Core.Findings;

namespace BendSheet.Core.Templates;

/// <summary>What an observation is of.</summary>
public enum ObservationKind
{
    /// <summary>A leg, as the line was measured.</summary>
    Leg,

    /// <summary>What the tube turns, whether it was typed so or as the angle between the legs.</summary>
    Bend,

    /// <summary>How the bending plane is rolled.</summary>
    Rotation,

    /// <summary>From run to run of an offset.</summary>
    Offset,

    /// <summary>Along the run of an offset.</summary>
    Run,

    /// <summary>From run to top of a saddle.</summary>
    Saddle,

    /// <summary>Of a saddle, or of its flat top.</summary>
    Width,

    /// <summary>Part of the way to a corner on the car: forward.</summary>
    Forward,

    /// <summary>Part of the way to a corner on the car: left.</summary>
    Left,

    /// <summary>Part of the way to a corner on the car: up.</summary>
    Up,
}

/// <summary>
/// A figure as it was read off the template or the car: what everything else follows from, and what may be wrong. Two legs that hang on one
/// figure, as the slopes of a saddle or a template used twice, share its observation.
/// </summary>
/// <param name="kind">What it is of.</param>
/// <param name="value">In millimetres or radians.</param>
/// <param name="at">Where it was typed.</param>
public sealed class Observation(ObservationKind kind, double value, SourcePosition at) : Term
{
    /// <summary>What it is of.</summary>
    public ObservationKind Kind => kind;

    /// <summary>In millimetres or radians.</summary>
    public double Value => value;

    /// <summary>Where it was typed.</summary>
    public SourcePosition At => at;

    /// <summary>One standard deviation in millimetres or radians, above zero, where it is not the tolerance of its kind.</summary>
    public double? Within { get; init; }

    /// <summary>It is an angle, in radians.</summary>
    public bool IsAngle => kind is ObservationKind.Bend or ObservationKind.Rotation;

    /// <inheritdoc/>
    public override double ValueWith(Func<Observation, double> values) => values(this);

    /// <inheritdoc/>
    public override void SlopesWith(Func<Observation, double> values, double factor, Action<Observation, double> take) =>
        take(this, factor);
}
