using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>One bend in its turn.</summary>
/// <param name="Bend">From 0, counted from end A.</param>
/// <param name="Held">The end whose side lies in the tool's grip; the other side is swept.</param>
/// <param name="Swing">How far the swept side reaches from the former's axis while the bend is made, to the tube's centreline.</param>
public sealed record BendStep(int Bend, TubeEnd Held, Length Swing);

/// <summary>The order in which a line is made. The bends made so far need not be one stretch.</summary>
/// <param name="Steps">Every bend once, in the order they are made.</param>
/// <param name="FlareAFirst">End A gets its hardware and flare before the first bend; otherwise after the last one.</param>
/// <param name="FlareBFirst">The same for end B.</param>
public sealed record OrderOfWork(ImmutableArray<BendStep> Steps, bool FlareAFirst, bool FlareBFirst)
{
    /// <summary>The ends that are finished before the first bend.</summary>
    public IEnumerable<TubeEnd> FlaredFirst =>
        [.. FlareAFirst ? [TubeEnd.A] : Array.Empty<TubeEnd>(), .. FlareBFirst ? [TubeEnd.B] : Array.Empty<TubeEnd>()];
}
