using System.CommandLine;
using System.CommandLine.Invocation;
using BendSheet.Cli.Commands;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

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
            CheckCommand.Create(surroundings),
            ShowCommand.Create(surroundings),
            PrintCommand.Create(surroundings),
            LearnCommand.Create(surroundings),
            StockCommand.Create(surroundings),
            StartCommand.Create(surroundings),
        };
        HelpExamples.AddTo(root);

        var parsed = root.Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        var configuration = new InvocationConfiguration
        {
            Output = surroundings.Output,
            Error = surroundings.Error,
            EnableDefaultExceptionHandler = false,
        };
        try
        {
            var code = parsed.Action is ParseErrorAction
                ? ReportUsage(parsed, surroundings.Error)
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

    private static int ReportUsage(ParseResult parsed, TextWriter error)
    {
        var atRoot = parsed.CommandResult.Command is RootCommand;
        if (atRoot && parsed.UnmatchedTokens is [var typed, ..])
        {
            // The library would also say that a command is missing, which is one mistake said twice.
            var nearest = NearestWord.Among(typed, parsed.RootCommandResult.Command.Subcommands.Select(command => command.Name));
            error.WriteLine($"bendsheet: there is no command `{typed}`{(nearest is null ? "." : $": did you mean `{nearest}`?")}");
        }
        else
        {
            foreach (var wrong in parsed.Errors)
            {
                // The library lists choices on lines of their own.
                error.WriteLine(
                    $"bendsheet: {string.Join(' ', wrong.Message.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))}");
            }
        }

        error.WriteLine($"`bendsheet {(atRoot ? string.Empty : parsed.CommandResult.Command.Name + " ")}--help` shows what can be typed, "
            + "with an example.");
        return ExitCodes.WrongInput;
    }
}
