using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;

namespace BendSheet.Core.Tests.Plumbing;

public class CircuitsTests
{
    /// <summary>From each union on to the next: more of them than a call for each would stand.</summary>
    [Fact]
    public void Pressure_goes_through_a_chain_of_a_hundred_thousand_parts()
    {
        const int Parts = 100_000;
        Part[] parts =
        [
            .. Enumerable.Range(0, Parts).Select(number => Part(number == 0 ? PartKind.MasterCylinder : PartKind.Union, $"p{number}")),
        ];
        var hoses = Enumerable.Range(1, Parts - 1).Select(number => Hose(parts[number], "in", parts[number - 1], "out"));
        var circuits = Circuits.Of(PipeNetwork.Of(new([.. parts], [.. hoses], [], PedalSwitch: false), [], []));
        Assert.Equal("p0", circuits.SourceOf(parts[^1])?.InWords);
        Assert.Empty(circuits.Closing);
        Assert.Empty(circuits.Joined);
    }

    /// <summary>Against a walk from port to port: random nets of few parts, seed printed on failure.</summary>
    [Fact]
    public void What_is_joined_is_what_a_walk_reaches()
    {
        const int Seed = 4711;
        var random = new Random(Seed);
        for (var net = 0; net < 500; net++)
        {
            Part[] parts =
            [
                .. Enumerable.Range(0, 8).Select(number => Part(number == 0 ? PartKind.MasterCylinder : PartKind.Union, $"p{number}")),
            ];
            var ways = Enumerable.Range(0, random.Next(12)).Select(_ => (From: random.Next(8), To: random.Next(8))).ToList();
            var circuits = Circuits.Of(PipeNetwork.Of(
                new([.. parts], [.. ways.Select(way => Hose(parts[way.From], "in", parts[way.To], "out"))], [], PedalSwitch: false),
                [],
                []));
            var reached = new HashSet<int> { 0 };
            while (ways.Any(way => reached.Contains(way.From) != reached.Contains(way.To)))
            {
                reached.UnionWith(
                    ways.Where(way => reached.Contains(way.From) || reached.Contains(way.To))
                        .SelectMany(way => new[] { way.From, way.To }));
            }

            var found = Enumerable.Range(0, 8).Where(number => circuits.SourceOf(parts[number]) is not null);
            Assert.True(reached.SetEquals(found), $"seed {Seed}, net {net}");
        }
    }

    private static Part Part(PartKind kind, string name) =>
        new(name, kind, [new("in", PortSpec.Unknown, null), new("out", PortSpec.Unknown, null)], 0, default);

    private static Hose Hose(Part from, string out1, Part to, string in1) => new(
        $"{from.Name}-{to.Name}", End(from, out1), End(to, in1), null, 0, default);

    private static HoseEnd End(Part part, string port) =>
        new(
            null,
            new(part, part.Ports.Single(known => string.Equals(known.Name, port, StringComparison.Ordinal)), default(SourcePosition)),
            PortSpec.Unknown);
}
