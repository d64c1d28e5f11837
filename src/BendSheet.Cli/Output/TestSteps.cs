using System.Globalization;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>How to test a tool with a ruler and a protractor. Common practice, no source.</summary>
internal static class TestSteps
{
    /// <summary>The steps, one on a line.</summary>
    public static IEnumerable<string> Lines(Bender bender, LengthNotation notation)
    {
        var bend = Math.Min(90, bender.LargestBend?.Degrees ?? 90).ToString("0.#", CultureInfo.InvariantCulture);
        return
        [
            "How to test it, with a ruler and a protractor:",
            $"  1. Cut a straight piece of the tube square at both ends, about {PieceLength(bender, notation)} long. Measure it: `length`.",
            "  2. Pen a mark in its middle and bring it under the tool's line. From the end of the side that is held to it is `mark`.",
            $"  3. Bend it once, until the tool's scale shows {bend}° or a little more. What it shows is `pull`.",
            "  4. Let go and take the tube out. How far it turns now (90 = a square corner) is `got`.",
            "  5. Lay it flat. Measure both legs, that of the held side first, each from its end to the corner where the outside faces "
                + "would "
                + "meet: `legs`, `measured: outside`.",
            "  6. Write it below the bender in the file: `tests: [{pull: …, got: …, length: …, legs: […, …], measured: outside, mark: "
                + "…}]`.",
            "  7. Do it again with another piece, and pull one each to about 30° and 45° (`pull` and `got` are enough). Then run this "
                + "again.",
        ];
    }

    /// <summary>Long enough to hold on both sides of the bend: some twelve radii.</summary>
    public static string PieceLength(Bender bender, LengthNotation notation)
    {
        var (step, least) = notation.Imperial
            ? (Length.FromInches(1), Length.FromInches(8))
            : (Length.FromMillimetres(50), Length.FromMillimetres(200));
        var needed = Math.Ceiling(12 * bender.Radius / step) * step;
        return notation.Size(needed > least ? needed : least);
    }
}
