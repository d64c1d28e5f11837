using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing;

/// <summary>One end of a hose.</summary>
/// <param name="At">What it connects to, in the person's own words.</param>
/// <param name="Port">The port that these words lead to; null where they are only words.</param>
/// <param name="Spec">What the hose's own end is, as far as it is known.</param>
public sealed record HoseEnd(string? At, PortPlace? Port, PortSpec Spec);

/// <summary>What bends while the car moves.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="Length">Where the file says it.</param>
/// <param name="Have">How many of it are on hand.</param>
/// <param name="Position">Where the name was typed.</param>
public sealed record Hose(string Name, HoseEnd From, HoseEnd To, Length? Length, int Have, SourcePosition Position)
{
    /// <summary>The radius of its tightest bend, where the file says how it lies.</summary>
    public Length? BentTo { get; init; }

    /// <summary>Where that was typed.</summary>
    public SourcePosition BentToAt { get; init; }

    /// <summary>From end to end in each position of wheel and steering, where the file says it.</summary>
    public HoseSpans? Spans { get; init; }
}

/// <summary>A part that sits in another one, without a line between them: an adapter, a plug, a switch.</summary>
/// <param name="Own">Its own port.</param>
/// <param name="Into">The port it sits in.</param>
public sealed record ScrewedIn(PortPlace Own, PortPlace Into);

/// <summary>What a file says of the car's parts; empty where it has none.</summary>
/// <param name="Parts">In the order of the file.</param>
/// <param name="Hoses">In the order of the file.</param>
/// <param name="ScrewedIns">In the order of the file.</param>
/// <param name="PedalSwitch">The brake lights are switched at the pedal.</param>
public sealed record CarParts(
    ImmutableArray<Part> Parts, ImmutableArray<Hose> Hoses, ImmutableArray<ScrewedIn> ScrewedIns, bool PedalSwitch)
{
    /// <summary>A file of lines only.</summary>
    public static CarParts None { get; } = new([], [], [], PedalSwitch: false);
}
