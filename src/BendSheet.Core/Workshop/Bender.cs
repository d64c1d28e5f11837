using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>What a bender's own line stands over when the tube lies right in the tool.</summary>
public enum MarkPlace
{
    /// <summary>The start of the bend.</summary>
    Start,

    /// <summary>The middle of the bend, along the arc.</summary>
    Middle,
}

/// <summary>A hand bender. It bends every bend to one radius.</summary>
/// <param name="Name">What the file calls it; empty for the only one of a short file.</param>
/// <param name="Radius">Bend radius to the tube's centreline, above zero.</param>
/// <param name="RadiusAt">Where the radius was typed.</param>
public sealed record Bender(string Name, Length Radius, SourcePosition RadiusAt)
{
    /// <summary>What the tool's own line stands over.</summary>
    public MarkPlace Mark { get; init; } = MarkPlace.Start;

    /// <summary>
    /// From there to the pen mark, positive towards end B, as somebody typed it; null where nobody did. What is used, test pieces counted,
    /// is what its line says.
    /// </summary>
    public Length? Offset { get; init; }

    /// <summary>What stands beside that line on the tool, where the file says it: a tool may have several.</summary>
    public string? Line { get; init; }

    /// <summary>Straight tube that the tool needs on the held side.</summary>
    public Length Grip { get; init; } = Length.Zero;

    /// <summary>Straight tube that the tool needs on the side that is swept.</summary>
    public Length Follow { get; init; } = Length.Zero;

    /// <summary>The largest bend the tool makes, where the file says one.</summary>
    public Angle? LargestBend { get; init; }

    /// <summary>Clearance round the tool, from the middle of its former to the nearest thing that a swung tube would hit.</summary>
    public Length? ClearAround { get; init; }

    /// <summary>Clearance from the tube's centreline in the tool down to the bench.</summary>
    public Length? ClearBelow { get; init; }

    /// <summary>How far the tool itself reaches out from the middle of its former.</summary>
    public Length? Body { get; init; }

    /// <summary>
    /// Tube used up by an arc, as a part of the arc's centreline length, as somebody typed it; null where nobody did. What is used for
    /// a tube, test pieces counted, is what its calibration says.
    /// </summary>
    public double? ArcFactor { get; init; }

    /// <summary>How far off it comes out from what was aimed at, where the file says so.</summary>
    public HandScatter? Scatter { get; init; }

    /// <summary>Bends made to learn how far it has to be pulled and how much tube it takes up, in the order of the file.</summary>
    public ImmutableArray<BenderTest> Tests { get; init; } = [];
}
