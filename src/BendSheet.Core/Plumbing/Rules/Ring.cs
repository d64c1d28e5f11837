using BendSheet.Core.Findings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// Where the fluid can go two ways, bleeding pushes it round by one of them and leaves the air in the other (common practice, no source).
/// </summary>
public static class Ring
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new("ring", RuleSubject.Making, "Nobody can be sure that air is bled out of a ring of lines.");

    /// <summary>A warning at the piece that closes it.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network, Circuits circuits)
    {
        var twice = PortUsedTwice.Connections(network);
        return circuits.Closing.Where(connection => !twice.Contains(connection)).Select(connection => Rule.Warning(
            connection.Position,
            $"{connection.InWords} closes a ring: {connection.A.Port!.InWords} and {connection.B.Port!.InWords} are joined already by "
                + "another way, and air between them cannot be bled out for certain; take one of the two ways out"));
    }
}
