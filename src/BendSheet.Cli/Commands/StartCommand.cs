using System.CommandLine;
using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet start</c>: a small file to fill in.</summary>
internal sealed class StartCommand : ExampleCommand
{
    private const string DefaultName = "brake-lines.yaml";
    private const string StandardOutput = "-";

    private readonly Argument<string> _file = new("FILE")
    {
        Description = "The file to write, - for standard output. One that is there already is never touched.",
        Arity = ArgumentArity.ZeroOrOne,
        DefaultValueFactory = _ => DefaultName,
    };

    public StartCommand(Surroundings surroundings)
        : base(
            "start",
            "Writes a small file with comments, to fill in with your own measurements.",
            ("bendsheet start", $"Writes {DefaultName} in this folder."),
            ("bendsheet start clutch.yaml", "The same under another name."))
    {
        Add(_file);
        _file.Validators.Add(UsageErrors.RefuseOption);
        SetAction(parsed => Write(parsed.GetRequiredValue(_file), surroundings));
    }

    private static int Write(string path, Surroundings surroundings)
    {
        if (string.Equals(path, StandardOutput, StringComparison.Ordinal))
        {
            surroundings.Output.Write(StarterFile.Text);
            return ExitCodes.Done;
        }

        if (OutputFile.WriteNew(path, Encoding.UTF8.GetBytes(StarterFile.Text)) is { } problem)
        {
            surroundings.Say($"{Visible.Text(path)} was not written: {problem}");
            return ExitCodes.NotWritten;
        }

        surroundings.Output.WriteLine($"{Visible.Text(path)}: fill it in, then `bendsheet check {Visible.Text(path)}`.");
        return ExitCodes.Done;
    }
}
