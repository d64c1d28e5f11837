using System.Collections.Immutable;
using BendSheet.Core.Findings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>All that is to be said about the car's plumbing.</summary>
/// <param name="OfLines">What concerns a line's own end, by the line's name: its sheet says it.</param>
/// <param name="OfCar">Everything else, which no single sheet can put right.</param>
public sealed record PlumbingFindings(ILookup<string, Finding> OfLines, ImmutableArray<Finding> OfCar);

/// <summary>Every rule about the car's plumbing. A file without parts has none of them.</summary>
public static class PlumbingRules
{
    /// <summary>What does not hold.</summary>
    public static PlumbingFindings Check(PipeNetwork network)
    {
        if (network.IsEmpty)
        {
            return new(Enumerable.Empty<Finding>().ToLookup(_ => string.Empty, StringComparer.Ordinal), []);
        }

        var circuits = Circuits.Of(network);
        var ends = network.Uses
            .SelectMany(uses => uses.SelectMany(OfEnd, (use, finding) => (Use: use, Finding: finding)).Concat(PortUsedTwice.Check(uses)))
            .ToLookup(found => found.Use.Connection.Kind == ConnectionKind.Line);
        return new(
            ends[true].Select(found => (found.Use.Connection.Name, found.Finding)).Distinct()
                .ToLookup(found => found.Name, found => found.Finding, StringComparer.Ordinal),
            [
                .. ends[false].Select(found => found.Finding),
                .. OpenPort.Check(network),
                .. WheelNotReached.Check(network, circuits),
                .. TubeToWheel.Check(network),
                .. HoseTooTight.Check(network),
                .. HoseTooShort.Check(network),
                .. CircuitsJoined.Check(network, circuits),
                .. Ring.Check(network, circuits),
                .. NoBrakeLightSwitch.Check(network, circuits),
            ]);
    }

    private static IEnumerable<Finding> OfEnd(PortUse use) =>
    [
        .. SeatsDiffer.Check(use),
        .. ThreadsDiffer.Check(use),
        .. TaperAgainstStraight.Check(use),
        .. FlareAndTube.Check(use),
    ];
}
