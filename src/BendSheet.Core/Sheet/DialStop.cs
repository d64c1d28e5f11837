using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Where the pen line stands at bends that are made with it there.</summary>
/// <param name="Reading">As in the table, from 0° to below 360°.</param>
/// <param name="Label">The same as it is printed.</param>
/// <param name="Bends">Numbers of the bends.</param>
public sealed record DialStop(Angle Reading, string Label, ImmutableArray<int> Bends)
{
    /// <summary>The bends in a sentence: <c>bends 2, 5</c>.</summary>
    public string BendsInWords => (Bends.Length == 1 ? "bend " : "bends ") + Listed(Bends);

    /// <summary>As many of the numbers as are read at a glance.</summary>
    /// <param name="most">Characters.</param>
    public string BendsShown(int most)
    {
        if (Listed(Bends) is var all && all.Length <= most)
        {
            return all;
        }

        var shown = Bends.Length - 1;
        while (shown > 1 && Listed(Bends[..shown]).Length + 1 > most)
        {
            shown--;
        }

        return Listed(Bends[..shown]) + " …";
    }

    private static string Listed(ImmutableArray<int> bends) =>
        string.Join(", ", bends.Select(bend => bend.ToString(CultureInfo.InvariantCulture)));

    /// <summary>Bends that print the same figure share a stop. In order, from 0° on.</summary>
    internal static IEnumerable<DialStop> Of(BenchPlan plan) => plan.Bends
        .GroupBy(bend => AngleNotation.Dial(bend.LineAt), StringComparer.Ordinal)
        .Select(same => new DialStop(
            same.First().LineAt,
            same.Key,
            [.. same.Select(bend => bend.Number)]))
        .OrderBy(stop => stop.Reading);
}
