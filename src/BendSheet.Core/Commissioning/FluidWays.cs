using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Core.Commissioning;

/// <summary>How long the pieces of a network are, and what they hold.</summary>
/// <param name="Length">Of a line from end to end, of a hose; null where nobody knows.</param>
/// <param name="Bore">Inside diameter of a line; null for a hose, and where nobody said the wall.</param>
/// <param name="IsRough">The line has only a rough length.</param>
public sealed record PieceSize(Length? Length, Length? Bore, bool IsRough);

/// <summary>The ways of the fluid from one circuit of a master cylinder, each the shortest there is.</summary>
/// <remarks>E. W. Dijkstra, A Note on Two Problems in Connexion with Graphs (1959), over the pieces' lengths.</remarks>
internal sealed class FluidWays
{
    private readonly Dictionary<(string Part, string Inside), Reached> _reached = [];

    private FluidWays()
    {
    }

    /// <summary>Every line and hose that hangs on this circuit, in the order they are reached.</summary>
    public List<Connection> Pieces { get; } = [];

    /// <summary>The shortest way to a part; null where the fluid does not reach it.</summary>
    public Reached? To(Part part) => part.Ports.Select(port => _reached.GetValueOrDefault((part.Name, Inside(part, port))))
        .OfType<Reached>().MinBy(reached => reached.Millimetres);

    /// <summary>All ways from one circuit.</summary>
    /// <param name="uses">What goes to each port.</param>
    /// <param name="master">The part with the pressure.</param>
    /// <param name="circuit">Which one of its circuits; null where it has only one.</param>
    /// <param name="sizes">Of lines and hoses.</param>
    public static FluidWays From(
        ILookup<(string Part, string Port), PortUse> uses, Part master, string? circuit, Func<Connection, PieceSize> sizes)
    {
        var ways = new FluidWays();
        var open = new PriorityQueue<(Part Part, string Inside, Reached Way), (double Millimetres, int Order)>();
        var seen = new HashSet<Connection>(ReferenceEqualityComparer.Instance);
        open.Enqueue((master, circuit ?? string.Empty, new(0, 0, 0, [])), (0, 0));
        while (open.TryDequeue(out var next, out _))
        {
            if (!ways._reached.TryAdd((next.Part.Name, next.Inside), next.Way))
            {
                continue;
            }

            var ports = next.Part.Ports.Where(port => string.Equals(Inside(next.Part, port), next.Inside, StringComparison.Ordinal));
            foreach (var use in ports.SelectMany(port => uses[(next.Part.Name, port.Name)]))
            {
                if (seen.Add(use.Connection) && use.Connection.Kind != ConnectionKind.ScrewedIn)
                {
                    ways.Pieces.Add(use.Connection);
                }

                // A reservoir joins nothing, and what another master cylinder presses is another circuit.
                if (use.Other.Port is { Part.Kind: not (PartKind.Reservoir or PartKind.MasterCylinder) } other)
                {
                    var way = next.Way.Through(use.Connection, sizes(use.Connection));
                    open.Enqueue((other.Part, Inside(other.Part, other.Port), way), (way.Millimetres, open.Count));
                }
            }
        }

        return ways;
    }

    private static string Inside(Part part, Port port) =>
        part.Kind == PartKind.Reservoir ? "port " + port.Name : port.Circuit ?? string.Empty;

    /// <summary>A way to a part.</summary>
    /// <param name="TubeMm">Of lines along it, in millimetres.</param>
    /// <param name="HoseMm">Of hoses.</param>
    /// <param name="Unknown">Pieces whose length nobody knows.</param>
    /// <param name="Names">Of the pieces along it.</param>
    internal sealed record Reached(double TubeMm, double HoseMm, int Unknown, ImmutableArray<string> Names)
    {
        public double Millimetres => TubeMm + HoseMm;

        public Reached Through(Connection connection, PieceSize size) => connection.Kind == ConnectionKind.ScrewedIn ? this : new(
            TubeMm + (connection.Kind == ConnectionKind.Line ? size.Length?.Millimetres ?? 0 : 0),
            HoseMm + (connection.Kind == ConnectionKind.Hose ? size.Length?.Millimetres ?? 0 : 0),
            Unknown + (size.Length is null ? 1 : 0),
            Names.Add(connection.InWords));
    }
}
