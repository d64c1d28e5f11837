using System.CommandLine;
using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet start</c>: a small file to fill in.</summary>
internal static class StartCommand
{
    private const string DefaultName = "brake-lines.yaml";
    private const string StandardOutput = "-";

    public static Command Create(Surroundings surroundings)
    {
        var file = new Argument<string>("FILE")
        {
            Description = "The file to write, - for standard output. One that is there already is never touched.",
            Arity = ArgumentArity.ZeroOrOne,
            DefaultValueFactory = _ => DefaultName,
        };
        var command = new ExampleCommand(
            "start",
            "Writes a small file with comments, to fill in with your own measurements.",
            ("bendsheet start", $"Writes {DefaultName} in this folder."),
            ("bendsheet start clutch.yaml", "The same under another name."))
        {
            file,
        };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            if (string.Equals(path, StandardOutput, StringComparison.Ordinal))
            {
                surroundings.Output.Write(StarterFile.Text);
                return ExitCodes.Done;
            }

            var problem = OutputFile.WriteNew(path, Encoding.UTF8.GetBytes(StarterFile.Text));
            if (problem is not null)
            {
                surroundings.Error.WriteLine($"bendsheet: {Visible.Text(path)} was not written: {problem}");
                return ExitCodes.NotWritten;
            }

            surroundings.Output.WriteLine($"{Visible.Text(path)}: fill it in, then `bendsheet check {Visible.Text(path)}`.");
            return ExitCodes.Done;
        });
        return command;
    }
}
