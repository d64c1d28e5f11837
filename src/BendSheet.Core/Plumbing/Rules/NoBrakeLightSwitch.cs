using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// Nobody behind the car sees it brake. Only where the file has a master cylinder that reaches a wheel: otherwise it describes another part
/// of the car.
/// </summary>
public static class NoBrakeLightSwitch
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new("no-brake-light-switch", RuleSubject.Making, "Without a switch the brake lights stay dark.");

    /// <summary>A warning at the first master cylinder that brakes a wheel.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network, Circuits circuits)
    {
        var parts = network.Car.Parts;
        var brakes = parts.Where(part => part.Kind.IsWheel()).Select(circuits.SourceOf).OfType<PressureSource>().ToHashSet();
        var switches = parts.Where(part => part.Kind == PartKind.Switch).ToList();
        if (network.Car.PedalSwitch
            || brakes.Count == 0
            || switches.Exists(one => circuits.SourceOf(one) is { } source && brakes.Contains(source)))
        {
            yield break;
        }

        var master = parts.First(
            part => part.Kind == PartKind.MasterCylinder
                && brakes.Any(source => string.Equals(source.Master, part.Name, StringComparison.Ordinal)));
        yield return Rule.Warning(
            master.At,
            switches is [var one, ..]
                ? $"switch {one.Name} is in no circuit that brakes a wheel: lead it into one (`screws-into: tee.left`), or say "
                    + "`pedal-switch: true` at the top"
                : $"no brake-light switch is in a circuit of {master.Name}: add a part of kind `switch`, or say `pedal-switch: true` at "
                    + "the top if it sits at the pedal");
    }
}
