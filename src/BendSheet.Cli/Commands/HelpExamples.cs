using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary>A command that can show how it is typed.</summary>
/// <param name="name">As typed.</param>
/// <param name="description">One sentence.</param>
/// <param name="examples">Whole lines, each with a remark.</param>
internal class ExampleCommand(string name, string description, params (string Line, string Remark)[] examples)
    : Command(name, description)
{
    /// <summary>Whole lines, each with a remark.</summary>
    public IReadOnlyList<(string Line, string Remark)> Examples { get; } = examples;

    /// <summary>Whether the work at the bench goes through it: the others are left to the full help.</summary>
    public virtual bool IsOfTheWork => true;
}

/// <summary>Help that ends with examples.</summary>
internal static class HelpExamples
{
    /// <summary>Lets the help of every command of the program end with its examples.</summary>
    /// <param name="root">With all its commands.</param>
    /// <param name="width">Of the terminal, in columns; null where the output is a file or another program.</param>
    public static void AddTo(RootCommand root, int? width)
    {
        foreach (var option in root.Options)
        {
            if (option is HelpOption { Action: HelpAction plain } help)
            {
                if (!OperatingSystem.IsWindows())
                {
                    // Outside Windows these are names of files, and would be offered as completions.
                    help.Aliases.Remove("/?");
                    help.Aliases.Remove("/h");
                }

                plain.MaxWidth = width ?? int.MaxValue;
                help.Action = new HelpWithExamples(plain, width);
            }
        }
    }

    /// <summary>What is shown where nothing is typed after the program's name: each command with one line to try.</summary>
    /// <param name="root">With all its commands.</param>
    /// <param name="width">Of the terminal, in columns; null where the output is a file or another program.</param>
    public static string Short(RootCommand root, int? width)
    {
        var text = new StringBuilder(root.Description).Append("\n\n");
        foreach (var command in root.Subcommands.OfType<ExampleCommand>().Where(command => command.IsOfTheWork))
        {
            var (line, remark) = command.Examples[0];
            text.Append("  ").Append(line).Append("\n      ").Append(remark).Append('\n');
        }

        text.Append("\n`bendsheet --help` shows everything, `bendsheet help print` one command.\n");
        return Wrapped.Text(text.ToString(), width);
    }

    private sealed class HelpWithExamples(HelpAction plain, int? width) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            plain.Invoke(parseResult);
            var output = parseResult.InvocationConfiguration.Output;
            var commands = parseResult.CommandResult.Command is ExampleCommand one
                ? [one]
                : parseResult.CommandResult.Command.Subcommands.OfType<ExampleCommand>();
            output.WriteLine("Examples:");
            foreach (var (line, remark) in commands.SelectMany(command => command.Examples))
            {
                output.WriteLine(Wrapped.Text($"  {line}", width));
                output.WriteLine(Wrapped.Text($"      {remark}", width));
            }

            output.WriteLine();
            output.WriteLine(Wrapped.Text(
                "Exit codes: 0 done, 1 something cannot be made, 2 the file or the command line is wrong, 3 the result could not be "
                    + "written, 4 a mistake in bendsheet itself.",
                width));
            return ExitCodes.Done;
        }
    }
}
