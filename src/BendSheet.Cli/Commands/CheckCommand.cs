using System.CommandLine;
using BendSheet.Cli.Output;

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
            var solved = FileOptions.ReadAndReport(parsed, file, line, surroundings);
            surroundings.Output.WriteLine(CheckSummary.Of(parsed.GetRequiredValue(file), solved));
            return solved.ExitCode;
        });
        return command;
    }
}
