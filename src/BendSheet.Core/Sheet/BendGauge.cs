using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>A bend of a line as it is drawn at full size to hold the tube against. Bends that print the same figures share one.</summary>
/// <param name="Turn">The finished angle.</param>
/// <param name="Pull">What the tool is pulled to.</param>
/// <param name="Radius">To the centreline.</param>
/// <param name="Leg">The shortest straight beside any of them: a gauge with longer legs would strike the next bend.</param>
/// <param name="Bends">Which bends: <c>bend 3</c>, <c>bends 1, 4</c>.</param>
public sealed record BendGauge(Angle Turn, Angle Pull, Length Radius, Length Leg, string Bends)
{
    /// <summary>The finished angle as it is printed.</summary>
    public required string TurnLabel { get; init; }

    /// <summary>What the tool is pulled to, as it is printed; null where it is the finished angle.</summary>
    public required string? PullLabel { get; init; }

    /// <summary>The radius as it is printed.</summary>
    public required string RadiusLabel { get; init; }

    /// <summary>From the start of the bend straight across to its end, as it is printed.</summary>
    public required string Chord { get; init; }


    /// <summary>One for every different bend, in the order in which they first come from end A.</summary>
    internal static IEnumerable<BendGauge> Of(BenchPlan plan, LengthNotation notation)
    {
        foreach (var same in plan.Bends.GroupBy(bend => (
            Turn: AngleNotation.Figure(bend.Bend.Turn),
            Pull: AngleNotation.Figure(bend.Pull),
            Radius: notation.Size(bend.Bender.Radius))))
        {
            var bend = same.First();
            var numbers = string.Join(", ", same.Select(one => FormattableString.Invariant($"{one.Number}")));
            yield return new(
                bend.Bend.Turn,
                bend.Pull,
                bend.Bender.Radius,
                same.Min(one => Shorter(StraightBefore(plan, one), one.StraightAfter)),
                (same.Skip(1).Any() ? "bends " : "bend ") + numbers)
            {
                TurnLabel = same.Key.Turn,
                PullLabel = string.Equals(same.Key.Pull, same.Key.Turn, StringComparison.Ordinal) ? null : same.Key.Pull,
                RadiusLabel = same.Key.Radius,
                Chord = notation.WithUnit(2 * Math.Sin(bend.Bend.Turn.Radians / 2) * bend.Bender.Radius),
            };
        }
    }

    private static Length StraightBefore(BenchPlan plan, BenchBend bend) =>
        bend.Number == 1 ? plan.FirstStraight : plan.Bends[bend.Number - 2].StraightAfter;

    private static Length Shorter(Length one, Length other) => one < other ? one : other;
}
