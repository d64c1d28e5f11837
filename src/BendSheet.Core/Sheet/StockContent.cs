using System.Collections.Immutable;

namespace BendSheet.Core.Sheet;

/// <summary>
/// What the cover says of the whole car: what is made and what is not, how the tube is cut, what to buy. Rounded and worded, before anybody
/// thinks of how it looks: page and terminal show the same.
/// </summary>
/// <param name="Project">Empty where the file does not say.</param>
/// <param name="Lines">Every line, in the order of the file.</param>
/// <param name="Progress">How many are made, in a sentence.</param>
/// <param name="Tubes">Each kind of tube.</param>
/// <param name="Shopping">What the lines that are not made yet need.</param>
/// <param name="Cost">Of the tube to buy, in a sentence; null where nothing is bought or no price is known.</param>
/// <param name="Remarks">What the figures leave out, in sentences.</param>
public sealed record StockContent(
    string Project,
    ImmutableArray<StockLine> Lines,
    string Progress,
    ImmutableArray<StockTube> Tubes,
    ImmutableArray<StockItem> Shopping,
    string? Cost,
    ImmutableArray<string> Remarks);

/// <summary>How far a line is.</summary>
public enum LineState
{
    /// <summary>It can be made.</summary>
    ToMake,

    /// <summary>It exists already.</summary>
    Made,

    /// <summary>It has no template yet.</summary>
    Rough,

    /// <summary>It cannot be made as typed.</summary>
    CannotBeMade,
}

/// <summary>A line on the cover.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="Ends">Where it runs from and to.</param>
/// <param name="Tube">Size and material.</param>
/// <param name="CutLength">What to cut off, or about it where it is rough; null where nobody knows.</param>
/// <param name="State">How far it is.</param>
public sealed record StockLine(string Name, string Ends, string Tube, Figure? CutLength, LineState State)
{
    /// <summary>In a word or two: <c>made</c>.</summary>
    public string StateInWords => State switch
    {
        LineState.Made => "made",
        LineState.Rough => "no template yet",
        LineState.CannotBeMade => "cannot be made as typed",
        _ => "to make",
    };
}

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
/// <param name="Cuts">In cutting order; none where it is left whole.</param>
/// <param name="Left">What is left, in both units.</param>
public sealed record StockRoll(string Name, Figure Before, ImmutableArray<StockCut> Cuts, string Left);

/// <summary>One cut. Figures are without their unit, which stands in the heading.</summary>
/// <param name="At">From the roll's free end, as it was before the first cut.</param>
/// <param name="Length">Of the piece.</param>
/// <param name="Piece">The line's name, or what else the piece is.</param>
public sealed record StockCut(string At, string Length, string Piece);

/// <summary>A row of the shopping list.</summary>
/// <param name="ToBuy">How many to buy; 0 where all lie in the drawer.</param>
/// <param name="Name">What it is.</param>
/// <param name="Specification">Which of its kind.</param>
/// <param name="Needed">How many are needed.</param>
/// <param name="Have">How many of them lie in the drawer.</param>
/// <param name="UsedAt">Where they go.</param>
public sealed record StockItem(int ToBuy, string Name, string Specification, int Needed, int Have, string UsedAt);
