using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;
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

    /// <summary>No line was asked for by name: all of them are here, as far as they can be read.</summary>
    public bool IsWhole { get; private init; } = true;

    /// <summary>What the findings ask the program to end with.</summary>
    public int ExitCode => ExitCodes.Of(Findings);

    /// <summary>
    /// What the findings say of the sheets alone: a mistake in the car's plumbing that is at no line's own end stops none of them.
    /// </summary>
    public int SheetsExitCode { get; private init; }

    /// <summary>The whole car, whatever lines were asked for.</summary>
    public PipeNetwork Network { get; private init; } = PipeNetwork.None;

    /// <summary>File → templates → solved lines.</summary>
    /// <param name="name">A path, or <c>-</c> for standard input.</param>
    /// <param name="wanted">The lines asked for; none means all.</param>
    /// <param name="standardInput">Opened for <c>-</c>.</param>
    public static SolvedFile Of(string name, IReadOnlyCollection<string> wanted, Func<Stream> standardInput)
    {
        var file = TypedFile.Read(name, standardInput);
        var (templates, unknown) = LineChoice.Of(file, name, wanted);
        var rough = file.RoughLines.Where(line => wanted.Count == 0 || wanted.Contains(line.Name, StringComparer.Ordinal)).ToImmutableArray();
        var network = PipeNetwork.Of(file.Car, file.Lines.Select(Joint.Of).Concat(file.RoughLines.Select(line => Joint.OfLine(line.Name, line.From, line.To, line.Tube, line.Length, line.At))));
        // A line that cannot be read would leave its ports open: one cause is enough.
        var plumbing = PlumbingRules.Of(ExitCodes.Of(file.Findings) == ExitCodes.WrongInput ? PipeNetwork.None : network);
        var lines = templates.Select(SolvedLine.Of).Select(line => line.With(plumbing.OfLines[line.Template.Name])).ToImmutableArray();
        // A line and its mirror image can have the same fault in the same rows.
        var ofLines = file.Findings.Concat(unknown).Concat(lines.SelectMany(line => line.Findings)).Concat(rough.SelectMany(line => line.Findings)).ToList();
        var findings = ofLines.Concat(wanted.Count == 0 ? plumbing.OfCar : []).Distinct()
            .OrderBy(finding => finding.Position.Line).ThenBy(finding => finding.Position.Column).ToImmutableArray();

        // Of a wrong file no figure is shown: it might be made of a default in the place of what could not be read.
        var isWrong = ExitCodes.Of(findings) == ExitCodes.WrongInput;
        return new(file, isWrong ? [] : lines, findings) { IsWhole = wanted.Count == 0, RoughLines = isWrong ? [] : rough, Network = network, SheetsExitCode = ExitCodes.Of(ofLines) };
    }

    /// <summary>The sheets' content of every line that can be made.</summary>
    public IEnumerable<SheetContent> Sheets() => Sheets(File.Notation);

    /// <summary>The same in another notation. The fingerprint stays that of the file: it tells what was typed, not how it is shown.</summary>
    public IEnumerable<SheetContent> Sheets(LengthNotation notation) => Lines.Where(line => line.Plan is not null).Select(line =>
        SheetWriter.Of(line, File.Project, notation) with { Fingerprint = Fingerprint.Of(line.Template, File.Project, File.Notation) });
}
