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

    private readonly Option<bool> _schema = new("--schema")
    {
        Description = $"Also writes {FormatSchema.FileName} beside it and names it in the first line, so that an editor completes words "
            + "and marks wrong ones while you type.",
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
        Add(_schema);
        SetAction(parsed => parsed.GetValue(_schema)
            ? WithSchema(parsed.GetRequiredValue(_file), surroundings)
            : Write(parsed.GetRequiredValue(_file), StarterFile.Text, surroundings));
    }

    private static int WithSchema(string path, Surroundings surroundings)
    {
        var code = Write(path, $"{FormatSchema.Modeline}\n\n{StarterFile.Text}", surroundings);
        if (code != ExitCodes.Done || string.Equals(path, StandardOutput, StringComparison.Ordinal))
        {
            return code;
        }

        // Several files of a folder share one.
        var schema = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, FormatSchema.FileName);
        if (!Path.Exists(schema) && OutputFile.WriteNew(schema, Encoding.UTF8.GetBytes(FormatSchema.Write())) is { } problem)
        {
            surroundings.Say($"{Visible.Text(schema)} was not written: {problem}");
            return ExitCodes.NotWritten;
        }

        return ExitCodes.Done;
    }

    private static int Write(string path, string text, Surroundings surroundings)
    {
        if (string.Equals(path, StandardOutput, StringComparison.Ordinal))
        {
            surroundings.Output.Write(text);
            return ExitCodes.Done;
        }

        if (OutputFile.WriteNew(path, Encoding.UTF8.GetBytes(text)) is { } problem)
        {
            surroundings.Say($"{Visible.Text(path)} was not written: {problem}");
            return ExitCodes.NotWritten;
        }

        surroundings.Output.WriteLine($"{Visible.Text(path)}: fill it in, then `bendsheet check {Visible.Text(path)}`.");
        return ExitCodes.Done;
    }
}
