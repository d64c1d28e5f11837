using BendSheet.Core.Workshop;

namespace BendSheet.Core.Fittings;

/// <summary>What a port, or the end of a hose, is. What nobody has said is null, and is not compared with anything.</summary>
/// <param name="Thread">The nut's or the screw's.</param>
/// <param name="Seat">What seals it.</param>
/// <param name="Source">What gives the thread, where the port was named by a standard and its thread not typed.</param>
public sealed record PortSpec(ScrewThread? Thread, Seat? Seat, PublishedSource? Source)
{
    /// <summary>Nobody has said what it is.</summary>
    public static PortSpec Unknown { get; } = new(null, null, null);

    /// <summary>A bleed screw's port.</summary>
    public static PortSpec Bleed { get; } = new(null, Fittings.Seat.Bleed, null);

    /// <summary>As it is typed: <c>3/8-24 flare 37</c>; empty where nothing is known.</summary>
    public string InWords => string.Join(' ', new[] { Thread?.InWords, Seat?.Word() }.OfType<string>());
}
