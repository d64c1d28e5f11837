using BendSheet.Core.Bench;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>The clips in words: how many to buy, what to drill, where they go.</summary>
internal static class ClipWords
{
    /// <summary>Two sentences; none where there are no clips.</summary>
    public static IEnumerable<string> Of(LineTemplate template, ClipPlan? clips, BenchPlan plan, LengthNotation notation)
    {
        if (clips is not { Clips: { Length: > 0 and var count } placed })
        {
            yield break;
        }

        var holes = template.Clips?.Hole is { } hole ? $", {Counted.Words(count, "hole")} of {notation.Size(hole)}" : string.Empty;
        var apart = count == 1 ? string.Empty : $", at most {notation.WithUnit(clips.Longest)} apart";
        yield return $"{Counted.Words(count, "clip")}{apart}{holes}.";
        yield return $"Middles from {SheetWriter.DatumName(plan)}, "
            + $"{(plan.Bends.IsEmpty ? "to be marked before it is fitted" : "to be marked with the bends")}: "
            + $"{string.Join(", ", placed.Select(clip => notation.Figure(clip.Mark - plan.Datum)))} {notation.Symbol}.";
    }
}
