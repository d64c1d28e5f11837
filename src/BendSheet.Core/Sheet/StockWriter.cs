using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds what is known of the whole car. Nothing is calculated after this.</summary>
public static class StockWriter
{
    /// <summary>The cover of a file.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="lines">With a template.</param>
    /// <param name="rough">Without one.</param>
    /// <param name="stock">Of the same lines.</param>
    /// <param name="shopping">Of the same lines.</param>
    /// <param name="notation">How lengths are written.</param>
    public static StockContent Of(
        string project,
        ImmutableArray<SolvedLine> lines,
        ImmutableArray<RoughLine> rough,
        StockPlan stock,
        ShoppingList shopping,
        LengthNotation notation)
    {
        ImmutableArray<StockLine> all = [.. lines.Select(line => (line.Template.At, Line: Line(line, notation)))
            .Concat(rough.Select(line => (line.At, Line: Line(line, notation))))
            .InFileOrder(one => one.At)
            .Select(one => one.Line)];
        return new(
            project,
            all,
            Progress(all),
            [.. stock.Tubes.Select(tube => StockTubes.Of(tube, notation))],
            [.. shopping.Items.Select(Item)],
            StockTubes.Cost(stock),
            [.. Remarks(lines, rough, stock)]);
    }

    private static StockLine Line(SolvedLine line, LengthNotation notation) => new(
        line.Template.Name,
        Ends(line.Template.From, line.Template.To),
        TubeWords.InWords(line.Template.Tube, notation),
        line.Plan is { } plan ? Figure.Of(plan.CutLength, notation) : null,
        line.Template.Made ? LineState.Made : line.Plan is null ? LineState.CannotBeMade : LineState.ToMake);

    private static StockLine Line(RoughLine line, LengthNotation notation) => new(
        line.Name,
        Ends(line.From, line.To),
        TubeWords.InWords(line.Tube, notation),
        Figure.Of(line.Length, notation),
        line.Made ? LineState.Made : LineState.Rough);

    private static string Ends(LineEnd from, LineEnd to) => $"{from.At ?? "end A"} → {to.At ?? "end B"}";

    private static string Progress(ImmutableArray<StockLine> lines)
    {
        var made = lines.Count(line => line.State == LineState.Made);
        return made == lines.Length
            ? "All lines are made."
            : FormattableString.Invariant($"{made} of {Counted.Words(lines.Length, "line")} made.");
    }

    private static StockItem Item(ShoppingItem item) => new(
        item.ToBuy, item.Name, item.Specification, item.Count, item.Have, string.Join(", ", item.UsedAt));

    private static IEnumerable<string> Remarks(ImmutableArray<SolvedLine> lines, ImmutableArray<RoughLine> rough, StockPlan stock)
    {
        if (!stock.NotCounted.IsEmpty)
        {
            yield return $"Not counted, because it cannot be made as typed: {string.Join(", ", stock.NotCounted)}.";
        }

        var waiting = rough.Where(line => !line.Made).Select(line => line.Name).ToList();
        if (waiting.Count > 0 && lines.Any(line => line.Template.Clips is not null))
        {
            yield return $"Clips of rough lines are not counted yet: {string.Join(", ", waiting)}.";
        }
    }
}
