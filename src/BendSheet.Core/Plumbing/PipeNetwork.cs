using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Plumbing;

/// <summary>The whole car: its parts, and what leads from port to port.</summary>
/// <param name="Car">What the file says of parts and hoses.</param>
/// <param name="Connections">Lines, hoses and parts that sit in others, in the order of the file.</param>
public sealed record PipeNetwork(CarParts Car, ImmutableArray<Connection> Connections)
{
    /// <summary>Nothing.</summary>
    public static PipeNetwork None { get; } = new(CarParts.None, []);

    /// <summary>The network of a file's lines, measured and rough.</summary>
    public static PipeNetwork Of(CarParts car, IEnumerable<LineTemplate> lines, IEnumerable<RoughLine> rough) => new(
        car,
        [
            .. lines.Select(Connection.Of).Concat(rough.Select(Connection.Of))
                .Concat(car.Hoses.Select(Connection.Of)).Concat(car.ScrewedIns.Select(Connection.Of))
                .InFileOrder(connection => connection.Position),
        ]);

    /// <summary>Everything that goes to a port, by the port, each in the order of the file.</summary>
    public ILookup<(string Part, string Port), PortUse> Uses => Connections
        .SelectMany(
            connection => connection.Ends.Where(end => end.Port is not null), (connection, end) => new PortUse(connection, end, end.Port!))
        .ToLookup(use => (use.Place.Part.Name, use.Place.Port.Name));

    /// <summary>A file of lines only, of which nothing is said about plumbing.</summary>
    public bool IsEmpty => Car.Parts.IsEmpty;
}

/// <summary>Something that goes to a port.</summary>
/// <param name="Connection">What goes there.</param>
/// <param name="End">Which end of it.</param>
/// <param name="Place">The port.</param>
public sealed record PortUse(Connection Connection, ConnectionEnd End, PortPlace Place)
{
    /// <summary>The other end.</summary>
    public ConnectionEnd Other => ReferenceEquals(End, Connection.A) ? Connection.B : Connection.A;

    /// <summary>Where the port was named.</summary>
    public SourcePosition Position => Place.Position;
}
