using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>What was learned of each tool and how sure it is, in words for somebody who stands at the bench.</summary>
public static class LearnedTools
{
    /// <summary>
    /// Every tool, one below the other; a tool whose tests name tubes has a part for each of them. The steps for making a test stand below
    /// the first tool that has none.
    /// </summary>
    public static string Write(IEnumerable<Bender> benders, LengthNotation notation)
    {
        var parts = new List<string>();
        var stepsAreShown = false;
        foreach (var bender in benders)
        {
            foreach (var (tube, on) in Parts(bender))
            {
                var tool = BenderCalibration.Of(bender, tube);
                var isTested = tool is not { Springback.Law: SpringbackLaw.Unknown, Gain: null };
                var lines = isTested ? Tested(bender, tool, notation) : Untested(bender, tool, notation, stepsAreShown);
                stepsAreShown |= !isTested;
                parts.Add(string.Concat(lines.Prepend(Heading(bender, on, notation)).Select(line => line.TrimEnd() + "\n")));
            }
        }

        return string.Join('\n', parts);
    }

    /// <summary>An arc factor to a thousandth, which is a fiftieth of a millimetre in the bend of a small tool.</summary>
    internal static string Factor(double factor) => factor.ToString("0.000", CultureInfo.InvariantCulture);

    /// <summary>Which test of the file it is: its number in the bender, and where it stands.</summary>
    internal static string TestName(Bender bender, BenderTest test) =>
        string.Create(CultureInfo.InvariantCulture, $"test {bender.Tests.IndexOf(test) + 1} (line {test.At.Line})");

    private static IEnumerable<(Tube? Tube, string Words)> Parts(Bender bender)
    {
        var tubes = bender.Tests.Select(test => test.Tube).OfType<Tube>().Distinct().ToList();
        foreach (var tube in tubes)
        {
            yield return (tube, $", on tube {tube.Name}");
        }

        if (tubes.Count == 0 || bender.Tests.Any(test => test.Tube is null))
        {
            yield return (null, tubes.Count == 0 ? string.Empty : ", on any other tube");
        }
    }

    private static string Heading(Bender bender, string on, LengthNotation notation) =>
        $"{(bender.Name.Length == 0 ? "bender" : $"bender {bender.Name}")}, radius {notation.Size(bender.Radius)}{on}";

    private static IEnumerable<string> Untested(Bender bender, BenderCalibration tool, LengthNotation notation, bool stepsAreShown) =>
    [
        "  No tests yet: pull angles are not corrected, and the developed length assumes arc factor "
            + $"{Factor(tool.ArcFactor)}{InBrackets(tool)}.",
        .. stepsAreShown
            ? [$"  Test it as above, with a piece about {TestSteps.PieceLength(bender, notation)} long."]
            : TestSteps.Lines(bender, notation).Select(line => "  " + line),
    ];

    private static IEnumerable<string> Tested(Bender bender, BenderCalibration tool, LengthNotation notation) =>
    [
        .. LearnedPull.Lines(bender, tool.Springback).Select(line => "  " + line),
        .. LearnedLength.Lines(bender, tool, notation).Select(line => "  " + line),
        .. LearnedLine.Lines(bender, notation).Select(line => "  " + line),
        $"  Used on your sheets: {PullInForce(tool.Springback)}; arc factor {Factor(tool.ArcFactor)}{InBrackets(tool)}"
            + $"{LearnedLine.Used(bender, notation)}.",
    ];

    private static string PullInForce(Springback springback) => springback.Law switch
    {
        SpringbackLaw.Unknown => "pull angles not corrected",
        SpringbackLaw.Proportion => "pull angles in proportion to the tests",
        _ => "pull angles by the line through the tests",
    };

    private static string InBrackets(BenderCalibration tool) => tool.Source switch
    {
        ArcFactorSource.Learned => " (from the test pieces)",
        ArcFactorSource.Typed when tool.Gain is not null =>
            " (as typed, which counts more than the test pieces: take `arc-factor` out to use theirs)",
        ArcFactorSource.Typed => " (as typed)",
        _ => " (no test piece)",
    };
}
