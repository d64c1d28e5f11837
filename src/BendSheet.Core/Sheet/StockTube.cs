using System.Collections.Immutable;

namespace BendSheet.Core.Sheet;

/// <summary>One kind of tube.</summary>
/// <param name="Tube">Size and material.</param>
/// <param name="Amounts">What is needed, added up, and what is there.</param>
/// <param name="Rolls">The cutting plan: rolls that are cut into, then those left whole.</param>
/// <param name="Remarks">Whether it fits, what to buy, and how sure that is, in sentences.</param>
public sealed record StockTube(
    string Tube, ImmutableArray<StockAmount> Amounts, ImmutableArray<StockRoll> Rolls, ImmutableArray<string> Remarks);

/// <summary>A line of a sum.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Length">How much.</param>
public sealed record StockAmount(string Label, Figure Length);

/// <summary>One roll of the cutting plan.</summary>
/// <param name="Name">Of the roll.</param>
/// <param name="Before">What it holds before the first cut.</param>
/// <param name="Cuts">In cutting order; none where it is not cut yet.</param>
/// <param name="Planned">Room kept for lines without a template, which is not cut.</param>
/// <param name="Left">What is left when all is cut, in both units.</param>
public sealed record StockRoll(
    string Name, Figure Before, ImmutableArray<StockCut> Cuts, ImmutableArray<StockRoom> Planned, string Left)
{
    /// <summary>In front of the room that is kept.</summary>
    public const string DoNotCut = "do not cut: no template yet";

    /// <summary>Nothing comes off it.</summary>
    public bool IsWhole => Cuts.IsEmpty && Planned.IsEmpty;
}

/// <summary>Room kept on a roll for a line that has no template yet.</summary>
/// <param name="Line">Its name.</param>
/// <param name="About">Its rough length with the unit.</param>
public sealed record StockRoom(string Line, string About);

/// <summary>One cut. Figures are without their unit, which stands in the heading.</summary>
/// <param name="At">From the roll's free end, as it was before the first cut.</param>
/// <param name="Length">Of the piece.</param>
/// <param name="Left">What remains on the roll after the cut.</param>
/// <param name="Piece">The line's name, or what else the piece is.</param>
public sealed record StockCut(string At, string Length, string Left, string Piece);

/// <summary>A row of the shopping list.</summary>
/// <param name="ToBuy">How many to buy; 0 where all are on hand.</param>
/// <param name="Name">What it is.</param>
/// <param name="Specification">Which of its kind.</param>
/// <param name="Needed">How many are needed.</param>
/// <param name="Have">How many of them are on hand.</param>
/// <param name="UsedAt">Where they go.</param>
public sealed record StockItem(int ToBuy, string Name, string Specification, int Needed, int Have, string UsedAt);
