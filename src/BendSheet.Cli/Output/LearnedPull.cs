using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>What test bends say about pulling: a small table, each test against it, and what one test more would bring.</summary>
internal static class LearnedPull
{
    /// <summary>A protractor on tube is not read finer than this.</summary>
    private static readonly Angle Readable = Angle.FromDegrees(0.5);

    private static readonly Angle[] Usual = [.. new[] { 15.0, 30, 45, 60, 90 }.Select(Angle.FromDegrees)];

    private static readonly Angle[] Large = [.. new[] { 120.0, 180 }.Select(Angle.FromDegrees)];

    /// <summary>The lines of the part.</summary>
    public static IEnumerable<string> Lines(Bender bender, Springback springback)
    {
        if (springback.Law == SpringbackLaw.Unknown)
        {
            return
            [
                "Springback: no test says what the tool was pulled to, so pull angles are not corrected.",
                "  At the next test, read the tool's scale before you let go (`pull`), and the bend after (`got`).",
            ];
        }

        return
        [
            $"Springback, from {Counted.Words(springback.Tests.Length, "test bend")}:",
            .. Table(bender, springback).Select(line => "  " + line),
            .. Tests(bender, springback).Select(line => "  " + line),
            .. Next(bender, springback).Select(line => "  " + line),
        ];
    }

    private static IEnumerable<Angle> Angles(Bender bender, Springback springback) =>
        Usual.Where(angle => angle <= (bender.LargestBend ?? angle))
            .Concat(Large.Where(angle => bender.LargestBend is { } largest ? angle <= largest : springback.Covers(angle)));

    private static IEnumerable<string> Table(Bender bender, Springback springback)
    {
        var angles = Angles(bender, springback).ToList();
        var isKnown = springback.Uncertainty(springback.Largest) is not null;
        yield return Row("bend", "pull to", isKnown ? "±" : string.Empty, string.Empty);
        foreach (var angle in angles)
        {
            var pull = springback.Pull(angle);
            string?[] remarks =
            [
                springback.Covers(angle) ? null : "outside the tested bends",
                pull > bender.LargestBend ? $"the tool stops at {AngleNotation.Figure(bender.LargestBend.Value)}" : null,
            ];
            yield return Row(
                AngleNotation.Figure(angle),
                AngleNotation.Figure(pull),
                springback.Uncertainty(angle) is { } either ? AngleNotation.Figure(either) : string.Empty,
                string.Join("; ", remarks.OfType<string>()));
        }

        if (isKnown)
        {
            yield return "±: of 20 bends made like the tests, 19 should need a pull within it.";
        }
    }

    private static string Row(string bend, string pull, string either, string remark) =>
        string.Create(CultureInfo.InvariantCulture, $"{bend,5}{pull,9}{either,8}  {remark}").TrimEnd();

    private static IEnumerable<string> Tests(Bender bender, Springback springback)
    {
        var by = springback.Law == SpringbackLaw.Line ? "by the line" : "in proportion";
        var sizes = springback.Tests.Select(test => Math.Abs(springback.Residual(test).Degrees)).ToList();
        var worst = sizes.Max();
        for (var i = 0; i < springback.Tests.Length; i++)
        {
            var test = springback.Tests[i];
            var off = Angle.FromDegrees(sizes[i]);
            var isWorst = sizes.Count > 2 && sizes[i] >= worst && off.Degrees >= 0.05;
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{LearnedTools.TestName(bender, test)}: pulled to {AngleNotation.Figure(test.Pull!.Value)}, came to "
                    + $"{AngleNotation.Figure(test.Got)}; {by} {AngleNotation.Figure(test.Pull.Value + -springback.Residual(test))} "
                    + $"({AngleNotation.Figure(off)} off{(isWorst ? ", the worst" : string.Empty)})");
        }
    }

    private static IEnumerable<string> Next(Bender bender, Springback springback)
    {
        var largest = springback.Largest.Degrees;
        if (springback.Law == SpringbackLaw.Proportion)
        {
            var other = largest >= 60 ? 30 : Math.Min(90, bender.LargestBend?.Degrees ?? 90);
            var have = springback.Tests.Length == 1 ? "One test" : "All tests are of about one bend";
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"{have}: pull and bend are taken in proportion, which is rough far from {AngleNotation.Figure(springback.Largest)}. "
                    + $"Bend one more, near {other:0}°: two give a line.");
        }
        else if (springback.Uncertainty(springback.Largest) is null)
        {
            var middle = Math.Round((springback.Smallest.Degrees + largest) / 2 / 5) * 5;
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Two tests: the line goes through both, so nothing shows how far to trust it. Bend one more, near {middle:0}°.");
        }
        else
        {
            var at = Angles(bender, springback).Where(springback.Covers).DefaultIfEmpty(springback.Largest)
                .MaxBy(angle => springback.Uncertainty(angle)!.Value.Degrees);
            var (now, then) = (springback.Uncertainty(at)!.Value, springback.UncertaintyWithOneMore(at)!.Value);
            yield return now <= Readable
                ? "The tests lie on the line as well as a protractor can show it: count on half a degree, not on less."
                : $"One more test near {AngleNotation.Figure(at)}, as good as these, would bring ± there from "
                    + $"{AngleNotation.Figure(now)} to about {AngleNotation.Figure(then)}.";
        }
    }
}
