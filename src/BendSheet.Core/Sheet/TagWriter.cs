using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds the tags of finished lines.</summary>
public static class TagWriter
{
    /// <summary>A tag for each line: for those with a sheet as the sheet has it, for rough ones without a number.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="lines">With a plan; those made already too.</param>
    /// <param name="rough">With only a rough length.</param>
    /// <param name="notation">How lengths are written.</param>
    /// <param name="typed">The file's own notation, which the fingerprint tells.</param>
    public static TagSheet Of(
        string project, IEnumerable<SolvedLine> lines, IEnumerable<RoughLine> rough, LengthNotation notation, LengthNotation typed) =>
        new(
            project,
            [
                .. lines.Select(line => (line.Template.At, Tag: Tag(line, project, notation, typed)))
                    .Concat(rough.Select(line => (line.At, Tag: Tag(line, notation))))
                    .InFileOrder(one => one.At)
                    .Select(one => one.Tag),
            ]);

    private static TagContent Tag(SolvedLine line, string project, LengthNotation notation, LengthNotation typed) => new(
        line.Template.Name,
        $"A: {EndWords.A(line.Template.From)}",
        $"B: {EndWords.B(line.Template.To)}",
        $"cut {notation.WithUnit(line.Plan!.CutLength)}",
        notation.Other.WithUnit(line.Plan.CutLength),
        SheetWords.Numbered(Fingerprint.Of(line.Typed, project, typed)),
        line.Template.Tube.OutsideDiameter);

    private static TagContent Tag(RoughLine line, LengthNotation notation) => new(
        line.Name,
        $"A: {EndWords.A(line.From)}",
        $"B: {EndWords.B(line.To)}",
        $"about {notation.WithUnit(line.Length)}",
        notation.Other.WithUnit(line.Length),
        TagWords.NoSheet,
        line.Tube.OutsideDiameter);
}
