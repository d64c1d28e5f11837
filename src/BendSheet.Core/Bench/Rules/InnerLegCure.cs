using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// What makes a leg inside an offset or a saddle long enough: nobody measured it, so the words of its row are what can be changed.
/// </summary>
internal static class InnerLegCure
{
    /// <summary>Below this a bend is no cure that anybody could make.</summary>
    private const double SmallestBendDegrees = 1;

    /// <summary>What to type, with figures that fit: a bend rounded down, a length up.</summary>
    /// <param name="inner">Where the leg comes from.</param>
    /// <param name="length">Of the leg, corner to corner.</param>
    /// <param name="before">The bend at its start.</param>
    /// <param name="after">The bend at its end, on the same tool.</param>
    public static string InWords(InnerLeg inner, Length length, BendLayout before, BendLayout after)
    {
        var radius = before.Radius;
        if (inner.Kind == InnerLegKind.FourBendTop)
        {
            return Either(
                AtLeast("width", before.Setback!.Value + after.Setback!.Value),
                AtMost("bend", Angle.FromRadians(2 * Math.Atan(length / (2 * radius)))));
        }

        var largest = inner.LargestSlope(radius);
        if (!inner.SlopeFromSpan)
        {
            return Either(AtLeast(inner.HeightWord, inner.LeastHeight(inner.Slope) * radius), AtMost("bend", largest));
        }

        var sides = inner.Kind == InnerLegKind.OffsetSlope ? 1 : 2;
        return AtLeast(inner.SpanWord, sides / Math.Tan(largest.Radians) * inner.Height);
    }

    /// <summary>What puts the bends at its ends further apart, without figures.</summary>
    public static string Apart(InnerLeg inner) => inner.Kind == InnerLegKind.FourBendTop ? "a larger `width`"
        : inner.SlopeFromSpan ? $"a larger `{inner.SpanWord}`"
        : $"a larger `{inner.HeightWord}` or a smaller `bend`";

    private static string Either(string first, string? second) => second is null ? first : $"{first}, or {second}";

    private static string AtLeast(string word, Length least) => $"`{word}` {FindingFigures.UpMm(least)} or more";

    private static string? AtMost(string word, Angle most)
    {
        var tenths = Math.Floor((most.Degrees * 10) + 1e-6) / 10;
        return tenths < SmallestBendDegrees ? null : string.Create(CultureInfo.InvariantCulture, $"`{word}` {tenths:0.#}° or less");
    }
}
