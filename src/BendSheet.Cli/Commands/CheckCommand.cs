using System.Collections.Immutable;
using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet check</c>: is the file right, and can the lines be made?</summary>
internal static class CheckCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var line = FileOptions.Line();
        var command = new ExampleCommand(
            "check",
            "Reads the file and says everything that is wrong with it, or cannot be made, and what would make it right.",
            ("bendsheet check finch.yaml", "Looks at every line of the file."))
        {
            file,
            line,
        };
        command.SetAction(parsed =>
        {
            var name = parsed.GetRequiredValue(file);
            var typed = TypedFile.Read(name, surroundings.StandardInput);
            var plan = CarPlan.Of(typed, parsed.GetValue(line) ?? []);
            var findings = plan.IsWhole ? OfFileAndStock(plan) : plan.Findings;
            surroundings.Error.Write(FindingText.Write(findings, typed.Source, surroundings.Colour));
            surroundings.Output.WriteLine(CheckSummary.Write(name, plan, findings));
            return ExitCodes.For(findings.Verdict());
        });
        return command;
    }

    /// <summary>How far the search for a cutting plan came is no matter of the file.</summary>
    private static ImmutableArray<Finding> OfFileAndStock(CarPlan plan) =>
        [.. plan.Stock.Findings.Where(finding => finding.Rule != StockRules.NotProven)];
}
