using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Commissioning;

/// <summary>What the lines of one circuit hold.</summary>
/// <param name="Circuit">The master cylinder and its circuit.</param>
/// <param name="Litres">In the lines whose wall is known: π/4·(outside diameter − 2·wall)² times the length.</param>
/// <param name="Tube">Length of all its lines.</param>
/// <param name="Rough">Lines that have only a rough length, which counts.</param>
/// <param name="NotCounted">Lines and hoses whose bore or length nobody knows; parts hold fluid too and are never counted.</param>
public sealed record CircuitFilling(
    PressureSource Circuit, double Litres, Length Tube, ImmutableArray<string> Rough, ImmutableArray<string> NotCounted);

/// <summary>The way to one bleed screw.</summary>
/// <param name="Bleeder">Part and port.</param>
/// <param name="Circuit">Whose pressure reaches it.</param>
/// <param name="Tube">Length of the lines on the way from the master cylinder.</param>
/// <param name="Hose">Length of the hoses on it.</param>
/// <param name="Through">The pieces on the way.</param>
/// <param name="IsAtLeast">The length of some piece is not known.</param>
public sealed record BleederWay(
    string Bleeder, PressureSource Circuit, Length Tube, Length Hose, ImmutableArray<string> Through, bool IsAtLeast)
{
    /// <summary>Lines and hoses.</summary>
    public Length Length => Tube + Hose;
}

/// <summary>A hump on the way, in which air stays.</summary>
/// <param name="Line">The line.</param>
/// <param name="Hump">Where on it.</param>
public sealed record HighPlace(string Line, HighPoint Hump);

/// <summary>Filling and bleeding of a car's circuits.</summary>
/// <param name="Circuits">In the order of the file.</param>
/// <param name="Bleeders">Longest way first, one master cylinder after the other.</param>
/// <param name="HighPlaces">In the order of the file, only of lines whose up is known.</param>
public sealed record Filling(
    ImmutableArray<CircuitFilling> Circuits, ImmutableArray<BleederWay> Bleeders, ImmutableArray<HighPlace> HighPlaces)
{
    /// <summary>Nothing is known.</summary>
    public static Filling None { get; } = new([], [], []);

    /// <summary>From network and lines.</summary>
    /// <param name="network">The whole car.</param>
    /// <param name="lines">That are solved.</param>
    /// <param name="rough">That have only a rough length.</param>
    public static Filling Of(PipeNetwork network, IEnumerable<SolvedLine> lines, IEnumerable<RoughLine> rough)
    {
        List<SolvedLine> solved = [.. lines];
        var sizes = Sizes(network, solved, rough);
        var uses = network.Uses;
        var circuits = ImmutableArray.CreateBuilder<CircuitFilling>();
        var bleeders = new List<BleederWay>();
        foreach (var master in network.Car.Parts.Where(part => part.Kind == PartKind.MasterCylinder))
        {
            var circuitNames = master.Ports.Where(port => !port.IsBleeder).Select(port => port.Circuit).Distinct(StringComparer.Ordinal);
            var ofMaster = new List<BleederWay>();
            foreach (var circuit in circuitNames)
            {
                var source = new PressureSource(master.Name, circuit);
                var ways = FluidWays.From(uses, master, circuit, sizes);
                if (ways.Pieces.Count > 0)
                {
                    circuits.Add(Held(source, ways, sizes));
                    ofMaster.AddRange(Bleed(network, source, ways));
                }
            }

            bleeders.AddRange(ofMaster.OrderByDescending(way => way.Length));
        }

        return new(circuits.ToImmutable(), [.. bleeders], [.. HighPlacesOf(solved)]);
    }

    private static Func<Connection, PieceSize> Sizes(PipeNetwork network, List<SolvedLine> lines, IEnumerable<RoughLine> rough)
    {
        var known = lines.Where(line => line.Plan is not null).ToDictionary(
            line => line.Template.Name,
            line => new PieceSize(line.Plan!.CentrelineLength, line.Template.Tube.InsideDiameter, IsRough: false),
            StringComparer.Ordinal);
        foreach (var line in rough)
        {
            known.TryAdd(line.Name, new(line.Length, line.Tube.InsideDiameter, IsRough: true));
        }

        return connection => connection.Kind == ConnectionKind.Line
            ? known.GetValueOrDefault(connection.Name) ?? new(null, null, IsRough: false)
            : new(connection.Kind == ConnectionKind.ScrewedIn ? Length.Zero : connection.Length, null, IsRough: false);
    }

    private static CircuitFilling Held(PressureSource source, FluidWays ways, Func<Connection, PieceSize> sizes)
    {
        var pieces = ways.Pieces.Select(piece => (piece.InWords, piece.Kind, Size: sizes(piece))).ToList();
        return new(
            source,
            pieces.Sum(piece => Litres(piece.Size)),
            pieces.Where(piece => piece.Kind == ConnectionKind.Line)
                .Aggregate(Length.Zero, (sum, piece) => sum + (piece.Size.Length ?? Length.Zero)),
            [.. pieces.Where(piece => piece.Size.IsRough).Select(piece => piece.InWords)],
            [.. pieces.Where(piece => piece.Size.Length is null || piece.Size.Bore is null).Select(piece => piece.InWords)]);
    }

    /// <summary>A litre is a million cubic millimetres.</summary>
    private static double Litres(PieceSize size) => size is { Length: { } length, Bore: { } bore }
        ? Math.PI / 4 * bore.Millimetres * bore.Millimetres * length.Millimetres / 1e6
        : 0;

    private static IEnumerable<BleederWay> Bleed(PipeNetwork network, PressureSource source, FluidWays ways) =>
        from part in network.Car.Parts
        let way = ways.To(part)
        where way is not null
        from port in part.Ports
        where port.IsBleeder
        select new BleederWay(
            $"{part.Name}.{port.Name}",
            source,
            Length.FromMillimetres(way.TubeMm),
            Length.FromMillimetres(way.HoseMm),
            way.Names,
            way.Unknown > 0);

    private static IEnumerable<HighPlace> HighPlacesOf(List<SolvedLine> lines) =>
        from line in lines
        where line is { Centreline: not null, Template.LiesOnCar: true }
        from hump in HighPoint.Of(line.Centreline!)
        where line.Template.Tube.OutsideDiameter.FallsShortOf(hump.Height)
        select new HighPlace(line.Template.Name, hump);
}

/// <summary>A bleed screw that lies lower than the line into its part lets fluid out and keeps the air.</summary>
public static class BleederLow
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "bleeder-low", RuleSubject.Making, "Air above a bleed screw stays in its part, and a brake with air in it does not brake.");

    /// <summary>A warning for each such part, at its highest bleed screw; silent where heights are not known.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network)
    {
        foreach (var part in network.Car.Parts)
        {
            var placed = part.Ports.Where(port => port.Lie?.Position is not null).ToLookup(port => port.IsBleeder);
            if (placed[false].MaxBy(port => port.Lie!.Position!.Value.Z) is not { } top
                || placed[true].MaxBy(port => port.Lie!.Position!.Value.Z) is not { } highest)
            {
                continue;
            }

            var below = Length.FromMillimetres(top.Lie!.Position!.Value.Z - highest.Lie!.Position!.Value.Z);
            if (below > Tolerances.SamePoint)
            {
                yield return Rule.Warning(
                    highest.Lie!.At,
                    $"{part.Name}.{highest.Name} lies {FindingFigures.Mm(below)} lower than {part.Name}.{top.Name}: air stays above it; "
                        + "turn the part or change sides so that the bleed screw is at the top, or correct the places");
            }
        }
    }
}
