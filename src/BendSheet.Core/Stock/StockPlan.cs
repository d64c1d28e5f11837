using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Stock;

/// <summary>Whether the tube will do: for each kind of it what is needed, what is there and how it is cut.</summary>
/// <param name="Tubes">In the order in which the file uses them.</param>
/// <param name="NotCounted">Lines that cannot be made as typed, so that nobody knows their length.</param>
/// <param name="Findings">What does not fit, and what is not proven.</param>
public sealed record StockPlan(ImmutableArray<TubePlan> Tubes, ImmutableArray<string> NotCounted, ImmutableArray<Finding> Findings)
{
    /// <summary>The plan of a file.</summary>
    /// <param name="lines">With a template.</param>
    /// <param name="rough">Without one.</param>
    /// <param name="stores">What is there.</param>
    public static StockPlan Of(ImmutableArray<SolvedLine> lines, ImmutableArray<RoughLine> rough, Stores stores)
    {
        var pieces = lines.Where(line => !line.Template.Made && line.Plan is not null)
            .Select(
                line => (line.Template.Tube, Piece: new Piece(line.Template.Name, line.Plan!.CutLength, PieceUse.Line, line.Template.At)))
            .Concat(
                rough.Where(line => !line.Made)
                    .Select(line => (line.Tube, Piece: new Piece(line.Name, line.Length, PieceUse.Rough, line.At))))
            .InFileOrder(one => one.Piece.At)
            .ToList();
        var kinds = new List<Tube>();
        foreach (var tube in pieces.Select(one => one.Tube).Concat(stores.Practice.Select(practice => practice.Tube))
            .Concat(stores.Rolls.Select(roll => roll.Tube)))
        {
            if (!kinds.Exists(known => TubeKinds.AreOne(known, tube)))
            {
                kinds.Add(tube);
            }
        }

        var made = lines.Where(line => line.Template.Made).Select(line => line.Template.Tube).ToList();
        ImmutableArray<Tube> named =
        [
            .. pieces.Select(one => one.Tube),
            .. stores.Rolls.Select(roll => roll.Tube),
            .. stores.Practice.Select(one => one.Tube),
            .. made,
        ];
        var steps = CuttingPlan.AllSteps;
        var tubes = kinds.Select((kind, i) =>
        {
            var part = steps.Part(kinds.Count - i);
            ImmutableArray<Piece> own = [.. pieces.Where(one => TubeKinds.AreOne(kind, one.Tube)).Select(one => one.Piece)];
            var tube = Plan(kind, own, stores, named, part);
            steps.Return(part);
            return tube;
        }).ToImmutableArray();
        return new(
            tubes,
            [.. lines.Where(line => !line.Template.Made && line.Plan is null).Select(line => line.Template.Name)],
            [.. tubes.SelectMany(StockRules.Check), .. StockRules.LeftUnknown(tubes, made)]);
    }

    private static TubePlan Plan(Tube tube, ImmutableArray<Piece> lines, Stores stores, ImmutableArray<Tube> named, SearchSteps steps)
    {
        var rolls = stores.Rolls.Where(roll => TubeKinds.AreOne(tube, roll.Tube)).ToImmutableArray();
        var practice = stores.Practice.Where(one => TubeKinds.AreOne(tube, one.Tube)).ToList();
        ImmutableArray<Piece> cut =
        [
            .. practice.SelectMany(one => Tried("practice flare", one.Done, one.Flares, one.Length, PieceUse.Practice, one.At)),
            .. practice.SelectMany(one => Tried("practice bend", one.BendsDone, one.Bends, one.BendLength, PieceUse.PracticeBend, one.At)),
            .. lines,
        ];
        var need = new TubeNeed(
            cut, cut.Length * stores.CuttingLoss, stores.Spare * lines.Aggregate(Length.Zero, (sum, piece) => sum + piece.Length));
        return new(tube, need, rolls, rolls.IsEmpty ? null : CuttingPlan.Of(cut, rolls, (stores.CuttingLoss, need.Spare), steps))
        {
            Names =
            [
                .. named.Where(one => TubeKinds.AreOne(tube, one)).Select(one => one.Name).Where(name => name.Length > 0)
                .Distinct(StringComparer.Ordinal),
            ],
        };
    }

    private static IEnumerable<Piece> Tried(string what, int done, int all, Length length, PieceUse use, SourcePosition at) =>
        Enumerable.Range(1 + done, all - done).Select(
            number => new Piece(FormattableString.Invariant($"{what} {number}"), length, use, at));
}
