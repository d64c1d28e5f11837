using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>What was learned of each tool and how sure it is, in words for somebody who stands at the bench.</summary>
public static class LearnedTools
{
    /// <summary>Every tool, one below the other; a tool whose tests name tubes has a part for each of them.</summary>
    public static string Of(IEnumerable<Bender> benders, LengthNotation notation) =>
        string.Join('\n', benders.SelectMany(bender => Parts(bender).Select(part => Part(bender, part.Tube, part.Words, notation))));

    /// <summary>One of something, or several.</summary>
    internal static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? string.Empty : "s")}");

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

    private static string Part(Bender bender, Tube? tube, string on, LengthNotation notation)
    {
        var tool = LearnedTool.Of(bender, tube);
        var name = bender.Name.Length == 0 ? "bender" : $"bender {bender.Name}";
        List<string> lines = [$"{name}, radius {notation.Size(bender.Radius)}{on}"];
        if (tool is { Springback.Law: SpringbackLaw.Unknown, Gain: null })
        {
            lines.Add("  No tests yet: pull angles are not corrected, and the developed length assumes arc factor " + Factor(tool.ArcFactor) + InBrackets(tool) + ".");
            lines.AddRange(TestSteps.Of(bender, notation).Select(line => "  " + line));
        }
        else
        {
            lines.AddRange(LearnedPull.Of(bender, tool.Springback).Select(line => "  " + line));
            lines.AddRange(LearnedLength.Of(bender, tool, notation).Select(line => "  " + line));
            lines.Add($"  In force: {PullInForce(tool.Springback)}; arc factor {Factor(tool.ArcFactor)}{InBrackets(tool)}.");
        }

        return string.Concat(lines.Select(line => line.TrimEnd() + "\n"));
    }

    private static string PullInForce(Springback springback) => springback.Law switch
    {
        SpringbackLaw.Unknown => "pull angles not corrected",
        SpringbackLaw.Proportion => "pull angles in proportion to the tests",
        _ => "pull angles by the line through the tests",
    };

    private static string InBrackets(LearnedTool tool) => tool.Source switch
    {
        ArcFactorSource.Learned => " (from the test pieces)",
        ArcFactorSource.Typed when tool.Gain is not null => " (as typed, which counts more than the test pieces: take `arc-factor` out to use theirs)",
        ArcFactorSource.Typed => " (as typed)",
        _ => " (no test piece)",
    };
}
