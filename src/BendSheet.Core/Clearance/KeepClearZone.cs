using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Clearance;

/// <summary>A part of the car that lines keep away from: the exhaust, the column, a wheel at full lock.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Shape">From the corner that all places of the file count from.</param>
/// <param name="Clearance">The least air between it and the outside of a tube.</param>
/// <param name="Why">In the owner's words; null where nobody said.</param>
/// <param name="At">Where its name was typed.</param>
public sealed record KeepClearZone(string Name, Solid Shape, Length Clearance, string? Why, SourcePosition At)
{
    /// <summary>A file has no more.</summary>
    public const int Most = 1000;

    /// <summary>
    /// Where nobody said: common practice, no source. Heat and moving parts need more, and the owner knows how much.
    /// </summary>
    public static Length UsualClearance { get; } = Length.FromMillimetres(25);
}

/// <summary>What a file says of the room about its lines.</summary>
/// <param name="Zones">In the order of the file.</param>
/// <param name="Between">The least air between two tubes.</param>
public sealed record KeepClear(System.Collections.Immutable.ImmutableArray<KeepClearZone> Zones, Length Between)
{
    /// <summary>
    /// Air between two tubes that are not clipped together, so that neither rubs the other as the car shakes: common practice, no source.
    /// </summary>
    public static Length UsualBetween { get; } = Length.FromMillimetres(12);

    /// <summary>Nothing is said.</summary>
    public static KeepClear None { get; } = new([], UsualBetween);
}
