using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>A straight-line distance between two corners, read off a tape.</summary>
/// <param name="From">A corner's number: end A is 0, then the corners from A, end B is the last.</param>
/// <param name="To">The other corner's number; smaller or larger than the first, both mean the same distance.</param>
/// <param name="Distance">As measured, centreline corner to centreline corner.</param>
/// <param name="At">Where it was typed.</param>
public sealed record TapedDistance(int From, int To, Length Distance, SourcePosition At)
{
    /// <summary>As it is written in a file: <c>0-2</c>, the lower number first.</summary>
    public string Name => NameOf(From, To);

    /// <summary>One standard deviation, where it is not the tape's.</summary>
    public Length? Within { get; init; }

    /// <summary>The wire, of which all is known, where the tape was held to the backs of its bends; null where it was to corners.</summary>
    public Wire? Back { get; init; }

    internal static string NameOf(int from, int to) => FormattableString.Invariant($"{Math.Min(from, to)}-{Math.Max(from, to)}");
}
