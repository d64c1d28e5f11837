using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;

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

    /// <summary>Reads and solves the file, and writes its findings to standard error.</summary>
    public static SolvedFile ReadAndReport(ParseResult parsed, Argument<string> file, Option<string[]> line, Surroundings surroundings)
    {
        var solved = SolvedFile.Of(parsed.GetRequiredValue(file), parsed.GetValue(line) ?? [], surroundings.StandardInput);
        surroundings.Error.Write(FindingText.Of(solved.Findings, solved.File.Source, surroundings.Colour));
        return solved;
    }
}
