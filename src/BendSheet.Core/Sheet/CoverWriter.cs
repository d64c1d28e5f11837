using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds what the cover says. Lengths are added up exactly and rounded once.</summary>
public static class CoverWriter
{
    /// <summary>The cover of some lines of a file, without the stock.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="lines">With plans, in the order of the file.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="typed">The file's own notation, which fingerprints tell; null where it is the same.</param>
    public static CoverContent OfSome(
        string project, ImmutableArray<SolvedLine> lines, LengthNotation notation, LengthNotation? typed = null)
    {
        ArgumentNullException.ThrowIfNull(notation);
        return new()
        {
            Project = project,
            Summary = Summary(lines.Length, lines.Count(line => line.Template.Made)),
            Lines = [.. lines.Select(line => Line(line, project, notation, typed))],
            Notation = notation,
            CutLengths = [.. CutLengths(lines, notation)],
        };
    }

    /// <summary>The cover of a whole file.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="lines">With a template.</param>
    /// <param name="rough">Without one.</param>
    /// <param name="stock">Of the same lines.</param>
    /// <param name="shopping">Of the same lines.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="typed">The file's own notation, which fingerprints tell; null where it is the same.</param>
    public static CoverContent OfFile(
        string project,
        ImmutableArray<SolvedLine> lines,
        ImmutableArray<RoughLine> rough,
        StockPlan stock,
        ShoppingList shopping,
        LengthNotation notation,
        LengthNotation? typed = null)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(shopping);
        ArgumentNullException.ThrowIfNull(notation);
        ImmutableArray<CoverLine> all =
        [
            .. lines.Select(line => (line.Template.At, Line: Line(line, project, notation, typed)))
                .Concat(rough.Select(line => (line.At, Line: Line(line, notation)))).InFileOrder(one => one.At).Select(one => one.Line),
        ];
        return new()
        {
            Project = project,
            Summary = Progress(all),
            Lines = all,
            Notation = notation,
            Tubes = [.. stock.Tubes.Select(tube => StockTubes.Of(tube, notation))],
            Shopping = [.. shopping.Items.Select(Item)],
            Cost = StockTubes.Cost(stock),
            Remarks = [.. Remarks(lines, rough, stock)],
        };
    }

    /// <summary>What is said of a line that has no sheet.</summary>
    /// <param name="name">Of the line.</param>
    /// <param name="isMistyped">Something in the file cannot be read; otherwise the line cannot be made as typed.</param>
    /// <param name="errors">Those that concern it, in the order of the file.</param>
    public static MissingLine Missing(string name, bool isMistyped, ImmutableArray<Finding> errors)
    {
        var what = isMistyped ? "mistyped" : "cannot be made as typed";
        if (errors.IsEmpty)
        {
            return new(name, what);
        }

        var where = errors.Length == 1 ? "on" : "the first on";
        return new(name, FormattableString.Invariant(
            $"{what}, {Counted.Words(errors.Length, "error")}, {where} line {errors[0].Position.Line} of the file"));
    }

    private static CoverLine Line(SolvedLine line, string project, LengthNotation notation, LengthNotation? typed) => new(
        line.Template.Name,
        EndWords.A(line.Template.From),
        EndWords.B(line.Template.To),
        TubeWords.InWords(line.Template.Tube, notation),
        line.Plan is { } plan ? Figure.Of(plan.CutLength, notation) : null,
        line.Template.Made ? LineState.Made : line.Plan is null ? LineState.CannotBeMade : LineState.ToMake,
        line.Plan is null ? null : Fingerprint.Of(line.Typed, project, typed ?? notation));

    private static CoverLine Line(RoughLine line, LengthNotation notation) => new(
        line.Name,
        EndWords.A(line.From),
        EndWords.B(line.To),
        TubeWords.InWords(line.Tube, notation),
        Figure.Of(line.Length, notation),
        line.Made ? LineState.Made : LineState.Rough,
        Fingerprint: null);

    private static string Summary(int lines, int made) => made switch
    {
        _ when lines == 1 => made == 0 ? "1 line, not made yet." : "1 line, made.",
        0 => FormattableString.Invariant($"{lines} lines, none of them made yet."),
        _ when made == lines => FormattableString.Invariant($"{lines} lines, all of them made."),
        _ => FormattableString.Invariant($"{lines} lines: {made} made, {lines - made} to make."),
    };

    private static string Progress(ImmutableArray<CoverLine> lines)
    {
        var made = lines.Count(line => line.State == LineState.Made);
        return made == lines.Length
            ? "All lines are made."
            : FormattableString.Invariant($"{made} of {Counted.Words(lines.Length, "line")} made.");
    }

    /// <summary>By size and material, as a person would ask for it in a shop.</summary>
    private static IEnumerable<StockAmount> CutLengths(IEnumerable<SolvedLine> lines, LengthNotation notation)
    {
        foreach (var ofTube in lines.GroupBy(line => TubeWords.InWords(line.Template.Tube, notation), StringComparer.Ordinal))
        {
            var toMake = ofTube.Where(line => !line.Template.Made).ToList();
            yield return Amount($"{ofTube.Key}: {Counted.Words(ofTube.Count(), "line")}", ofTube);
            if (toMake.Count > 0 && toMake.Count < ofTube.Count())
            {
                yield return Amount($"{ofTube.Key}: of these, {Counted.Words(toMake.Count, "line")} still to make", toMake);
            }
        }

        StockAmount Amount(string label, IEnumerable<SolvedLine> some) =>
            new(label, Figure.Of(some.Aggregate(Length.Zero, (sum, line) => sum + line.Plan!.CutLength), notation));
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
