using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>Taped distances by their two corners: every corner from 0 to the last is named, no pair twice.</summary>
internal sealed class DistanceTable
{
    /// <summary>More corners than any brake line has; from here on a number is a slip of the finger, and would only cost time.</summary>
    private const int MostCorners = 100;

    /// <summary>Longer than any car.</summary>
    private static readonly Length Longest = Length.FromMillimetres(100_000);

    private readonly Dictionary<(int From, int To), TapedDistance> _byCorners;

    private readonly Length _tape;

    private DistanceTable(ImmutableArray<TapedDistance> all, int last, Length tape)
    {
        _tape = tape;
        All = all;
        Last = last;
        _byCorners = all.ToDictionary(taped => (taped.From, taped.To));
    }

    /// <summary>In the order they were given, <see cref="TapedDistance.From"/> below <see cref="TapedDistance.To"/>.</summary>
    public ImmutableArray<TapedDistance> All { get; }

    /// <summary>The number of end B, one more than bends.</summary>
    public int Last { get; }

    /// <summary>The distances as typed, put in order.</summary>
    /// <param name="distances">In any order.</param>
    /// <param name="tape">One standard deviation of a distance that does not say its own.</param>
    /// <param name="at">Where they were typed as a whole.</param>
    /// <param name="findings">Where findings are added.</param>
    /// <returns>Null where the corners are not counted properly. The first of two figures for one pair stays, beside the finding.</returns>
    public static DistanceTable? Of(IReadOnlyList<TapedDistance> distances, Length tape, SourcePosition at, List<Finding> findings)
    {
        var seen = new Dictionary<(int, int), TapedDistance>();
        var usable = ImmutableArray.CreateBuilder<TapedDistance>();
        var counted = true;
        foreach (var taped in distances.Select(InOrder))
        {
            if (taped.From < 0 || taped.To > MostCorners)
            {
                findings.Add(TapedRules.CornerNumbers.Error(
                    taped.At,
                    $"distance {taped.Name} names a corner that cannot be: end A is 0, and no line has more than {MostCorners} corners"));
                counted = false;
            }
            else if (Unusable(taped) is { } why)
            {
                findings.Add(TapedRules.NoDistance.Error(taped.At, why));
                counted = false;
            }
            else if (seen.TryGetValue((taped.From, taped.To), out var first))
            {
                findings.Add(TapedRules.DistanceSaidTwice.Error(
                    taped.At,
                    $"distance {taped.Name} is here a second time: {FindingFigures.Mm(first.Distance)} before, "
                        + $"{FindingFigures.Mm(taped.Distance)} now; keep one, or measure it again"));
            }
            else
            {
                seen.Add((taped.From, taped.To), taped);
                usable.Add(taped);
            }
        }

        if (!counted)
        {
            return null;
        }

        var last = usable.Count == 0 ? 1 : usable.Max(taped => taped.To);
        return usable.Count > 0 && HasGap(usable, last, at, findings) ? null : new(usable.ToImmutable(), last, tape);
    }

    /// <summary>Null where it was not taped.</summary>
    public TapedDistance? Between(int from, int to) => _byCorners.GetValueOrDefault((from, to));

    /// <summary>A distance to be met, with its weight.</summary>
    public TapedSpan SpanOf(TapedDistance taped)
    {
        var surer = taped.Within is { } within ? _tape.Millimetres / Math.Max(Surest, within.Millimetres) : 1;
        return new(taped.From, taped.To, taped.Distance.Millimetres, surer * surer);
    }

    /// <summary>What was typed as exact still gives way by less than a tape shows, in millimetres.</summary>
    private const double Surest = 0.05;

    private static TapedDistance InOrder(TapedDistance taped) =>
        taped.From <= taped.To ? taped : taped with { From = taped.To, To = taped.From };

    private static string? Unusable(TapedDistance taped) =>
        taped.From == taped.To ? $"distance {taped.Name} goes from corner {taped.From} to itself: name two different corners"
        : taped.Distance <= Tolerances.SamePoint
            ? $"distance {taped.Name} is {FindingFigures.Mm(taped.Distance)}: two corners lie apart, measure it again"
        : taped.Distance > Longest ? $"distance {taped.Name} is {FindingFigures.Mm(taped.Distance)}, longer than any car: measure it again"
        : null;

    private static bool HasGap(ImmutableArray<TapedDistance>.Builder usable, int last, SourcePosition at, List<Finding> findings)
    {
        var named = usable.SelectMany(taped => new[] { taped.From, taped.To }).ToHashSet();
        var missing = Enumerable.Range(0, last).Where(corner => !named.Contains(corner)).ToList();
        if (missing.Count == 0)
        {
            return false;
        }

        findings.Add(TapedRules.CornerNumbers.Error(
            at,
            $"no distance names {Counted.Noun(missing.Count, "corner")} {string.Join(", ", missing)}, but one names corner {last}: "
            + $"count the corners from end A (0) without a gap, or measure the distances to {Counted.Noun(missing.Count, "it", "them")}"));
        return true;
    }
}
