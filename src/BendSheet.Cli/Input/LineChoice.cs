using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Files;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Input;

/// <summary>Picks the lines that were asked for with <c>--line</c>.</summary>
public static class LineChoice
{
    /// <summary>A line was asked for that the file does not have.</summary>
    public static Rule UnknownLine { get; } = new("unknown-line", RuleSubject.File, "A line asked for by a name that is not in the file would be left out in silence.");

    /// <summary>The lines in the order of the file, and a finding for each name that is not in it.</summary>
    /// <param name="file">All lines.</param>
    /// <param name="name">The file's, for the findings.</param>
    /// <param name="wanted">None means all.</param>
    public static (ImmutableArray<LineTemplate> Lines, ImmutableArray<Finding> Findings) Of(
        TemplateFile file, string name, IReadOnlyCollection<string> wanted)
    {
        if (wanted.Count == 0)
        {
            return (file.Lines, []);
        }

        // Where the file itself is wrong the line may be there and unreadable: then that is what has to be said.
        var known = file.Lines.Select(line => line.Name).Concat(file.RoughLines.Select(line => line.Name)).ToList();
        var unknown = ExitCodes.Of(file.Findings) == ExitCodes.WrongInput ? [] : wanted.Except(known, StringComparer.Ordinal);
        return (
            [.. file.Lines.Where(line => wanted.Contains(line.Name, StringComparer.Ordinal))],
            [.. unknown.Select(line => UnknownLine.Error(SourcePosition.Whole(name), Message(line, known)))]);
    }

    private static string Message(string line, List<string> known) => NearestWord.Of(line, known) is { } nearest
        ? $"there is no line `{line}`: did you mean `{nearest}`?"
        : $"there is no line `{line}`: the file has `{string.Join("`, `", known)}`";
}
