using BendSheet.Core.Units;

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
    /// <param name="more">From what a new roll holds: how many the spare needs at least, and how many are enough for it.</param>
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
        List<Offer> offers =
        [
            .. choices.Select(choice => new Offer(
                choice,
                Math.Max(Math.Max(least, more(choice.Room).AtLeast), FewestNew.Least(pieces, there, choice.Room)),
                more(choice.Room).Enough,
                allPriced)).OrderBy(offer => offer.AtBest),
        ];
        return Cheapest(offers, one =>
        {
            var own = steps.Part(Math.Min(4, one.Others));
            var found = FewestNew.Of(pieces, there, one.Offer.Choice.Room, own);
            steps.Return(own);
            return found with
            {
                Count = Math.Max(found.Count, one.Offer.Enough),
                AtLeast = Math.Max(found.AtLeast, one.Offer.AtLeast),
            };
        });
    }

    /// <summary>Offers are looked into as long as one may be better than the best that is known.</summary>
    private static Purchase Cheapest(List<Offer> offers, Func<(Offer Offer, int Others), FewestNew> search)
    {
        Purchase? best = null;
        (decimal, decimal, long) worth = default;
        var atBest = new List<(Offer Offer, (decimal, decimal, long) Worth)>();
        for (var i = 0; i < offers.Count && (best is null || offers[i].AtBest.CompareTo(worth) < 0); i++)
        {
            var offer = offers[i];
            var found = search((offer, offers.Count - i));
            if (found.Filled is null)
            {
                if (!found.IsCertain)
                {
                    atBest.Add((offer, offer.AtBest));
                }

                continue;
            }

            atBest.Add((offer, offer.Worth(found.AtLeast)));
            if (best is null || offer.Worth(found.Count).CompareTo(worth) < 0)
            {
                worth = offer.Worth(found.Count);
                best = new(offer.Choice, found, IsBest: true);
            }
        }

        return best is null
            ? new(null, new(null, 0, 0, IsCertain: false), IsBest: false)
            : best with { IsBest = atBest.TrueForAll(one => one.Offer.Choice == best.Choice || one.Worth.CompareTo(worth) >= 0) };
    }

    /// <summary>A length, and what can be said of it before anything is searched.</summary>
    /// <param name="Choice">The length.</param>
    /// <param name="AtLeast">New rolls: fewer cannot do.</param>
    /// <param name="Enough">New rolls that make room for a spare in several pieces, whichever way is cut; 0 without such a spare.</param>
    /// <param name="ByCost">Every length has a price.</param>
    private sealed record Offer(BoughtLength Choice, int AtLeast, int Enough, bool ByCost)
    {
        /// <summary>With the fewest rolls.</summary>
        public (decimal, decimal, long) AtBest => Worth(AtLeast);

        /// <summary>Smaller is better.</summary>
        public (decimal, decimal, long) Worth(int count)
        {
            var cost = Choice.Roll.Price is { } price ? price * count : decimal.MaxValue;
            return ByCost ? (cost, count, Choice.Room) : (count, cost, Choice.Room);
        }
    }
}
