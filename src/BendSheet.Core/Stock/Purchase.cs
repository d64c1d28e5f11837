namespace BendSheet.Core.Stock;

/// <summary>A length in which tube is bought.</summary>
/// <param name="Roll">As typed, at its lowest price.</param>
/// <param name="Room">What a new one holds; see <see cref="PieceSizes"/>.</param>
internal sealed record BoughtLength(Roll Roll, long Room);

/// <summary>
/// What is bought: nothing where the pieces go into what is there, or else new rolls of one length. Where every length has a price it is
/// what costs least, then what takes the fewest; otherwise what takes the fewest, then what costs least; then the shortest.
/// </summary>
/// <param name="Choice">Null where nothing is bought, or where no length is known to do.</param>
/// <param name="New">How many, and how the pieces go into them and into those that are there.</param>
/// <param name="IsBest">No other length is better: proven.</param>
internal sealed record Purchase(BoughtLength? Choice, FewestNew New, bool IsBest)
{
    /// <summary>The best.</summary>
    /// <param name="pieces">May be none.</param>
    /// <param name="there">What the rolls hold that are there.</param>
    /// <param name="choices">At least one, shortest first.</param>
    /// <param name="more">How many new rolls have to be there for the spare at least, and are enough, by what one holds.</param>
    /// <param name="steps">Takes what it needs.</param>
    public static Purchase Of(
        IReadOnlyList<long> pieces,
        IReadOnlyList<long> there,
        IReadOnlyList<BoughtLength> choices,
        Func<long, (int AtLeast, int Enough)> more,
        SearchSteps steps)
    {
        var part = steps.Part(2);
        var fits = pieces.Count == 0 ? new([], IsCertain: true) : PackingSearch.Find(PieceSizes.Of(pieces, there), part);
        steps.Return(part);
        if (fits.Filled is { } filled && choices.Any(choice => more(choice.Room).Enough == 0))
        {
            return new(null, new(filled, 0, 0, IsCertain: true), IsBest: true);
        }

        var least = fits.Filled is null && fits.IsCertain ? 1 : 0;
        var allPriced = choices.All(choice => choice.Roll.Price is not null);
        int AtLeast(BoughtLength choice) =>
            Math.Max(Math.Max(least, more(choice.Room).AtLeast), FewestNew.Least(pieces, there, choice.Room));
        var open = choices.Select(choice => (Choice: choice, Worth: Worth(choice, AtLeast(choice), allPriced)))
            .OrderBy(one => one.Worth).ToList();
        (Purchase Purchase, (decimal, decimal, long) Worth)? best = null;
        var lowest = new List<(BoughtLength Choice, (decimal, decimal, long) Worth)>();
        for (var i = 0; i < open.Count; i++)
        {
            var (choice, worth) = open[i];
            if (best is { } known && worth.CompareTo(known.Worth) >= 0)
            {
                break;
            }

            var own = steps.Part(Math.Min(4, open.Count - i));
            var found = FewestNew.Of(pieces, there, choice.Room, own);
            steps.Return(own);
            if (found.Filled is null)
            {
                if (!found.IsCertain)
                {
                    lowest.Add((choice, worth));
                }

                continue;
            }

            var (atLeast, enough) = more(choice.Room);
            found = found with
            {
                Count = Math.Max(found.Count, enough),
                AtLeast = Math.Max(Math.Max(found.AtLeast, atLeast), least),
            };
            var worthFound = Worth(choice, found.Count, allPriced);
            lowest.Add((choice, Worth(choice, found.AtLeast, allPriced)));
            if (best is not { } before || worthFound.CompareTo(before.Worth) < 0)
            {
                best = (new(choice, found, IsBest: true), worthFound);
            }
        }

        return best is not { } final
            ? new(null, new(null, 0, 0, IsCertain: false), IsBest: false)
            : final.Purchase with
            {
                IsBest = lowest.All(one => one.Choice == final.Purchase.Choice || one.Worth.CompareTo(final.Worth) >= 0),
            };
    }

    private static (decimal, decimal, long) Worth(BoughtLength choice, int count, bool allPriced)
    {
        var cost = choice.Roll.Price is { } price ? price * count : decimal.MaxValue;
        return allPriced ? (cost, count, choice.Room) : (count, cost, choice.Room);
    }
}
