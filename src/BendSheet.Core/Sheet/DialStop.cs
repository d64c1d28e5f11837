using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>A reading of the dial at which bends are made.</summary>
/// <param name="Reading">From 0° to below 360°.</param>
/// <param name="Label">The same as it is printed.</param>
/// <param name="Bends">Numbers of the bends: <c>2, 5</c>.</param>
public sealed record DialStop(Angle Reading, string Label, string Bends)
{
    /// <summary>Bends that print the same reading share a stop. By reading, from 0° on.</summary>
    internal static IEnumerable<DialStop> Of(BenchPlan plan) => plan.Bends
        .GroupBy(bend => AngleNotation.Dial(bend.Dial), StringComparer.Ordinal)
        .Select(same => new DialStop(
            same.First().Dial.OnDial(),
            same.Key,
            string.Join(", ", same.Select(bend => FormattableString.Invariant($"{bend.Number}")))))
        .OrderBy(stop => stop.Reading);
}
