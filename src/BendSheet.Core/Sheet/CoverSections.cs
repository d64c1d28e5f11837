namespace BendSheet.Core.Sheet;

/// <summary>
/// What the cover says on the page below its lines: each kind of tube with its cutting plan, and what to buy. The words are the
/// terminal's.
/// </summary>
internal static class CoverSections
{
    /// <summary>What is said before the lines.</summary>
    public static IEnumerable<CoverSection> Above(CoverContent cover)
    {
        if (!cover.Missing.IsEmpty)
        {
            yield return new(
                "Not on these sheets", [.. cover.Missing.Select(line => new CoverRow($"{line.Name}: {line.Why}", string.Empty))])
            {
                Remark = "Put these right in the file and print again; checking the file says what is wrong, and where.",
            };
        }
    }

    /// <summary>The sections, in the order in which they are used.</summary>
    public static IEnumerable<CoverSection> Of(CoverContent cover)
    {
        if (!cover.CutLengths.IsEmpty)
        {
            yield return new("Tube in all (cut lengths added up)", [.. cover.CutLengths.Select(amount => Row(amount.Label, amount.Length))])
            {
                Remark = "Bare cut lengths: what each saw cut takes, practice pieces and what is left of a roll are not included.",
            };
        }

        foreach (var tube in cover.Tubes)
        {
            yield return new($"Tube {tube.Tube}", [
                .. tube.Amounts.Select(amount => Row(amount.Label, amount.Length)),
                .. tube.Rolls.Where(roll => roll.IsWhole).Select(roll => Row($"{roll.Name}: not cut", roll.Before)),
            ])
            {
                Remark = string.Join(' ', tube.Remarks),
            };
            foreach (var roll in tube.Rolls)
            {
                if (!roll.Cuts.IsEmpty)
                {
                    yield return Cuts(roll, cover.Notation.Symbol);
                }

                if (!roll.Planned.IsEmpty)
                {
                    yield return Planned(roll);
                }
            }
        }

        if (!cover.Shopping.IsEmpty || !cover.Remarks.IsEmpty)
        {
            yield return ToBuy(cover);
        }
    }

    /// <summary>What to bring home, to tick; what is on hand already is named below it, to be laid out.</summary>
    private static CoverSection ToBuy(CoverContent cover)
    {
        List<StockItem> wanted = [.. cover.Shopping.Where(item => item.ToBuy > 0)];
        List<string> onHand = [.. cover.Shopping.Where(item => item.ToBuy == 0).Select(item => $"{item.Needed} × {NameOf(item)}")];
        IEnumerable<string?> remarks =
            [cover.Cost, onHand.Count == 0 ? null : $"All on hand, nothing to buy: {string.Join("; ", onHand)}.", .. cover.Remarks];
        return new("To buy", wanted.Count == 0 ? [new("Nothing.", string.Empty)] : [.. wanted.Select(ItemRow)])
        {
            ToTick = wanted.Count > 0,
            Remark = string.Join(' ', remarks.OfType<string>()),
        };
    }

    /// <summary>Cuts in their order, each with where it is on the roll as it lies there now.</summary>
    private static CoverSection Cuts(StockRoll roll, string unit) => new(
        $"{roll.Name}, {roll.Before.Main}: in this order from its free end",
        [.. roll.Cuts.Select(cut => new CoverRow(cut.Piece, $"{cut.Length} {unit}") { Other = $"cut at {cut.At}, left {cut.Left}" })])
    {
        ToTick = true,
        Remark = roll.Planned.IsEmpty ? $"Left: {roll.Left}." : string.Empty,
    };

    /// <summary>Nothing to tick and no place to cut at.</summary>
    private static CoverSection Planned(StockRoll roll) => new(
        $"{roll.Name}, planned – {StockRoll.DoNotCut}", [.. roll.Planned.Select(room => new CoverRow(room.Line, room.About))])
    {
        Remark = $"Left when these are cut as well: {roll.Left}.",
    };

    private static CoverRow Row(string what, Figure length) => new(what, length.Main) { Other = length.Other };

    private static CoverRow ItemRow(StockItem item) => new(
        $"{NameOf(item)}: {item.UsedAt}{(item.Have == 0 ? string.Empty : $" ({item.Needed} needed, {item.Have} on hand)")}",
        FormattableString.Invariant($"{item.ToBuy}"));

    private static string NameOf(StockItem item) =>
        item.Specification.Length == 0 ? item.Name : $"{item.Name}, {item.Specification}";
}
