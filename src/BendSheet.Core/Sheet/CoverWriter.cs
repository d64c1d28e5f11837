using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds what the cover says. Lengths are added up exactly and rounded once.</summary>
public static class CoverWriter
{
    /// <summary>The cover of some lines.</summary>
    /// <param name="lines">With plans, in the order of the file.</param>
    /// <param name="sheets">Their sheets, in the same order.</param>
    /// <param name="notation">How lengths are written.</param>
    public static CoverContent Of(IReadOnlyList<SolvedLine> lines, IReadOnlyList<SheetContent> sheets, LengthNotation notation)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(notation);
        return new(
            sheets.Count > 0 ? sheets[0].Project : string.Empty,
            Summary(lines.Count, lines.Count(line => line.Template.Made)),
            [.. sheets.Select(sheet => new CoverLine(sheet.Line, sheet.Ends, sheet.Tube, sheet.CutLength, sheet.Fingerprint, sheet.Made))],
            [TubeInAll(lines, notation)]);
    }

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
        foreach (var ofTube in lines.GroupBy(line => SheetWriter.TubeInWords(line.Template.Tube, notation), StringComparer.Ordinal))
        {
            var toMake = ofTube.Where(line => !line.Template.Made).ToList();
            rows.Add(Row($"{ofTube.Key}: {Count(ofTube.Count())}", ofTube));
            if (toMake.Count > 0 && toMake.Count < ofTube.Count())
            {
                rows.Add(Row($"{ofTube.Key}: of these, {Count(toMake.Count)} still to make", toMake));
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

    private static string Count(int lines) => lines == 1 ? "1 line" : FormattableString.Invariant($"{lines} lines");
}
