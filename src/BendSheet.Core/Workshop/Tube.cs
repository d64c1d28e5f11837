using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>The tube that gets bent.</summary>
/// <param name="Name">What the file calls it; empty for the only one of a short file.</param>
/// <param name="OutsideDiameter">Above zero and above twice the wall.</param>
/// <param name="Wall">Wall thickness, where it is known.</param>
/// <param name="Material">In the person's own words.</param>
/// <param name="SmallestRadius">The smallest bend radius, to the centreline, that this tube stands, where the file says one.</param>
public sealed record Tube(string Name, Length OutsideDiameter, Length? Wall, string? Material, Length? SmallestRadius)
{
    /// <summary>Where the wall was typed, if it was.</summary>
    public SourcePosition WallAt { get; init; }

    /// <summary>Where the material was typed, if it was.</summary>
    public SourcePosition MaterialAt { get; init; }

    /// <summary>The hole, where the wall is known.</summary>
    public Length? InsideDiameter => Wall is { } wall ? OutsideDiameter - (2 * wall) : null;

    /// <summary>Whether a builder would call it tube of that size: 4.75 mm and 3/16 in are one.</summary>
    public bool IsOfSize(Length size) =>
        !OutsideDiameter.FallsShortOf(size - Tolerances.SameTubeSize) && !size.FallsShortOf(OutsideDiameter - Tolerances.SameTubeSize);
}
