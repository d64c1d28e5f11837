using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;

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
            var name = parsed.GetRequiredValue(file);
            var solved = SolvedFile.Of(name, [], surroundings.StandardInput);
            var (benders, unknown) = BenderChoice.Of(solved.File, name, parsed.GetValue(bender) ?? []);
            surroundings.Error.Write(FindingText.Of([.. unknown, .. solved.Findings], solved.File.Source, surroundings.Colour));
            var code = ExitCodes.Of([.. unknown, .. solved.Findings]);

            // Of a wrong file no figure is shown: it might be made of a default in the place of what could not be read.
            if (code != ExitCodes.WrongInput)
            {
                surroundings.Output.Write(LearnedTools.Of(benders, solved.File.Notation));
            }

            return code;
        });
        return command;
    }
}
