using System.CommandLine;
using System.CommandLine.Invocation;
using BendSheet.Cli.Commands;
using BendSheet.Cli.Output;

namespace BendSheet.Cli;

/// <summary>The command line as a whole.</summary>
public static class CommandLine
{
    private const int LinesOfADefect = 12;

    /// <summary>Runs one command.</summary>
    /// <returns>One of <see cref="ExitCodes"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> args, Surroundings surroundings, CancellationToken cancellation = default)
    {
        var root = new RootCommand("Bend sheets for hand-bent brake and fuel lines, from templates measured on the car.")
        {
            new CheckCommand(surroundings),
            new ShowCommand(surroundings),
            new PrintCommand(surroundings),
            new LearnCommand(surroundings),
            new StockCommand(surroundings),
            new StartCommand(surroundings),
            new ExplainCommand(surroundings),
            new SchemaCommand(surroundings),
            new CompletionsCommand(surroundings),
        };
        HelpExamples.AddTo(root, surroundings.OutputWidth);

        var parsed = root.Parse(
            ShellLine.Requoted(AsOption(args, root)),
            new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        var configuration = new InvocationConfiguration
        {
            Output = surroundings.Output,
            Error = surroundings.Error,
            EnableDefaultExceptionHandler = false,
        };
        try
        {
            var code = args.Count == 0 ? ShortHelp(root, surroundings)
                : parsed.Action is ParseErrorAction ? ReportUsage(parsed, surroundings)
                : await parsed.InvokeAsync(configuration, cancellation);
            await surroundings.Output.FlushAsync(cancellation);
            return code;
        }
        catch (OperationCanceledException)
        {
            return ExitCodes.Interrupted;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            ReportUnwritten(failure, surroundings.Error);
            return ExitCodes.NotWritten;
        }
        catch (Exception defect)
        {
            ReportDefect(defect, args, surroundings.Error);
            return ExitCodes.OwnDefect;
        }
    }

    /// <summary>Whatever was typed, an exception that comes as far as this is a mistake of the program.</summary>
    private static void ReportDefect(Exception defect, IReadOnlyList<string> args, TextWriter error)
    {
        try
        {
            error.WriteLine("bendsheet: this is a mistake in bendsheet itself, not in your file. Nothing that it wrote is to be used.");
            error.WriteLine("Please send what follows, and your file, to whoever looks after the program:");
            error.WriteLine($"  bendsheet {Version} {Visible.Text(string.Join(' ', args))}");
            foreach (var line in defect.ToString().ReplaceLineEndings("\n").Split('\n').Take(LinesOfADefect))
            {
                error.WriteLine($"  {Visible.Text(line)}");
            }
        }
        catch (Exception second) when (second is IOException or UnauthorizedAccessException)
        {
            // Only the exit code is left to say it.
        }
    }

    private static string Version => typeof(CommandLine).Assembly.GetName().Version?.ToString(3) ?? string.Empty;

    private static void ReportUnwritten(Exception failure, TextWriter error)
    {
        try
        {
            error.WriteLine($"bendsheet: the result could not be written: {OutputFile.Reason(failure)}");
        }
        catch (Exception second) when (second is IOException or UnauthorizedAccessException)
        {
            // Standard error is full or closed as well: only the exit code is left to say it.
        }
    }

    /// <summary><c>help print</c> asks for what <c>print --help</c> does.</summary>
    private static IReadOnlyList<string> AsOption(IReadOnlyList<string> args, RootCommand root) => args switch
    {
        ["help"] => ["--help"],
        ["help", var name, ..] => root.Subcommands.Any(command => string.Equals(command.Name, name, StringComparison.Ordinal))
            ? [name, "--help"]
            : [name],
        _ => args,
    };

    private static int ShortHelp(RootCommand root, Surroundings surroundings)
    {
        surroundings.Output.Write(HelpExamples.Short(root, surroundings.OutputWidth));
        return ExitCodes.Done;
    }

    private static int ReportUsage(ParseResult parsed, Surroundings surroundings)
    {
        var name = parsed.CommandResult.Command is RootCommand ? string.Empty : parsed.CommandResult.Command.Name + " ";
        foreach (var sentence in UsageErrors.Of(parsed))
        {
            surroundings.Say(Visible.Text(sentence));
        }

        surroundings.Error.WriteLine(
            Wrapped.Text($"`bendsheet {name}--help` shows what can be typed, with an example.", surroundings.ErrorWidth));
        return ExitCodes.WrongInput;
    }
}
