using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Fittings;

/// <summary>How a tube end is formed.</summary>
public enum Flare
{
    /// <summary>Cut square and left plain.</summary>
    None,

    /// <summary>Single flare, 37° each side.</summary>
    Single37,

    /// <summary>Single flare, 45° each side.</summary>
    Single45,

    /// <summary>Double flare, 45° each side.</summary>
    Double45,

    /// <summary>Bubble flare.</summary>
    Bubble,
}

/// <summary>How flares are written, in files and on sheets.</summary>
public static class Flares
{
    /// <summary>Every flare with the words a file has for it.</summary>
    public static IReadOnlyList<(Flare Flare, string Words)> All { get; } =
    [
        (Flare.Single37, "single 37"),
        (Flare.Single45, "single 45"),
        (Flare.Double45, "double 45"),
        (Flare.Bubble, "bubble"),
        (Flare.None, "none"),
    ];

    /// <summary>The flare in a sentence: <c>37° single flare</c>.</summary>
    public static string InWords(this Flare flare) => flare switch
    {
        Flare.Single37 => "37° single flare",
        Flare.Single45 => "45° single flare",
        Flare.Double45 => "45° double flare",
        Flare.Bubble => "bubble flare",
        _ => "plain end",
    };
}

/// <summary>A piece of hardware that is slid on to the tube before the end is flared.</summary>
/// <param name="Name">The person's own word: nut, sleeve.</param>
/// <param name="Length">How much of the tube it covers.</param>
public sealed record EndHardware(string Name, Length Length);

/// <summary>What is put on a tube end.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Flare">How the end is formed.</param>
/// <param name="FlareAllowance">Tube used up by flaring, beyond the measured end.</param>
/// <param name="Hardware">In the order they go on.</param>
/// <param name="Straight">Straight tube needed from the finished end: flaring bar, hardware slid back.</param>
public sealed record Fitting(string Name, Flare Flare, Length FlareAllowance, ImmutableArray<EndHardware> Hardware, Length Straight)
{
    /// <summary>Where the flare was typed.</summary>
    public SourcePosition FlareAt { get; init; }

    /// <summary>How deep the holes of the flaring bar are countersunk, where the file says it.</summary>
    public Length? Countersink { get; init; }

    /// <summary>The nut's thread, where the file says it.</summary>
    public ScrewThread? Thread { get; init; }

    /// <summary>All that is slid on, end to end.</summary>
    public Length HardwareLength => Hardware.Aggregate(Length.Zero, (sum, piece) => sum + piece.Length);

    /// <summary>The straight the end must have: what the file asks for, and never less than the hardware that has to sit on it.</summary>
    public Length StraightNeeded => Straight > HardwareLength ? Straight : HardwareLength;
}

/// <summary>One end of a line.</summary>
/// <param name="At">What it connects to, in the person's own words.</param>
/// <param name="Fitting">What is put on it, where the file says so.</param>
/// <param name="Trim">Tube left on purpose, to be cut on the car: end B only.</param>
public sealed record LineEnd(string? At, Fitting? Fitting, Length Trim)
{
    /// <summary>An end that the file says nothing about.</summary>
    public static LineEnd Unknown { get; } = new(null, null, Length.Zero);

    /// <summary>The port that <see cref="At"/> leads to; null where it is only words.</summary>
    public PortPlace? Port { get; init; }

    /// <summary>Tube used up by this end's flare.</summary>
    public Length FlareAllowance => Fitting?.FlareAllowance ?? Length.Zero;

    /// <summary>Whether anything is formed on this end.</summary>
    public bool IsFlared => Fitting is { Flare: not Flare.None };
}
