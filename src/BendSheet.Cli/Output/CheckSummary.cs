using System.Collections.Immutable;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Output;

/// <summary>One line that says how a check came out.</summary>
public static class CheckSummary
{
    /// <summary><c>first-taped.yaml: 1 line, cut length in all 453.0 mm (17 27/32 in); no findings</c>.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="plan">Its lines.</param>
    /// <param name="found">All that was said of them.</param>
    public static string Write(string name, CarPlan plan, ImmutableArray<Finding> found)
    {
        var plans = plan.Lines.Select(line => line.Plan).OfType<Core.Bench.BenchPlan>().ToList();
        var counts = new[]
        {
            Any(found.Count(finding => finding.Severity == Severity.Error), "error"),
            Any(found.Count(finding => finding.Severity == Severity.Warning), "warning"),
            Any(found.Count(finding => finding.Severity == Severity.Note), "note"),
        };
        var findings = string.Join(", ", counts.OfType<string>());
        var isWrong = plan.Measured.Findings.Verdict() == Verdict.WrongFile;
        var sound = plan.Lines.Length + plan.RoughLines.Length;
        var all = plan.Measured.LineNames.Length;
        var good = plan.Printable.Count() + plan.RoughLines.Length;
        var lines = !isWrong || !plan.IsWhole ? Any(sound, "line")
            : all == 0 ? null
            : $"{good} of {Counted.Words(all, "line")} without a mistake";
        var rough = plan.RoughLines.Aggregate(Length.Zero, (sum, line) => sum + line.Length);
        var tube = !isWrong && plans.Count == plan.Lines.Length && plans.Count + plan.RoughLines.Length > 0
            ? ", cut length in all "
                + $"{plan.Measured.Notation.InBoth(plans.Aggregate(Length.Zero, (sum, plan) => sum + plan.CutLength) + rough)}"
            : string.Empty;
        return $"{Visible.Text(name)}: "
            + $"{(lines is null ? string.Empty : $"{lines}{tube}; ")}{(findings.Length == 0 ? "no findings" : findings)}";
    }

    private static string? Any(int count, string what) => count == 0 ? null : Counted.Words(count, what);
}
