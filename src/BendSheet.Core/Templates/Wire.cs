using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>The wire of the template. Its bends are not the tube's bends.</summary>
/// <param name="Diameter">Where the file says it; needed for legs measured outside or inside.</param>
/// <param name="Radius">The wire's own bend radius to its centreline; needed for legs measured straight or along.</param>
public sealed record Wire(Length? Diameter, Length? Radius)
{
    /// <summary>Nothing is known of the wire: enough for legs measured corner to corner.</summary>
    public static Wire Unknown { get; } = new(null, null);
}
