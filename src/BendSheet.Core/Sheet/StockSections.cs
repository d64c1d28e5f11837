namespace BendSheet.Core.Sheet;

/// <summary>What the cover says below its lines: each kind of tube with its cutting plan, and what to buy. The words are the terminal's.</summary>
internal static class StockSections
{
    /// <summary>The sections, in the order in which they are used.</summary>
    public static IEnumerable<CoverSection> Of(StockContent stock)
    {
        foreach (var tube in stock.Tubes)
        {
            yield return new($"Tube {tube.Tube}", [
                .. tube.Amounts.Select(amount => new CoverRow(amount.Label, amount.Length.Main) { Other = amount.Length.Other }),
                .. tube.Rolls.Select(RollRow),
            ])
            {
                Remark = tube.Remarks.IsEmpty ? null : string.Join(' ', tube.Remarks),
            };
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
    private static CoverRow RollRow(StockRoll roll) => new(
        roll.Cuts.IsEmpty
            ? $"{roll.Name}: not cut, {roll.Left}"
            : $"{roll.Name}, from its free end: {string.Join("; ", roll.Cuts.Select(cut => $"{cut.Piece} {cut.Length}, cut at {cut.At}"))}; left {roll.Left}",
        roll.Before.Main)
    {
        Other = roll.Before.Other,
    };

    private static CoverRow ItemRow(StockItem item) => new(
        $"{item.Name}{(item.Specification.Length == 0 ? string.Empty : ", " + item.Specification)}: {item.UsedAt}{(item.Have is "0" or "" ? string.Empty : $" ({item.Needed} needed, {item.Have} there)")}",
        item.ToBuy);
}
