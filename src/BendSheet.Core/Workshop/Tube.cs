using BendSheet.Core.Units;

namespace BendSheet.Core.Workshop;

/// <summary>The tube that gets bent.</summary>
/// <param name="Name">What the file calls it; empty for the only one of a short file.</param>
/// <param name="OutsideDiameter">Above zero and above twice the wall.</param>
/// <param name="Wall">Wall thickness, where it is known.</param>
/// <param name="Material">In the person's own words.</param>
/// <param name="SmallestRadius">The smallest bend radius, to the centreline, that this tube stands, where the file says one.</param>
public sealed record Tube(string Name, Length OutsideDiameter, Length? Wall, string? Material, Length? SmallestRadius);
