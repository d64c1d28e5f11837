using System.Collections.Immutable;
using BendSheet.Core.Findings;

namespace BendSheet.Core.Fittings;

/// <summary>A place of a part where something is screwed on.</summary>
/// <param name="Name">The person's own word, or the trade's.</param>
/// <param name="Spec">Thread and seat, as far as they are known.</param>
/// <param name="Circuit">The circuit that this port belongs to, where several go through the part.</param>
public sealed record Port(string Name, PortSpec Spec, string? Circuit)
{
    /// <summary>Where it lies on the car; null where nobody said.</summary>
    public PortLie? Lie { get; init; }

    /// <summary>It wants no line: a bleed screw closes it.</summary>
    public bool IsBleeder => Spec.Seat == Seat.Bleed || string.Equals(Name, PartKinds.Bleeder, StringComparison.Ordinal);
}

/// <summary>A piece with ports: master cylinder, tee, caliper. Ports of one circuit, and ports without any, are joined inside it.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Kind">What it does.</param>
/// <param name="Ports">In the order of the file.</param>
/// <param name="Have">How many of it are on hand.</param>
/// <param name="At">Where the name was typed.</param>
public sealed record Part(string Name, PartKind Kind, ImmutableArray<Port> Ports, int Have, SourcePosition At)
{
    /// <summary>Of a wheel's part: it is fixed to the chassis, as inboard brakes are, and does not move with the wheel.</summary>
    public bool IsOnChassis { get; init; }
}

/// <summary>One port of one part, as something in the file leads to it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Port">Its port.</param>
/// <param name="Position">Where it was typed.</param>
public sealed record PortPlace(Part Part, Port Port, SourcePosition Position)
{
    /// <summary><c>tee.left</c>.</summary>
    public string InWords => $"{Part.Name}.{Port.Name}";
}
