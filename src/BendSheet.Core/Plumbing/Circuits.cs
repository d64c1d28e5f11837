using System.Collections.Immutable;
using BendSheet.Core.Fittings;

namespace BendSheet.Core.Plumbing;

/// <summary>The master cylinder, or the circuit of it, that something has its pressure from.</summary>
/// <param name="Master">Name of the master cylinder.</param>
/// <param name="Circuit">Which one of its circuits; null where it has only one.</param>
public sealed record PressureSource(string Master, string? Circuit)
{
    /// <summary><c>master, circuit front</c>.</summary>
    public string InWords => Circuit is null ? Master : $"{Master}, circuit {Circuit}";
}

/// <summary>
/// Which ports are joined by lines, hoses and parts. The pieces are taken in the order of the file, so that of two that together make a
/// mistake the later one is named.
/// </summary>
/// <remarks>Union of disjoint sets. A reservoir joins nothing: the circuits separate in it, and no pressure passes it.</remarks>
public sealed class Circuits
{
    private readonly Dictionary<(string Part, string Inside), Set> _sets = [];

    private Circuits()
    {
    }

    /// <summary>Pieces that join what has to stay apart, with both sides in words.</summary>
    public ImmutableArray<(Connection Connection, string One, string Other)> Joined { get; private set; } = [];

    /// <summary>Pieces between two ports that were joined already.</summary>
    public ImmutableArray<Connection> Closing { get; private set; } = [];

    /// <summary>Follows every piece of a network.</summary>
    public static Circuits Of(PipeNetwork network)
    {
        var circuits = new Circuits();
        var joined = ImmutableArray.CreateBuilder<(Connection, string, string)>();
        var closing = ImmutableArray.CreateBuilder<Connection>();
        foreach (var connection in network.Connections)
        {
            if (connection.A.Port is not { } a || connection.B.Port is not { } b)
            {
                continue;
            }

            var (one, other) = (circuits.SetOf(a.Part, a.Port), circuits.SetOf(b.Part, b.Port));
            if (ReferenceEquals(one, other))
            {
                closing.Add(connection);
            }
            else if (one.Join(other) is { } apart)
            {
                joined.Add((connection, apart.One, apart.Other));
            }
        }

        circuits.Joined = joined.ToImmutable();
        circuits.Closing = closing.ToImmutable();
        return circuits;
    }

    /// <summary>What a part has its pressure from; null where there is nothing.</summary>
    public PressureSource? SourceOf(Part part) =>
        part.Ports.Select(port => SetOf(part, port).Source).OfType<PressureSource>().FirstOrDefault();

    /// <summary>What a port has its pressure from; null where there is nothing.</summary>
    public PressureSource? SourceAt(PortPlace place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return SetOf(place.Part, place.Port).Source;
    }

    private Set SetOf(Part part, Port port)
    {
        var inside = part.Kind == PartKind.Reservoir ? "port " + port.Name : port.Circuit ?? string.Empty;
        if (!_sets.TryGetValue((part.Name, inside), out var set))
        {
            var source = part.Kind != PartKind.MasterCylinder ? null
                : new PressureSource(part.Name, port.Circuit);
            set = new Set { Source = source, Name = port.Circuit };
            _sets.Add((part.Name, inside), set);
        }

        return set.Whole();
    }

    /// <summary>Ports that are joined.</summary>
    private sealed class Set
    {
        private Set? _partOf;

        /// <summary>The master cylinder's circuit that it hangs on.</summary>
        public PressureSource? Source { get; set; }

        /// <summary>What the ports call the circuit.</summary>
        public string? Name { get; set; }

        /// <summary>The set that it has become a part of, with the way there shortened.</summary>
        public Set Whole()
        {
            var whole = this;
            while (whole._partOf is { } larger)
            {
                whole._partOf = larger._partOf ?? larger;
                whole = larger;
            }

            return whole;
        }

        /// <summary>Makes one of two; says which two circuits they are where they have to stay apart.</summary>
        public (string One, string Other)? Join(Set other)
        {
            var apart = Apart(Source?.InWords, other.Source?.InWords) ?? Apart(Name, other.Name);
            other._partOf = this;
            Source ??= other.Source;
            Name ??= other.Name;
            return apart;
        }

        private static (string One, string Other)? Apart(string? one, string? other) =>
            one is null || other is null || string.Equals(one, other, StringComparison.Ordinal) ? null : (one, other);
    }
}
