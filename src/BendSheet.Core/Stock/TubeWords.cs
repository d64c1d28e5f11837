using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>A tube as it is asked for in a shop.</summary>
public static class TubeWords
{
    /// <summary><c>3/16 in × 0.028 in, copper-nickel</c>.</summary>
    public static string InWords(Tube tube, LengthNotation notation)
    {
        var size = notation.Size(tube.OutsideDiameter) + (tube.Wall is { } wall ? " × " + notation.Size(wall) : string.Empty);
        return tube.Material is { } material ? $"{size}, {material}" : size;
    }
}
