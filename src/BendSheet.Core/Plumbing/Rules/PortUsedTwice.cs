using BendSheet.Core.Findings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>One thread takes one nut.</summary>
public static class PortUsedTwice
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new("port-used-twice", RuleSubject.Making, "One port takes one line; a second one needs a tee.");

    /// <summary>An error at each place after the first.</summary>
    /// <param name="uses">All that goes to one port, in the order of the file.</param>
    public static IEnumerable<(PortUse Use, Finding Finding)> Check(IEnumerable<PortUse> uses)
    {
        PortUse? first = null;
        foreach (var use in uses)
        {
            if (first is null)
            {
                first = use;
                continue;
            }

            yield return (use, Rule.Error(
                use.Position,
                $"{use.Place.InWords} is taken already by {first.Connection.InWords} (line {first.Position.Line}): name another port, or "
                    + "put a tee there"));
        }
    }

    /// <summary>Pieces that go to a port taken already: what they seem to join follows from that, and is not said as well.</summary>
    public static IReadOnlySet<Connection> Connections(PipeNetwork network) =>
        network.Uses.SelectMany(uses => uses.Skip(1)).Select(use => use.Connection)
            .ToHashSet<Connection>(ReferenceEqualityComparer.Instance);
}
