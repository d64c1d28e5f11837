using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>A line without a template yet: it counts in every total, and has no sheet.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="At">Where the name was typed.</param>
/// <param name="Tube">The tube it is to be made of.</param>
/// <param name="From">End A.</param>
/// <param name="To">End B.</param>
/// <param name="Length">About what will be cut off for it, as typed.</param>
/// <param name="LengthAt">Where that was typed.</param>
/// <param name="Made">The line exists already.</param>
public sealed record RoughLine(
    string Name, SourcePosition At, Tube Tube, LineEnd From, LineEnd To, Length Length, SourcePosition LengthAt, bool Made)
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "rough-line", RuleSubject.File, "A rough length is good enough to buy tube, not to make a line.");

    /// <summary>That there is no sheet of it; nothing where it is made already.</summary>
    public IEnumerable<Finding> Findings => Made
        ? []
        : [Rule.Note(
            LengthAt, $"line {Name} has only a rough length: it counts in the totals and has no sheet until a template is measured")];
}
