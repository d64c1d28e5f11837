using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary>A command that can show how it is typed.</summary>
/// <param name="name">As typed.</param>
/// <param name="description">One sentence.</param>
/// <param name="examples">Whole lines, each with a remark.</param>
internal sealed class ExampleCommand(string name, string description, params (string Line, string Remark)[] examples)
    : Command(name, description)
{
    /// <summary>Whole lines, each with a remark.</summary>
    public IReadOnlyList<(string Line, string Remark)> Examples { get; } = examples;
}

/// <summary>Help that ends with examples.</summary>
internal static class HelpExamples
{
    /// <summary>Lets the help of every command of the program end with its examples.</summary>
    public static void AddTo(RootCommand root)
    {
        foreach (var option in root.Options)
        {
            if (option is HelpOption { Action: HelpAction plain } help)
            {
                help.Action = new HelpWithExamples(plain);
            }
        }
    }

    private sealed class HelpWithExamples(HelpAction plain) : SynchronousCommandLineAction
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
                output.WriteLine($"  {line}");
                output.WriteLine($"      {remark}");
            }

            output.WriteLine();
            output.WriteLine("Ends with 0 done, 1 something cannot be made, 2 the file or the command line is wrong, 3 the result could "
                + "not be written, 4 a mistake in bendsheet itself.");
            return ExitCodes.Done;
        }
    }
}
