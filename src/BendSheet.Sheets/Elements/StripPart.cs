using BendSheet.Core.Sheet;
using BendSheet.Core.Units;

namespace BendSheet.Sheets.Elements;

/// <summary>A part of the straight tube that is drawn in one row.</summary>
/// <param name="From">From the cut end of A.</param>
/// <param name="To">From the cut end of A.</param>
/// <param name="Bends">Whose marks lie on it, from end A.</param>
/// <param name="HasA">It begins with end A.</param>
/// <param name="HasB">It ends with end B.</param>
/// <param name="HasTrim">It has a piece that is cut off on the car.</param>
/// <param name="Scale">Paper to tube.</param>
internal sealed record StripPart(Length From, Length To, IReadOnlyList<StripBend> Bends, bool HasA, bool HasB, bool HasTrim, double Scale)
{
    /// <summary>For the letters at both ends, in millimetres.</summary>
    public const double EndRoom = 7;

    /// <summary>Where a place on the tube lies on paper, from the left of the type area.</summary>
    public double At(Length place) => EndRoom + ((place - From).Millimetres * Scale);

    /// <summary>As many parts as are needed, with about the same number of bends, each cut between two bends.</summary>
    /// <param name="strip">The tube.</param>
    /// <param name="bends">Its bends, by their marks.</param>
    /// <param name="most">Bends in a part.</param>
    /// <param name="width">Of the type area.</param>
    public static IReadOnlyList<StripPart> Of(Strip strip, IReadOnlyList<StripBend> bends, int most, double width)
    {
        var count = Math.Max(1, (bends.Count + most - 1) / most);
        var chunks = Enumerable.Range(0, count).Select(i => bends.Take((i * bends.Count / count)..((i + 1) * bends.Count / count)).ToList())
            .ToList();
        List<Length> cuts =
        [
            Length.Zero,
            .. Enumerable.Range(1, count - 1).Select(i => 0.5 * (chunks[i - 1][^1].Mark + chunks[i][0].Mark)),
            strip.Length,
        ];
        var longest = cuts.Zip(cuts.Skip(1), (from, to) => (to - from).Millimetres).Max();
        var scale = (width - (2 * EndRoom)) / longest;
        return [.. chunks.Select((chunk, i) => new StripPart(
            cuts[i], cuts[i + 1], chunk, i == 0, i == count - 1, i == count - 1 && strip.Trim > Length.Zero, scale))];
    }
}
