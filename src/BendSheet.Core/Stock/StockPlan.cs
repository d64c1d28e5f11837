using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
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
            .Select(line => (line.Template.Tube, Piece: new Piece(line.Template.Name, line.Plan!.CutLength, PieceUse.Line, line.Template.At)))
            .Concat(rough.Where(line => !line.Made).Select(line => (line.Tube, Piece: new Piece(line.Name, line.Length, PieceUse.Line, line.At))))
            .OrderBy(one => one.Piece.At.Line).ThenBy(one => one.Piece.At.Column)
            .ToList();
        var kinds = new List<Tube>();
        foreach (var tube in pieces.Select(one => one.Tube).Concat(stores.Practice.Select(practice => practice.Tube)).Concat(stores.Rolls.Select(roll => roll.Tube)))
        {
            if (!kinds.Exists(known => TubeKinds.AreOne(known, tube)))
            {
                kinds.Add(tube);
            }
        }

        var tubes = kinds.Select(kind => Plan(kind, [.. pieces.Where(one => TubeKinds.AreOne(kind, one.Tube)).Select(one => one.Piece)], stores)).ToImmutableArray();
        return new(
            tubes,
            [.. lines.Where(line => !line.Template.Made && line.Plan is null).Select(line => line.Template.Name)],
            [.. tubes.SelectMany(StockRules.Check), .. StockRules.LeftUnknown(tubes, [.. lines.Where(line => line.Template.Made).Select(line => line.Template.Tube)])]);
    }

    private static TubePlan Plan(Tube tube, ImmutableArray<Piece> lines, Stores stores)
    {
        var rolls = stores.Rolls.Where(roll => TubeKinds.AreOne(tube, roll.Tube)).ToImmutableArray();
        var practice = stores.Practice.Where(one => TubeKinds.AreOne(tube, one.Tube)).SelectMany(one => Enumerable.Range(1, one.Flares)
            .Select(number => new Piece(FormattableString.Invariant($"practice flare {number}"), one.Length, PieceUse.Practice, one.At)));
        ImmutableArray<Piece> cut = [.. practice, .. lines];
        ImmutableArray<Piece> all = [.. cut, .. Spare(lines, rolls, stores)];
        return new(tube, new(all, cut.Length * stores.CuttingLoss), rolls, rolls.IsEmpty ? null : CuttingPlan.Of(all, rolls, stores.CuttingLoss));
    }

    /// <summary>In one piece, so that a line can be made from it; in equal ones where it is longer than a roll.</summary>
    private static IEnumerable<Piece> Spare(ImmutableArray<Piece> lines, ImmutableArray<Roll> rolls, Stores stores)
    {
        var spare = stores.Spare * lines.Aggregate(Length.Zero, (sum, piece) => sum + piece.Length);
        if (spare <= Length.Zero)
        {
            return [];
        }

        var parts = rolls.IsEmpty ? 1 : (int)Math.Ceiling(spare / rolls.Max(roll => roll.Length));
        return Enumerable.Repeat(new Piece("spare", 1.0 / parts * spare, PieceUse.Spare, rolls.IsEmpty ? default : rolls[0].At), parts);
    }
}
