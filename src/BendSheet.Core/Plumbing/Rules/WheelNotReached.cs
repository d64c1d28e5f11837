using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// A brake with no source of pressure does not work. A file without a master cylinder describes another part of the car.
/// </summary>
public static class WheelNotReached
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "wheel-not-reached", RuleSubject.Making, "A wheel that no master cylinder reaches does not brake.");

    /// <summary>An error at the name of each caliper and wheel cylinder without pressure.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network, Circuits circuits) =>
        network.Car.Parts.Any(part => part.Kind == PartKind.MasterCylinder)
            ? network.Car.Parts.Where(part => part.Kind.IsWheel() && circuits.SourceOf(part) is null).Select(part => Rule.Error(
                part.At,
                $"no master cylinder reaches {part.Kind.Word()} {part.Name}: lead a line or a hose to it (`show --parts` shows how far "
                    + "each circuit goes)"))
            : [];
}
