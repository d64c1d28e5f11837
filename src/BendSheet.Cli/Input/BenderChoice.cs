using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Workshop;
using BendSheet.Files;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Input;

/// <summary>Picks the benders that were asked for with <c>--bender</c>.</summary>
public static class BenderChoice
{
    /// <summary>A bender was asked for that the file does not have.</summary>
    public static Rule UnknownBender { get; } = new(
        "unknown-bender", RuleSubject.File, "A bender asked for by a name that is not in the file would be left out in silence.");

    /// <summary>The benders in the order of the file, and a finding for each name that is not in it.</summary>
    /// <param name="file">All benders.</param>
    /// <param name="name">The file's, for the findings.</param>
    /// <param name="wanted">None means all.</param>
    public static (ImmutableArray<Bender> Benders, ImmutableArray<Finding> Findings) Of(
        TemplateFile file, string name, IReadOnlyCollection<string> wanted)
    {
        if (wanted.Count == 0)
        {
            return (file.Benders, []);
        }

        // Where the file itself is wrong the bender may be there and unreadable: then that is what has to be said.
        var known = file.Benders.Select(bender => bender.Name).Where(bender => bender.Length > 0).ToList();
        var unknown = ExitCodes.Of(file.Findings) == ExitCodes.WrongInput ? [] : wanted.Except(known, StringComparer.Ordinal);
        return (
            [.. file.Benders.Where(bender => wanted.Contains(bender.Name, StringComparer.Ordinal))],
            [.. unknown.Select(bender => UnknownBender.Error(SourcePosition.Whole(name), Message(bender, known)))]);
    }

    private static string Message(string bender, List<string> known) => $"there is no bender `{bender}`: " + (
        NearestWord.Of(bender, known) is { } nearest ? $"did you mean `{nearest}`?"
        : known.Count == 0 ? "the file's only bender has no name; leave `--bender` out"
        : $"the file has `{string.Join("`, `", known)}`");
}
