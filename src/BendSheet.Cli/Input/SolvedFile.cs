using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Files.Reading;

namespace BendSheet.Cli.Input;

/// <summary>A file from its bytes to its solved lines: every command begins here.</summary>
/// <param name="File">As typed and understood.</param>
/// <param name="Lines">The lines asked for, solved; none where the file is wrong.</param>
/// <param name="Findings">All of the file's, and those of the lines asked for, in the order of the file.</param>
public sealed record SolvedFile(TemplateFile File, ImmutableArray<SolvedLine> Lines, ImmutableArray<Finding> Findings)
{
    /// <summary>The lines asked for that have only a rough length; none where the file is wrong.</summary>
    public ImmutableArray<RoughLine> RoughLines { get; private init; } = [];

    /// <summary>What the findings ask the program to end with.</summary>
    public int ExitCode => ExitCodes.Of(Findings);

    /// <summary>File → templates → solved lines.</summary>
    /// <param name="name">A path, or <c>-</c> for standard input.</param>
    /// <param name="wanted">The lines asked for; none means all.</param>
    /// <param name="standardInput">Opened for <c>-</c>.</param>
    public static SolvedFile Of(string name, IReadOnlyCollection<string> wanted, Func<Stream> standardInput)
    {
        var file = TypedFile.Read(name, standardInput);
        var (templates, unknown) = LineChoice.Of(file, name, wanted);
        var lines = templates.Select(SolvedLine.Of).ToImmutableArray();
        var rough = file.RoughLines.Where(line => wanted.Count == 0 || wanted.Contains(line.Name, StringComparer.Ordinal)).ToImmutableArray();

        // A line and its mirror image can have the same fault in the same rows.
        var findings = file.Findings.Concat(unknown).Concat(lines.SelectMany(line => line.Findings)).Concat(rough.SelectMany(line => line.Findings)).Distinct()
            .OrderBy(finding => finding.Position.Line).ThenBy(finding => finding.Position.Column).ToImmutableArray();

        // Of a wrong file no figure is shown: it might be made of a default in the place of what could not be read.
        return ExitCodes.Of(findings) == ExitCodes.WrongInput ? new(file, [], findings) : new(file, lines, findings) { RoughLines = rough };
    }

    /// <summary>The sheets' content of every line that can be made.</summary>
    public IEnumerable<SheetContent> Sheets() =>
        Lines.Where(line => line.Plan is not null).Select(line => SheetWriter.Of(line, File.Project, File.Notation));
}
