using System.Collections.Immutable;
using BendSheet.Core.Clearance;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Car;

/// <summary>What a person typed of a car, understood: everything that <see cref="CarPlan"/> starts from.</summary>
/// <param name="Project">Empty where the file does not say.</param>
/// <param name="Notation">How this file's sheets show lengths.</param>
/// <param name="Paper">What they are printed on, unless the command line says otherwise.</param>
/// <param name="Lines">Every line that could be read, in the order of the file.</param>
/// <param name="Findings">All that is wrong with the file, in its order. Where one is an error, some lines may be missing.</param>
public record MeasuredCar(
    string Project,
    LengthNotation Notation,
    Paper Paper,
    ImmutableArray<LineTemplate> Lines,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The file's name as findings have it; <c>-</c> for standard input.</summary>
    public string FileName { get; init; } = string.Empty;

    /// <summary>Every bender that could be read, in the order of the file, with its tests.</summary>
    public ImmutableArray<Bender> Benders { get; init; } = [];

    /// <summary>The car's parts and hoses.</summary>
    public CarParts Parts { get; init; } = CarParts.None;

    /// <summary>Zones that lines keep clear of, and the air between lines.</summary>
    public KeepClear Room { get; init; } = KeepClear.None;

    /// <summary>Every line that has only a rough length so far, in the order of the file.</summary>
    public ImmutableArray<RoughLine> RoughLines { get; init; } = [];

    /// <summary>
    /// What the findings of the file say of each line that was typed, by its name: those at the line itself, at what it is made with or a
    /// mirror image of, and those that concern every line. Empty where the file cannot be read at all.
    /// </summary>
    public ImmutableDictionary<string, ImmutableArray<Finding>> FindingsByLine { get; init; } =
        ImmutableDictionary<string, ImmutableArray<Finding>>.Empty;

    /// <summary>The findings that concern a tool or a tube, or everything in the file.</summary>
    public ImmutableArray<Finding> FindingsOfTools { get; init; } = [];

    /// <summary>The names of all lines that were typed, whether they can be read or not, in the order of the file.</summary>
    public ImmutableArray<string> LineNames { get; init; } = [];

    /// <summary>The findings that concern a line.</summary>
    public ImmutableArray<Finding> FindingsOf(string line) => FindingsByLine.GetValueOrDefault(line, Findings);

    /// <summary>Nothing that is wrong with the file concerns the line.</summary>
    public bool IsSound(string line) => FindingsOf(line).Verdict() != Verdict.WrongFile;

    /// <summary>Rolls of tube, hardware on hand, and what the work uses up beside the lines.</summary>
    public Stores Stores { get; init; } = Stores.Empty;
}
