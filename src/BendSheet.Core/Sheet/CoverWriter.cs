using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds what the cover says. Lengths are added up exactly and rounded once.</summary>
public static class CoverWriter
{
    /// <summary>The cover of some lines.</summary>
    /// <param name="lines">With plans, in the order of the file.</param>
    /// <param name="sheets">Their sheets, in the same order.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="stock">Of the whole file; null where the lines are only some of it.</param>
    public static CoverContent Of(
        IReadOnlyList<SolvedLine> lines, IReadOnlyList<SheetContent> sheets, LengthNotation notation, StockContent? stock = null)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(notation);
        return new(
            sheets.Count > 0 ? sheets[0].Project : string.Empty,
            stock?.Progress ?? Summary(lines.Count, lines.Count(line => line.Template.Made)),
            [
                .. sheets.Select(
                    sheet => new CoverLine(sheet.Line, sheet.Ends, sheet.Tube, sheet.CutLength, sheet.Fingerprint, sheet.Made)),
                .. Rough(stock),
            ],
            stock is null ? [TubeInAll(lines, notation)] : [.. StockSections.Of(stock, notation.Symbol)]);
    }

    /// <summary>Lines without a template have no sheet yet, and stand on the cover all the same.</summary>
    private static IEnumerable<CoverLine> Rough(StockContent? stock) => (stock?.Lines ?? [])
        .Where(line => line is { State: LineState.Rough, CutLength: not null })
        .Select(line => new CoverLine($"{line.Name} ({line.StateInWords})", line.Ends, line.Tube, line.CutLength!, "–", Made: false));

    private static string Summary(int lines, int made) => made switch
    {
        0 => FormattableString.Invariant($"{lines} lines, none of them made yet."),
        _ when made == lines => FormattableString.Invariant($"{lines} lines, all of them made."),
        _ => FormattableString.Invariant($"{lines} lines: {made} made, {lines - made} to make."),
    };

    /// <summary>By size and material, as a person would ask for it in a shop.</summary>
    private static CoverSection TubeInAll(IEnumerable<SolvedLine> lines, LengthNotation notation)
    {
        var rows = ImmutableArray.CreateBuilder<CoverRow>();
        foreach (var ofTube in lines.GroupBy(line => TubeWords.InWords(line.Template.Tube, notation), StringComparer.Ordinal))
        {
            var toMake = ofTube.Where(line => !line.Template.Made).ToList();
            rows.Add(Row($"{ofTube.Key}: {Counted.Words(ofTube.Count(), "line")}", ofTube));
            if (toMake.Count > 0 && toMake.Count < ofTube.Count())
            {
                rows.Add(Row($"{ofTube.Key}: of these, {Counted.Words(toMake.Count, "line")} still to make", toMake));
            }
        }

        return new("Tube in all (cut lengths added up)", rows.ToImmutable())
        {
            Remark = "Bare cut lengths: what each saw cut takes, practice pieces and what is left of a roll come on top.",
        };

        CoverRow Row(string what, IEnumerable<SolvedLine> some)
        {
            var length = some.Aggregate(Length.Zero, (sum, line) => sum + line.Plan!.CutLength);
            return new(what, notation.WithUnit(length)) { Other = notation.Other.WithUnit(length) };
        }
    }
}
