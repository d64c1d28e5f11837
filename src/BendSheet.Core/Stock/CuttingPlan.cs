using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>A piece on its roll.</summary>
/// <param name="Piece">What is cut.</param>
/// <param name="From">Where it begins, from the free end of what the roll holds before the first cut.</param>
/// <param name="To">Where it is cut off; the next piece begins a cut's loss behind it.</param>
public sealed record Cut(Piece Piece, Length From, Length To);

/// <summary>
/// One roll, cut from its free end: practice pieces first, then the lines, longest first, so that a long line that goes wrong can still
/// be made again from what is left.
/// </summary>
/// <param name="Name">What the file calls it, or a name for a new one.</param>
/// <param name="IsBought">It has to be bought first.</param>
/// <param name="Before">What it holds before the first cut.</param>
/// <param name="Cuts">In cutting order.</param>
/// <param name="Left">The offcut.</param>
public sealed record RollCuts(string Name, bool IsBought, Length Before, ImmutableArray<Cut> Cuts, Length Left);

/// <summary>
/// How the pieces of one kind of tube are cut: as few rolls bought as can be, then the longest single piece left (an untouched roll
/// counts), then no roll cut into that can be left whole. The spare is no piece of the plan, since nobody cuts it: it has to be there in
/// what is left, in one piece, or in all where it is longer than a roll.
/// </summary>
/// <param name="Rolls">Every roll that is there, in the order of the file, then the new ones.</param>
/// <param name="ToBuy">What is bought; null where nothing has to be.</param>
/// <param name="Bought">How many of it.</param>
/// <param name="BoughtAtLeast">Fewer are proven not to do: the same number, unless the search stopped early.</param>
/// <param name="LongestLeft">The longest piece left.</param>
/// <param name="LongestLeftAtMost">More is proven not to be possible: the same, unless the search stopped early.</param>
public sealed record CuttingPlan(
    ImmutableArray<RollCuts> Rolls, Roll? ToBuy, int Bought, int BoughtAtLeast, Length LongestLeft, Length LongestLeftAtMost)
{
    /// <summary>Millionths of a millimetre, in which the search counts: below it two lengths are the same.</summary>
    private static readonly double Step = Tolerances.SamePoint.Millimetres;

    /// <summary>Pieces that are longer than every roll that is there or can be bought; no plan has them.</summary>
    public ImmutableArray<Piece> TooLong { get; init; } = [];

    /// <summary>New rolls of <see cref="Bought"/> that only the spare needs: they are left whole.</summary>
    public int ForSpare { get; init; }

    /// <summary>Nobody can do with fewer rolls.</summary>
    public bool RollsAreProven => Bought == BoughtAtLeast;

    /// <summary>Nobody can leave a longer piece.</summary>
    public bool LeftIsProven => LongestLeft == LongestLeftAtMost;

    /// <summary>Everything is cut from what is there.</summary>
    public bool Fits => Bought == 0 && TooLong.IsEmpty;

    /// <summary>What the bought rolls cost, where their price is known.</summary>
    public decimal? Cost => ToBuy?.Price * Bought;

    /// <summary>The best plan.</summary>
    /// <param name="pieces">In any order.</param>
    /// <param name="rolls">Of this kind of tube, at least one. New ones are of one of their lengths: the one of which the fewest are
    /// needed, then the one that costs least, then the shortest.</param>
    /// <param name="cuttingLoss">Lost to each cut, zero or more.</param>
    /// <param name="spare">What has to be left, zero or more.</param>
    public static CuttingPlan Of(ImmutableArray<Piece> pieces, ImmutableArray<Roll> rolls, Length cuttingLoss, Length spare)
    {
        var there = rolls.SelectMany(roll => Enumerable.Range(1, roll.Count)
            .Select(
                number => (Name: roll.Count == 1
                    ? roll.Name
                    : FormattableString.Invariant($"{roll.Name} ({number} of {roll.Count})"), Roll: roll))).ToList();
        var longest = rolls.Max(roll => roll.Length);
        ImmutableArray<Piece> tooLong = [.. pieces.Where(piece => longest.FallsShortOf(piece.Length))];
        var cut = pieces.RemoveRange(tooLong);
        var loss = Steps(cuttingLoss);
        List<long> sizes = [.. cut.Select(piece => Steps(piece.Length) + loss)];
        List<long> room = [.. there.Select(one => Steps(one.Roll.Left) + loss)];
        return Choices(rolls, cut)
            .Select(
                buy => Of(there, room, buy, Packing.Of(sizes, room, Steps(buy.Length) + loss), new(cut, cuttingLoss, loss))
                    .WithSpare(spare, buy))
            .OrderBy(plan => plan.Bought)
            .ThenBy(plan => plan.Cost ?? decimal.MaxValue)
            .First() with
        { TooLong = tooLong };
    }

    private static CuttingPlan Of(
        List<(string Name, Roll Roll)> there, List<long> room, Roll buy, Packing packing, PiecesToHandOut pieces) => new(
        [.. Named(there, room, buy, packing, pieces)],
        packing.Bought == 0 ? null : buy,
        packing.Bought,
        packing.BoughtAtLeast,
        LengthOf(packing.Left - pieces.Loss),
        LengthOf(packing.LeftAtMost - pieces.Loss));

    /// <summary>The same with new rolls for the spare, where what is left does not have it.</summary>
    private CuttingPlan WithSpare(Length spare, Roll buy)
    {
        var left = Rolls.Aggregate(Length.Zero, (sum, roll) => sum + roll.Left);
        var inOnePiece = !buy.Length.FallsShortOf(spare);
        if (spare <= Length.Zero || !(inOnePiece ? LongestLeft : left).FallsShortOf(spare))
        {
            return this;
        }

        var more = inOnePiece ? 1 : (int)Math.Ceiling((spare - left) / buy.Length);
        var isProven = RollsAreProven && (!inOnePiece || LongestLeftAtMost.FallsShortOf(spare));
        var whole = Enumerable.Range(Bought + 1, more)
            .Select(number => new RollCuts(NewName(buy, number), IsBought: true, buy.Length, [], buy.Length));
        return this with
        {
            Rolls = [.. Rolls, .. whole],
            ToBuy = buy,
            Bought = Bought + more,
            BoughtAtLeast = BoughtAtLeast + (isProven ? more : 0),
            ForSpare = more,
            LongestLeft = buy.Length > LongestLeft ? buy.Length : LongestLeft,
            LongestLeftAtMost = buy.Length > LongestLeftAtMost ? buy.Length : LongestLeftAtMost,
        };
    }

    private static string NewName(Roll buy, int number) => FormattableString.Invariant($"new {buy.KindInWords} {number}");

    /// <summary>Lengths that every piece goes into, each once and at its lowest price.</summary>
    private static IEnumerable<Roll> Choices(ImmutableArray<Roll> rolls, ImmutableArray<Piece> pieces)
    {
        var longestPiece = pieces.Select(piece => piece.Length).DefaultIfEmpty(Length.Zero).Max();
        var enough = rolls.Where(roll => !roll.Length.FallsShortOf(longestPiece)).OrderBy(roll => roll.Price ?? decimal.MaxValue)
            .DistinctBy(roll => Steps(roll.Length));
        return enough.OrderBy(roll => roll.Length);
    }

    private static IEnumerable<RollCuts> Named(
        List<(string Name, Roll Roll)> there, List<long> room, Roll buy, Packing packing, PiecesToHandOut pieces)
    {
        var filled = packing.Filled.ToList();
        for (var i = 0; i < there.Count; i++)
        {
            var at = filled.FindIndex(roll => roll.Roll == room[i]);
            if (at < 0)
            {
                yield return Whole(there[i].Name, there[i].Roll.Left);
                continue;
            }

            yield return pieces.Cut(there[i].Name, isBought: false, there[i].Roll.Left, filled[at]);
            filled.RemoveAt(at);
        }

        for (var i = 0; i < filled.Count; i++)
        {
            yield return pieces.Cut(NewName(buy, i + 1), isBought: true, buy.Length, filled[i]);
        }
    }

    private static RollCuts Whole(string name, Length left) => new(name, IsBought: false, left, [], left);

    private static long Steps(Length length) => (long)Math.Round(length.Millimetres / Step);

    private static Length LengthOf(long steps) => Length.FromMillimetres(Math.Max(0, steps) * Step);

    /// <summary>Pieces by their size in steps, those of one size in the order of the file.</summary>
    private sealed class PiecesToHandOut(ImmutableArray<Piece> pieces, Length cuttingLoss, long loss)
    {
        public long Loss => loss;

        private readonly Dictionary<long, Queue<Piece>> _bySize = pieces.GroupBy(piece => Steps(piece.Length) + loss)
            .ToDictionary(same => same.Key, same => new Queue<Piece>(same.OrderBy(piece => piece.Use)));

        public RollCuts Cut(string name, bool isBought, Length before, FilledRoll filled)
        {
            var own = filled.Sizes.Select(size => _bySize[size].Dequeue()).OrderBy(piece => piece.Use)
                .ThenByDescending(piece => piece.Length).ToList();
            var cuts = ImmutableArray.CreateBuilder<Cut>();
            var at = Length.Zero;
            foreach (var piece in own)
            {
                cuts.Add(new(piece, at, at + piece.Length));
                at += piece.Length + cuttingLoss;
            }

            var left = at < before ? before - at : Length.Zero;
            return new(name, isBought, before, cuts.ToImmutable(), left);
        }
    }
}
