using System.Text;

namespace BendSheet.Cli.Output;

/// <summary>A text that a command writes for the person to go on with: to standard output, or to a file that is not there yet.</summary>
internal static class NewFile
{
    /// <summary>What stands for standard output in the place of a file's name.</summary>
    public const string StandardOutput = "-";

    /// <summary>Writes it, and says what came of it.</summary>
    /// <param name="path">The file, or <see cref="StandardOutput"/>.</param>
    /// <param name="text">All of it.</param>
    /// <param name="next">What to do with the file then; said after its name. Null where nothing is said.</param>
    /// <param name="surroundings">The terminal.</param>
    /// <returns>The exit code.</returns>
    public static int Write(string path, string text, string? next, Surroundings surroundings)
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

        if (next is not null)
        {
            surroundings.Output.WriteLine($"{Visible.Text(path)}: {next}");
        }

        return ExitCodes.Done;
    }
}
