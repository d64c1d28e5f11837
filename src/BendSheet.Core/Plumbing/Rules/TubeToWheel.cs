using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// MIL-H-8891A 3.11.4.6: no straight or looped tube where parts are made to move against each other. A wheel moves with the suspension and
/// the steering; brakes fixed to the chassis do not.
/// </summary>
public static class TubeToWheel
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "tube-to-wheel",
        RuleSubject.Making,
        "Tube between parts that move against each other fatigues and breaks; a hose moves with them.");

    /// <summary>
    /// A warning at each caliper and wheel cylinder that a master cylinder reaches with no hose between them, unless it is fixed to the
    /// chassis.
    /// </summary>
    public static IEnumerable<Finding> Check(PipeNetwork network)
    {
        var rigid = Circuits.Of(network with
        {
            Connections = [.. network.Connections.Where(connection => connection.Kind != ConnectionKind.Hose)],
        });
        return network.Car.Parts.Where(part => part.Kind.IsWheel() && !part.IsOnChassis && rigid.SourceOf(part) is not null)
            .Select(part => Rule.Warning(
                part.At,
                $"only tube leads from the master cylinder to {part.Kind.Word()} {part.Name}, and a wheel moves with suspension and "
                    + "steering (MIL-H-8891A 3.11.4.6): put a hose between chassis and wheel, or say `mounted: chassis` in the part if "
                    + "the brake "
                    + "is fixed to the chassis"));
    }
}
