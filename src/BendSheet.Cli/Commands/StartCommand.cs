using System.CommandLine;
using System.Runtime.InteropServices;
using BendSheet.Cli.Asking;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet start</c>: a small file to fill in.</summary>
internal sealed class StartCommand : ExampleCommand
{
    private const string DefaultName = "brake-lines.yaml";

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

    private readonly Option<bool> _ask = new("--ask")
    {
        Description = "Asks for everything, one question after the other in the order of the work, and writes the file from the answers.",
    };

    public StartCommand(Surroundings surroundings)
        : base(
            "start",
            "Writes a small file with comments, to fill in with your own measurements.",
            ("bendsheet start", $"Writes {DefaultName} in this folder."),
            ("bendsheet start clutch.yaml", "The same under another name."),
            ("bendsheet start front.yaml --ask", "Asks for your figures, and writes the file from them."))
    {
        Add(_file);
        Add(_ask);
        _file.Validators.Add(UsageErrors.RefuseOption);
        Add(_schema);
        Validators.Add(result =>
        {
            if (result.GetValue(_ask) && string.Equals(result.GetValue(_file), NewFile.StandardOutput, StringComparison.Ordinal))
            {
                result.AddError("`--ask` asks on standard output: name a file to write, or leave `--ask` out.");
            }
        });
        SetAction(parsed => parsed.GetValue(_ask)
            ? Ask(parsed.GetRequiredValue(_file), parsed.GetValue(_schema), surroundings)
            : parsed.GetValue(_schema)
            ? WithSchema(parsed.GetRequiredValue(_file), surroundings)
            : Write(parsed.GetRequiredValue(_file), StarterFile.Text, surroundings));
    }

    private static int Ask(string path, bool withSchema, Surroundings surroundings)
    {
        // Before the first question, not after the last.
        if (WhyNot(path) is { } why)
        {
            surroundings.Say($"{Visible.Text(path)} was not written: {why}");
            return ExitCodes.NotWritten;
        }

        var conversation = new Conversation(path, withSchema, surroundings);

        // The program waits for the answer that is being typed: only an exit from here ends it.
        void Stop(PosixSignalContext signal)
        {
            signal.Cancel = true;
            surroundings.Output.WriteLine();
            Environment.Exit(conversation.Stop(ExitCodes.Interrupted));
        }

        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var ended = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, Stop);
        return conversation.Run();
    }

    private static string? WhyNot(string path)
    {
        try
        {
            return Path.Exists(path) ? OutputFile.There
                : Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path))) ? null
                : OutputFile.Reason(new DirectoryNotFoundException());
        }
        catch (Exception failure) when (failure is ArgumentException or NotSupportedException or IOException)
        {
            return OutputFile.Reason(failure);
        }
    }

    private static int WithSchema(string path, Surroundings surroundings)
    {
        var code = Write(path, FormatSchema.Head + StarterFile.Text, surroundings);
        return code != ExitCodes.Done || string.Equals(path, NewFile.StandardOutput, StringComparison.Ordinal)
            ? code
            : FormatSchema.WriteBeside(path, surroundings);
    }

    private static int Write(string path, string text, Surroundings surroundings) =>
        NewFile.Write(path, text, $"fill it in, then `bendsheet check {Visible.Text(path)}`.", surroundings);
}
