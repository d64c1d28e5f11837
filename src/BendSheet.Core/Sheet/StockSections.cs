namespace BendSheet.Core.Sheet;

/// <summary>
/// What the cover says below its lines: each kind of tube with its cutting plan, and what to buy. The words are the terminal's.
/// </summary>
internal static class StockSections
{
    /// <summary>The sections, in the order in which they are used.</summary>
    /// <param name="stock">Of the whole file.</param>
    /// <param name="unit">Of figures that have none.</param>
    public static IEnumerable<CoverSection> Of(StockContent stock, string unit)
    {
        foreach (var tube in stock.Tubes)
        {
            yield return new($"Tube {tube.Tube}", [
                .. tube.Amounts.Select(amount => new CoverRow(amount.Label, amount.Length.Main) { Other = amount.Length.Other }),
                .. tube.Rolls.Where(roll => roll.Cuts.IsEmpty)
                .Select(roll => new CoverRow($"{roll.Name}: not cut", roll.Before.Main) { Other = roll.Before.Other }),
            ])
            {
                Remark = tube.Remarks.IsEmpty ? null : string.Join(' ', tube.Remarks),
            };
            foreach (var roll in tube.Rolls.Where(roll => !roll.Cuts.IsEmpty))
            {
                yield return Cuts(roll, unit);
            }
        }

        if (!stock.Shopping.IsEmpty)
        {
            yield return new("To buy", [.. stock.Shopping.Select(ItemRow)])
            {
                ToTick = true,
                Remark = string.Join(' ', stock.Remarks.Prepend(stock.Cost).OfType<string>()) is { Length: > 0 } remark ? remark : null,
            };
        }
    }

    /// <summary>Cuts in their order, each with where it is on the roll as it lies there now.</summary>
    private static CoverSection Cuts(StockRoll roll, string unit) => new(
        $"{roll.Name}, {roll.Before.Main}: in this order from its free end",
        [.. roll.Cuts.Select(cut => new CoverRow(cut.Piece, $"{cut.Length} {unit}") { Other = $"cut at {cut.At}" })])
    {
        ToTick = true,
        Remark = $"Left: {roll.Left}.",
    };

    private static CoverRow ItemRow(StockItem item) => new(
        $"{item.Name}{(item.Specification.Length == 0 ? string.Empty : ", " + item.Specification)}: "
            + $"{item.UsedAt}{(item.Have == 0 ? string.Empty : $" ({item.Needed} needed, {item.Have} there)")}",
        FormattableString.Invariant($"{item.ToBuy}"));
}
