using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>Which tubes are one in the shop, whatever the file calls them: the same size, wall and material.</summary>
public static class TubeKinds
{
    /// <summary>Whether lines of one can be cut from a roll of the other.</summary>
    public static bool AreOne(Tube one, Tube other) =>
        one.IsOfSize(other.OutsideDiameter) && SameWall(one.Wall, other.Wall) && SameMaterial(one.Material, other.Material);

    private static bool SameWall(Length? one, Length? other) => one is { } wall && other is { } second
        ? !wall.FallsShortOf(second - Tolerances.SameWall) && !second.FallsShortOf(wall - Tolerances.SameWall)
        : one is null && other is null;

    /// <summary>By the word, or by what two different words are known to mean.</summary>
    private static bool SameMaterial(string? one, string? other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase)
        || (TubeMaterials.Recognize(one) is { } known && known == TubeMaterials.Recognize(other));
}
