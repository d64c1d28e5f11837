using BendSheet.Core.Units;

namespace BendSheet.Sheets.FullSize;

/// <summary>What a tile may take of the paper.</summary>
/// <param name="Step">Joints lie at multiples of this, so that each can be measured.</param>
/// <param name="Longest">The longest tile that ends in a joint.</param>
/// <param name="LongestLast">The longest last tile.</param>
internal sealed record TileRoom(Length Step, Length Longest, Length LongestLast)
{
    /// <summary>More are no help to anybody: fifty metres of paper come from a slip in the unit.</summary>
    public const int MostTiles = 200;

    /// <summary>On paper of this width.</summary>
    /// <param name="notation">Of the sheet.</param>
    /// <param name="width">Of the type area.</param>
    public static TileRoom Of(LengthNotation notation, double width) => new(
        notation.Imperial ? Length.FromInches(0.5) : Length.FromMillimetres(10),
        Length.FromMillimetres(width - TileJoints.LeftRoom - TileJoints.FlapWidth),
        Length.FromMillimetres(width - (2 * TileJoints.LeftRoom)));

    /// <summary>It would take more paper than anybody glues.</summary>
    public bool IsTooSmallFor(Length length) => length / Longest > MostTiles;
}
