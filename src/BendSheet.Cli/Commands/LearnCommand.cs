using System.Collections.Immutable;
using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet learn</c>: what the test bends say of each tool, and how sure it is.</summary>
internal static class LearnCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var bender = new Option<string[]>("--bender")
        {
            Description = "Only this bender; may be given several times. Without it, every bender of the file.",
            HelpName = "NAME",
        };
        var command = new ExampleCommand(
            "learn",
            "Says what the test bends of each bender show: how far to pull, how much tube a bend takes up, and how sure that is.",
            ("bendsheet learn finch.yaml", "Every bender of the file; one without tests gets the steps for making them."))
        {
            file,
            bender,
        };
        command.SetAction(parsed =>
        {
            var typed = TypedFile.Read(parsed.GetRequiredValue(file), surroundings.StandardInput);
            var (benders, unknown) = Choice.Benders(typed, parsed.GetValue(bender) ?? []);

            // How sure a line is says nothing of a tool, and a tool can be learned before any line is typed.
            ImmutableArray<Finding> findings = typed.Findings.Verdict() == Verdict.WrongFile
                ? [.. unknown, .. typed.FindingsOfTools]
                : [.. unknown, .. CarPlan.Of(typed, []).Findings.Where(finding => finding.Rule != SurveyRules.FarEndUnsure)];
            surroundings.Error.Write(FindingText.Write(findings, typed.Source, surroundings.Colour));
            var verdict = findings.Verdict();
            if (verdict != Verdict.WrongFile)
            {
                surroundings.Output.Write(LearnedTools.Write(benders, typed.Notation));
            }

            return ExitCodes.For(verdict);
        });
        return command;
    }
}
