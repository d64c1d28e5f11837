using BendSheet.Core.Findings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>Two circuits are there so that one still brakes when the other has lost its fluid; joined, both lose it.</summary>
public static class CircuitsJoined
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "circuits-joined", RuleSubject.Making, "If one of two joined circuits leaks, both lose their fluid and nothing brakes.");

    /// <summary>An error at the piece that joins them.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network, Circuits circuits)
    {
        var twice = PortUsedTwice.Connections(network);
        return circuits.Joined.Where(joined => !twice.Contains(joined.Connection)).Select(joined => Rule.Error(
            joined.Connection.Position,
            $"{joined.Connection.InWords} joins two circuits that must stay apart, {joined.One} and {joined.Other}: lead it to a port of "
                + "its own circuit"));
    }
}
