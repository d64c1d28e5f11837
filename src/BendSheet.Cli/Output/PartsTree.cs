using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Plumbing.Rules;

namespace BendSheet.Cli.Output;

/// <summary>
/// The way of the fluid in text: from each master cylinder through lines, hoses and parts to the wheels, and what hangs on none.
/// </summary>
public sealed class PartsTree
{
    private const string Step = "  ";

    /// <summary>A chain of parts longer than this is not indented any further.</summary>
    private const int DeepestShown = 20;

    private readonly StringBuilder _text = new();
    private readonly HashSet<string> _shown = new(StringComparer.Ordinal);
    private readonly PipeNetwork _network;
    private readonly ILookup<(string Part, string Port), PortUse> _uses;
    private readonly Dictionary<(ConnectionKind Kind, string Name), string> _lengths;

    private PartsTree(CarPlan plan)
    {
        var notation = plan.Measured.Notation;
        _network = plan.Network;
        _uses = _network.Uses;
        _lengths = plan.Lines.Where(line => line.Plan is not null)
            .ToDictionary(line => (ConnectionKind.Line, line.Template.Name), line => notation.WithUnit(line.Plan!.CutLength));
        foreach (var connection in _network.Connections
            .Where(connection => connection is { Kind: not ConnectionKind.ScrewedIn, Length: not null }))
        {
            _lengths.TryAdd((connection.Kind, connection.Name), notation.WithUnit(connection.Length!.Value));
        }
    }

    /// <summary>The tree, then the car; one sentence where the file has no parts, nothing where it is wrong.</summary>
    public static string Write(CarPlan plan)
    {
        if (plan.Verdict == Verdict.WrongFile)
        {
            return string.Empty;
        }

        return plan.Network.IsEmpty
            ? "The file has no parts: add `parts:` at the top, and lead the lines' ends to their ports, such as `from: {at: tee.left}`.\n"
            : new PartsTree(plan).Write() + CarTable.Write(plan);
    }

    private string Write()
    {
        foreach (var part in NotShown(_network.Car.Parts.Where(part => part.Kind == PartKind.MasterCylinder)))
        {
            _text.Append(_text.Length == 0 ? string.Empty : "\n");
            From(part);
        }

        var heading = (_text.Length == 0 ? string.Empty : "\n") + "On no master cylinder:\n";
        foreach (var part in NotShown(_network.Car.Parts.OrderBy(part => part.Kind.IsWheel())))
        {
            _text.Append(heading);
            heading = string.Empty;
            From(part);
        }

        var loose = _network.Connections.SelectMany(connection => connection.Ends.Where(end => end.Port is null)).ToList();
        if (loose.Count > 0)
        {
            _text.Append("\nEnds that lead to no part of the file:\n");
            foreach (var end in loose)
            {
                _text.Append(Step).Append(end.Name).Append(end.At is { } at ? ": " + at : string.Empty).Append('\n');
            }
        }

        return _text.ToString();
    }

    /// <summary>Looked at one by one: what comes first may show the others.</summary>
    private IEnumerable<Part> NotShown(IEnumerable<Part> parts) => parts.Where(part => !_shown.Contains(part.Name));

    /// <summary>
    /// A part and everything behind it, depth first. The stack is our own: a file may have a chain of parts longer than the program's
    /// stack.
    /// </summary>
    private void From(Part root)
    {
        var waiting = new Stack<(int Depth, string? Words, Part? Part, PortUse? From)>();
        waiting.Push((0, null, root, null));
        while (waiting.TryPop(out var next))
        {
            if (next.Words is { } words)
            {
                Line(next.Depth, words);
            }

            if (next.Part is not { } part)
            {
                continue;
            }

            if (!_shown.Add(part.Name))
            {
                if (part.Name.Length > 0 && next.From is not null)
                {
                    Line(next.Depth + 1, $"{part.Name}: see above");
                }

                continue;
            }

            var depth = next.From is null ? next.Depth : next.Depth + 1;
            Line(depth, $"{part.Name}: {part.Kind.Word()}");
            foreach (var port in part.Ports.Reverse())
            {
                foreach (var item in Behind(part, port, next.From, depth + 1).Reverse())
                {
                    waiting.Push(item);
                }
            }
        }
    }

    /// <summary>What stands below one port: nothing for the one we came by, and for a bleed screw.</summary>
    private IEnumerable<(int Depth, string? Words, Part? Part, PortUse? From)> Behind(Part part, Port port, PortUse? cameBy, int depth)
    {
        var name = port.Name + (port.Circuit is { } circuit ? $" (circuit {circuit})" : string.Empty);
        if (OpenPort.IsOpen(_uses, part, port))
        {
            yield return (depth, $"{name}: open", null, null);
        }

        foreach (var use in _uses[(part.Name, port.Name)].Where(use => !ReferenceEquals(use.Connection, cameBy?.Connection)))
        {
            yield return use.Other.Port is { } other
                ? (depth, $"{name}: {Way(use.Connection)} to {other.InWords}", other.Part, use)
                : (depth, $"{name}: {Way(use.Connection)} to {use.Other.At ?? "nowhere"}", null, null);
        }
    }

    private string Way(Connection connection) => connection.Kind switch
    {
        ConnectionKind.ScrewedIn => "screwed",
        _ => connection.InWords
            + (_lengths.TryGetValue((connection.Kind, connection.Name), out var length) ? ", " + length + "," : string.Empty),
    };

    private void Line(int depth, string words)
    {
        for (var step = Math.Min(depth, DeepestShown); step > 0; step--)
        {
            _text.Append(Step);
        }

        _text.Append(words).Append('\n');
    }
}
