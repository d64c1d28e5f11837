using System.Collections.Immutable;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>A piece on its roll.</summary>
/// <param name="Piece">What is cut.</param>
/// <param name="From">Where it begins, from the free end of what the roll holds before the first cut.</param>
/// <param name="To">Where it is cut off; the next piece begins a cut's loss after it.</param>
/// <param name="Left">What remains on the roll after that cut.</param>
public sealed record Cut(Piece Piece, Length From, Length To, Length Left);

/// <summary>
/// One roll, cut from its free end: practice pieces first, then the lines, longest first, so that a long line that goes wrong can still
/// be made again from what is left; then room for lines without a template, which is not cut before they have one.
/// </summary>
/// <param name="Name">What the file calls it, or a name for a new one.</param>
/// <param name="IsBought">It has to be bought first.</param>
/// <param name="Before">What it holds before the first cut.</param>
/// <param name="Cuts">In cutting order.</param>
/// <param name="Left">The offcut.</param>
public sealed record RollCuts(string Name, bool IsBought, Length Before, ImmutableArray<Cut> Cuts, Length Left)
{
    /// <summary>Equal ones; more than one only where they are left whole.</summary>
    public int Count { get; init; } = 1;
}

/// <summary>
/// How the pieces of one kind of tube are cut: what is bought as cheap as can be, or as few rolls where a price is not known; then the
/// longest single piece left (an untouched roll counts), then as few rolls cut into as can be. The spare is no piece of the plan, since
/// nobody cuts it: it has to be there in what is left, in one piece, or in all where it is longer than any roll.
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

    /// <summary>
    /// Measured lines are planned first and those without a template in what they leave. The plan is then not compared with others.
    /// </summary>
    public bool MeasuredFirst { get; init; }

    /// <summary>No other length of new rolls is better.</summary>
    public bool LengthIsProven { get; init; }

    /// <summary>Rolls that are cut into, those for lines without a template among them.</summary>
    public int Cut { get; init; }

    /// <summary>With fewer rolls cut into, no plan leaves so long a piece: the same as Cut where that is proven.</summary>
    public int CutAtLeast { get; init; }

    /// <summary>Nobody can do with fewer rolls of that length.</summary>
    public bool RollsAreProven => Bought == BoughtAtLeast;

    /// <summary>Nobody can leave a longer piece.</summary>
    public bool LeftIsProven => LongestLeft == LongestLeftAtMost;

    /// <summary>Nobody can cut into fewer rolls and leave so long a piece.</summary>
    public bool CutIsProven => Cut == CutAtLeast;

    /// <summary>Everything is cut from what is there.</summary>
    public bool Fits => Bought == 0 && TooLong.IsEmpty;

    /// <summary>What the bought rolls cost, where their price is known.</summary>
    public decimal? Cost => ToBuy?.Price * Bought;

    /// <summary>Search steps for the whole plan, all kinds of tube together. A car's lines take a few thousand.</summary>
    internal static SearchSteps AllSteps => new(1_500_000);

    /// <summary>With more pieces than this, which nobody cuts by hand, only the plain ways are tried.</summary>
    private const int MostPieces = 2_000;

    /// <summary>The best plan.</summary>
    /// <param name="pieces">In any order.</param>
    /// <param name="rolls">Of this kind of tube, at least one. New ones are of one of their lengths: see <see cref="Purchase"/>.</param>
    /// <param name="cuttingLoss">Lost to each cut, zero or more.</param>
    /// <param name="spare">What has to be left, zero or more.</param>
    public static CuttingPlan Of(ImmutableArray<Piece> pieces, ImmutableArray<Roll> rolls, Length cuttingLoss, Length spare) =>
        Of(pieces, rolls, (cuttingLoss, spare), AllSteps);

    /// <summary>The best plan that is found in so many steps.</summary>
    internal static CuttingPlan Of(
        ImmutableArray<Piece> pieces, ImmutableArray<Roll> rolls, (Length Cut, Length Spare) lost, SearchSteps steps)
    {
        var longest = rolls.Max(roll => Steps(roll.Length));
        ImmutableArray<Piece> tooLong = [.. pieces.Where(piece => Steps(piece.Length) > longest)];
        var cut = pieces.RemoveRange(tooLong);
        var loss = Steps(lost.Cut);
        List<long> Sizes(bool rough) =>
            [.. cut.Where(piece => piece.Use == PieceUse.Rough == rough).Select(piece => Steps(piece.Length) + loss)];
        var spare = Steps(lost.Spare);
        var inOnePiece = spare <= longest;
        var task = new CuttingTask(
            Sizes(rough: false),
            Sizes(rough: true),
            inOnePiece && spare > 0 ? spare + loss : null,
            inOnePiece ? 0 : spare,
            [.. rolls.SelectMany(roll => Enumerable.Repeat(Steps(roll.Left) + loss, roll.Count))],
            loss);
        var search = CuttingSearch.Of(task, Choices(rolls, loss), cut.Length > MostPieces ? new(0) : steps)
            ?? throw new InvalidOperationException("every piece goes into a new roll of the longest kind");
        return new(
            [.. Named(rolls, search, new(cut, lost.Cut, loss))],
            search.Buy?.Roll,
            search.Count,
            search.AtLeast,
            LengthOf(search.Packing.Left - loss),
            LengthOf(search.Packing.LeftAtMost - loss))
        {
            TooLong = tooLong,
            ForSpare = search.ForSpare,
            LengthIsProven = search.IsBestLength,
            MeasuredFirst = search.MeasuredFirst,
            CutAtLeast = search.Packing.CutAtLeast,
            Cut = search.Packing.Filled.Count,
        };
    }

    /// <summary>Lengths that can be bought, each once and at its lowest price, shortest first.</summary>
    private static List<BoughtLength> Choices(ImmutableArray<Roll> rolls, long loss) =>
    [
        .. rolls.OrderBy(roll => roll.Price ?? decimal.MaxValue)
            .DistinctBy(roll => Steps(roll.Length)).OrderBy(roll => roll.Length)
            .Select(roll => new BoughtLength(roll, Steps(roll.Length) + loss)),
    ];

    /// <summary>Rolls that are there in the order of the file, then the new ones; equal ones that are left whole are one entry.</summary>
    private static IEnumerable<RollCuts> Named(ImmutableArray<Roll> rolls, CuttingSearch search, PiecesToHandOut pieces)
    {
        var filled = search.Packing.Filled.GroupBy(roll => roll.Roll).ToDictionary(same => same.Key, same => new Queue<FilledRoll>(same));
        IEnumerable<RollCuts> Of(string name, int count, Length left, bool isBought)
        {
            var number = 1;
            var own = filled.GetValueOrDefault(Steps(left) + pieces.Loss) ?? new();
            for (; number <= count && own.Count > 0; number++)
            {
                yield return pieces.Cut(Numbered(name, number, number, count, isBought), isBought, left, own.Dequeue());
            }

            if (number <= count)
            {
                yield return new(Numbered(name, number, count, count, isBought), isBought, left, [], left) { Count = count - number + 1 };
            }
        }

        return
        [
            .. rolls.SelectMany(roll => Of(roll.Name, roll.Count, roll.Left, isBought: false)),
            .. search.Buy is { Roll: var buy } ? Of($"new {buy.KindInWords}", search.Count, buy.Length, isBought: true) : [],
        ];
    }

    private static string Numbered(string name, int from, int to, int count, bool isBought) => (from == to, isBought) switch
    {
        (true, true) => FormattableString.Invariant($"{name} {from}"),
        (false, true) => FormattableString.Invariant($"{name}s {from} to {to}"),
        _ when count == 1 => name,
        (true, _) => FormattableString.Invariant($"{name} ({from} of {count})"),
        _ => FormattableString.Invariant($"{name} ({from} to {to} of {count})"),
    };

    private static long Steps(Length length) =>
        length > Length.Zero ? Math.Max(1, (long)Math.Round(length.Millimetres / Step)) : 0;

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
                var from = at;
                at += piece.Length + cuttingLoss;
                cuts.Add(new(piece, from, from + piece.Length, at < before ? before - at : Length.Zero));
            }

            return new(name, isBought, before, cuts.ToImmutable(), cuts[^1].Left);
        }
    }
}
