using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Clearance;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Picture;

/// <summary>From the solved car to what its picture shows.</summary>
public sealed class PictureWriter
{
    private readonly PipeNetwork _network;
    private readonly LengthNotation _notation;
    private readonly Dictionary<string, SolvedLine> _solved;
    private readonly Dictionary<string, RoughLine> _rough;
    private readonly Dictionary<string, Hose> _hoses;
    private readonly Circuits _circuits;
    private readonly Dictionary<(string Part, string Port), Vector3D> _places = [];
    private readonly List<PressureSource> _sources = [];

    private PictureWriter(
        PipeNetwork network, IReadOnlyCollection<SolvedLine> lines, IReadOnlyCollection<RoughLine> rough, LengthNotation notation)
    {
        _network = network.Connections.IsEmpty ? PipeNetwork.Of(CarParts.None, lines.Select(line => line.Template), rough) : network;
        _notation = notation;
        _solved = lines.ToDictionary(line => line.Template.Name, StringComparer.Ordinal);
        _rough = rough.ToDictionary(line => line.Name, StringComparer.Ordinal);
        _hoses = network.Car.Hoses.ToDictionary(hose => hose.Name, StringComparer.Ordinal);
        _circuits = Circuits.Of(_network);
        FindPlaces();
    }

    /// <summary>The picture of a car; null where there is neither a place nor a network.</summary>
    /// <param name="project">Empty where the file does not say.</param>
    /// <param name="network">The whole car; nothing where the file is wrong.</param>
    /// <param name="lines">All that could be solved.</param>
    /// <param name="rough">All that have only a rough length.</param>
    /// <param name="zones">To keep clear.</param>
    /// <param name="mistyped">Names of lines that could not be read.</param>
    /// <param name="notation">How lengths are shown.</param>
    public static CarPicture? Of(
        string project,
        PipeNetwork network,
        IReadOnlyCollection<SolvedLine> lines,
        IReadOnlyCollection<RoughLine> rough,
        ImmutableArray<KeepClearZone> zones,
        IReadOnlyCollection<string> mistyped,
        LengthNotation notation)
    {
        var writer = new PictureWriter(network, lines, rough, notation);
        List<PicturedRun> runs = [.. writer._network.Connections.Select(writer.Run)];
        var hasPlaces = runs.Exists(run => run.IsPlaced);
        if (!hasPlaces && network.IsEmpty)
        {
            return null;
        }

        var picture = Content(runs, hasPlaces);
        return !network.IsEmpty && hasPlaces && runs.Exists(run => run.Kind != ConnectionKind.ScrewedIn && !run.IsPlaced)
            ? picture with { Diagram = Content(runs.ConvertAll(run => run with { Tube = null, Hose = null }), withPlaces: false) }
            : picture;

        CarPicture Content(List<PicturedRun> shown, bool withPlaces)
        {
            var number = 0;
            ImmutableArray<PicturedRun> numbered = [.. shown.Select(run => IsShown(run) ? run with { Number = ++number } : run)];
            ImmutableArray<PicturedPart> parts =
            [
                .. network.Car.Parts.Select(writer.Part)
                    .Select(part => withPlaces && part.Places.IsEmpty ? part : part with { Number = ++number }),
            ];
            return new(
                project,
                notation,
                numbered,
                parts,
                withPlaces
                    ? [.. zones.Select(zone => new PicturedZone(zone.Name, notation.WithUnit(zone.Clearance), zone.Shape, ++number))]
                    : [],
                writer.CircuitNames(),
                [.. PictureWords.NotDrawn(withPlaces, numbered, parts, writer._rough.Keys, mistyped)]);

            bool IsShown(PicturedRun run) => run.Kind != ConnectionKind.ScrewedIn && (run.IsPlaced || !withPlaces);
        }
    }

    private static (string Part, string Port) Key(PortPlace place) => (place.Part.Name, place.Port.Name);

    /// <summary>
    /// Typed places first; a drawn line that ends in a port says where that is as well, and so does a part that sits in another one.
    /// </summary>
    private void FindPlaces()
    {
        foreach (var (part, port) in _network.Car.Parts.SelectMany(part => part.Ports.Select(port => (part, port))))
        {
            if (port.Lie?.Position is { } typed)
            {
                _places[(part.Name, port.Name)] = typed;
            }
        }

        foreach (var connection in _network.Connections)
        {
            if (TubeOf(connection) is { } tube)
            {
                Reach(connection.A.Port, tube.EndA);
                Reach(connection.B.Port, tube.EndB);
            }
        }

        foreach (var screwed in _network.Connections.Where(connection => connection.Kind == ConnectionKind.ScrewedIn))
        {
            Reach(screwed.A.Port, PlaceOf(screwed.B));
            Reach(screwed.B.Port, PlaceOf(screwed.A));
        }

        void Reach(PortPlace? port, Vector3D? place)
        {
            if (port is not null && place is { } known)
            {
                _places.TryAdd(Key(port), known);
            }
        }
    }

    private Vector3D? PlaceOf(ConnectionEnd end) =>
        end.Port is { } port && _places.TryGetValue(Key(port), out var place) ? place : null;

    private TubeCentreline? TubeOf(Connection connection) => connection.Kind == ConnectionKind.Line
        && _solved.GetValueOrDefault(connection.Name) is { Template.HasPlace: true } line ? line.Centreline : null;

    private PicturedRun Run(Connection connection) => new(
        connection.Kind, connection.Name, LengthOf(connection), End(connection.A, 0), End(connection.B, 1), IsMade(connection))
    {
        Circuit = CircuitOf(connection),
        Tube = TubeOf(connection),
        Hose = connection.Kind == ConnectionKind.Hose && PlaceOf(connection.A) is { } a && PlaceOf(connection.B) is { } b ? (a, b) : null,
    };

    private static PicturedEnd End(ConnectionEnd end, int index) =>
        new(end.Port?.InWords ?? end.At ?? PictureWords.EndWithoutName(index), end.Port?.Part.Name, end.At is not null);

    private PicturedPart Part(Part part) => new(
        part.Name,
        part.Kind.Word(),
        part.Kind == PartKind.MasterCylinder,
        [.. part.Ports.Where(port => _places.ContainsKey((part.Name, port.Name))).Select(port => _places[(part.Name, port.Name)])]);

    private string LengthOf(Connection connection) => connection.Kind switch
    {
        ConnectionKind.Line when _solved.GetValueOrDefault(connection.Name)?.Plan is { } plan => _notation.WithUnit(plan.CutLength),
        ConnectionKind.Line when _rough.GetValueOrDefault(connection.Name) is { } rough =>
            PictureWords.About(_notation.WithUnit(rough.Length)),
        ConnectionKind.Hose when connection.Length is { } length => _notation.WithUnit(length),
        _ => string.Empty,
    };

    private bool IsMade(Connection connection) => connection.Kind switch
    {
        ConnectionKind.Line => _solved.GetValueOrDefault(connection.Name)?.Template.Made
            ?? _rough.GetValueOrDefault(connection.Name)?.Made
            ?? false,
        ConnectionKind.Hose => _hoses.GetValueOrDefault(connection.Name)?.Have > 0,
        _ => true,
    };

    private int? CircuitOf(Connection connection)
    {
        var source = connection.Ends.Select(end => end.Port is { } port ? _circuits.SourceAt(port) : null)
            .OfType<PressureSource>().FirstOrDefault();
        if (source is null)
        {
            return null;
        }

        if (!_sources.Contains(source))
        {
            _sources.Add(source);
        }

        return _sources.IndexOf(source);
    }

    /// <summary>As short as tells them apart.</summary>
    private ImmutableArray<string> CircuitNames() =>
    [
        .. _sources.Select(
            source => _sources.Count(other => string.Equals(Short(other), Short(source), StringComparison.Ordinal)) == 1
                ? Short(source)
                : source.InWords),
    ];

    private static string Short(PressureSource source) => source.Circuit ?? source.Master;
}
