using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;

namespace BendSheet.Cli.Commands;

/// <summary>What the commands that read a file have in common.</summary>
internal static class FileOptions
{
    /// <summary>The file to read.</summary>
    public static Argument<string> File() => new("FILE")
    {
        Description = "The file with the measurements; - reads standard input.",
    };

    /// <summary>The lines to look at.</summary>
    public static Option<string[]> Line() => new("--line")
    {
        Description = "Only this line; may be given several times. Without it, every line of the file.",
        HelpName = "NAME",
    };

    /// <summary>Reads the file and plans the lines asked for, and writes the findings to standard error.</summary>
    public static CarPlan ReadAndReport(ParseResult parsed, Argument<string> file, Option<string[]> line, Surroundings surroundings)
    {
        var typed = TypedFile.Read(parsed.GetRequiredValue(file), surroundings.StandardInput);
        var plan = CarPlan.Of(typed, parsed.GetValue(line) ?? []);
        surroundings.Error.Write(FindingText.Write(plan.Findings, typed.Source, surroundings.Colour));
        return plan;
    }
}
