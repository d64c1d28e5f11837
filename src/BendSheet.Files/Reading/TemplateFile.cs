using System.Collections.Immutable;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>What a person typed, understood, with its text.</summary>
/// <param name="Project">Empty where the file does not say.</param>
/// <param name="Notation">How this file's sheets show lengths.</param>
/// <param name="Paper">What they are printed on, unless the command line says otherwise.</param>
/// <param name="Lines">Every line that could be read, in the order of the file.</param>
/// <param name="Findings">All that is wrong with the file, in its order.</param>
/// <param name="Source">The text, to show the place of a finding.</param>
public sealed record TemplateFile(
    string Project,
    LengthNotation Notation,
    Paper Paper,
    ImmutableArray<LineTemplate> Lines,
    ImmutableArray<Finding> Findings,
    SourceLines Source) : MeasuredCar(Project, Notation, Paper, Lines, Findings);
