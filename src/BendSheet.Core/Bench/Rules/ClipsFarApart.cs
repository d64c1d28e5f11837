using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// The clips are further apart than aircraft practice allows steel tube of that size. A warning: it is no rule for cars, but the only
/// figures that are published by size.
/// </summary>
/// <remarks>
/// MIL-H-8891A, Table II, along the tube between the middles of supports, from 1/4 in up. Its smaller sizes could not be read; those two
/// are what FAA-H-8083-30, Table 7-5, gives for steel, from memory.
/// </remarks>
public static class ClipsFarApart
{
    private const string Published = "MIL-H-8891A, Table II,";
    private const string Remembered = "FAA-H-8083-30, Table 7-5 (from memory, check),";

    /// <summary>A metric size that is sold for an inch size counts as that size, such as 4.75 mm for 3/16 in.</summary>
    private const double SameSizeMm = 0.05;

    /// <summary>Inches.</summary>
    private static readonly (double Size, double Spacing, string Source)[] Largest =
    [
        (1.0 / 8, 11.5, Remembered),
        (3.0 / 16, 14, Remembered),
        (1.0 / 4, 16, Published),
        (5.0 / 16, 18, Published),
        (3.0 / 8, 20, Published),
        (1.0 / 2, 23, Published),
        (5.0 / 8, 25.5, Published),
        (3.0 / 4, 27.5, Published),
        (1, 30, Published),
        (1.25, 31.5, Published),
        (1.5, 32.5, Published),
    ];

    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "clips-far-apart", RuleSubject.Making, "Clips too far apart let the line shake until it fatigues and cracks.");

    /// <summary>A finding at the spacing asked for; a size between two of the table is held to the smaller one.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template)
    {
        var diameter = template.Tube.OutsideDiameter.Millimetres + SameSizeMm;
        var row = Largest.LastOrDefault(row => Length.FromInches(row.Size).Millimetres <= diameter);
        if (template.Clips is { } wish && row.Source is { } source && Length.FromInches(row.Spacing).FallsShortOf(wish.Every))
        {
            yield return Rule.Warning(
                wish.EveryAt,
                $"line {template.Name} asks for a clip every {FindingFigures.Mm(wish.Every)}, further apart than the "
                    + $"{FindingFigures.Mm(Length.FromInches(row.Spacing))} that {source} gives for steel tube of "
                    + $"{FindingFigures.Mm(Length.FromInches(row.Size))}: make `every` at most "
                    + $"{FindingFigures.DownMm(Length.FromInches(row.Spacing))}");
        }
    }
}
