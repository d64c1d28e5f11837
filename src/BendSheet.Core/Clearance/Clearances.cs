using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Clearance;

/// <summary>Lines whose places on the car are known, held against each other and against the zones that have to stay clear.</summary>
/// <param name="Approaches">Too near: pairs of lines by where the later one was typed, then zones; each at its nearest place.</param>
/// <param name="Looked">How many lines have a known place.</param>
/// <param name="IsWhole">Every pair was looked at; false where so many lie in one place that it would take too long.</param>
public sealed record Clearances(ImmutableArray<Approach> Approaches, int Looked, bool IsWhole)
{
    /// <summary>
    /// Lines that go to one part come together there: so much of each is not looked at (common practice, no source: nut, sleeve and the
    /// straight that a flaring bar needs).
    /// </summary>
    public static Length OffSharedPart { get; } = Length.FromMillimetres(50);

    /// <summary>Boxes and places that are looked at: ten times what 500 lines of a crowded car take.</summary>
    private const long MostWork = 20_000_000;

    /// <summary>Nothing known, nothing said.</summary>
    public static Clearances None { get; } = new([], 0, IsWhole: true);

    /// <summary>Looks at all of them.</summary>
    /// <param name="lines">In the order of the file; those without a place are left out.</param>
    /// <param name="room">Zones, and the air between tubes.</param>
    public static Clearances Of(IEnumerable<SolvedLine> lines, KeepClear room)
    {
        List<PlacedLine> placed =
        [
            .. lines.Where(line => line is { Centreline: not null, Template.HasPlace: true }).Select((line, i) => new PlacedLine(line, i)),
        ];
        if (placed.Count == 0)
        {
            return None;
        }

        var work = 0L;
        var found = new List<Approach>();
        var isWhole = Lines(placed, room.Between, found, ref work) && Zones(placed, room.Zones, found, ref work);
        return new([.. found], placed.Count, isWhole);
    }

    /// <summary>
    /// A sweep along X; lines that begin at one X stay in the order of the file. Only lines that overlap along X, or nearly do, are held
    /// against each other.
    /// </summary>
    private static bool Lines(List<PlacedLine> placed, Length between, List<Approach> found, ref long work)
    {
        var open = new List<PlacedLine>();
        foreach (var line in placed.OrderBy(one => one.Bounds.Low.X))
        {
            var most = between.Millimetres + line.RadiusMm;
            open.RemoveAll(one => one.Bounds.High.X + one.RadiusMm + between.Millimetres + Widest < line.Bounds.Low.X);
            foreach (var other in open)
            {
                if (++work > MostWork)
                {
                    return false;
                }

                if (line.Bounds.GapTo(other.Bounds) < most + other.RadiusMm)
                {
                    var (first, second) = line.Order < other.Order ? (line, other) : (other, line);
                    Add(first, second, between, found, ref work);
                }
            }

            open.Add(line);
        }

        found.Sort((one, other) => (one.Second!.Line.Template.At.Line, one.First.Line.Template.At.Line)
            .CompareTo((other.Second!.Line.Template.At.Line, other.First.Line.Template.At.Line)));
        return true;
    }

    /// <summary>No tube of a car is thicker than this, in millimetres: the sweep keeps lines open for so much longer.</summary>
    private const double Widest = 1000;

    private static void Add(PlacedLine first, PlacedLine second, Length between, List<Approach> found, ref long work)
    {
        var (firstTube, secondTube) = (first.Beside(second), second.Beside(first));
        var radii = Length.FromMillimetres(first.RadiusMm + second.RadiusMm);
        if (firstTube is not null
            && secondTube is not null
            && firstTube.Nearer(secondTube, between + radii, ref work) is { } nearest)
        {
            found.Add(new(
                new(first.Line, nearest.First), new(second.Line, nearest.Second!.Value), null, nearest.Distance - radii, between));
        }
    }

    private static bool Zones(List<PlacedLine> placed, ImmutableArray<KeepClearZone> zones, List<Approach> found, ref long work)
    {
        foreach (var zone in zones)
        {
            foreach (var line in placed)
            {
                if (++work > MostWork)
                {
                    return false;
                }

                var radius = Length.FromMillimetres(line.RadiusMm);
                if (line.Whole.Nearer(zone.Shape, zone.Clearance + radius, ref work) is { } nearest)
                {
                    found.Add(new(new(line.Line, nearest.First), null, zone, nearest.Distance - radius, zone.Clearance));
                }
            }
        }

        return true;
    }

    /// <summary>A line with its boxes; those without the ends shared with another line are made when asked for.</summary>
    private sealed class PlacedLine(SolvedLine line, int order)
    {
        private readonly TubeBoxes?[] _without = new TubeBoxes?[4];

        public SolvedLine Line => line;

        public int Order => order;

        public double RadiusMm { get; } = line.Template.Tube.OutsideDiameter.Millimetres / 2;

        public TubeBoxes Whole { get; } = TubeBoxes.Of(line.Centreline!, Length.Zero, Length.Zero)
            ?? throw new ArgumentException("A line without length has no plan.", nameof(line));

        public Bounds Bounds => Whole.Bounds;

        /// <summary>What is held against another line: all but the ends at a part that both go to. Null for nothing.</summary>
        public TubeBoxes? Beside(PlacedLine other)
        {
            var (atA, atB) = (other.GoesTo(line.Template.From.Port?.Part.Name), other.GoesTo(line.Template.To.Port?.Part.Name));
            if (!atA && !atB)
            {
                return Whole;
            }

            return _without[(atA ? 1 : 0) + (atB ? 2 : 0)] ??=
                TubeBoxes.Of(line.Centreline!, atA ? OffSharedPart : Length.Zero, atB ? OffSharedPart : Length.Zero);
        }

        private bool GoesTo(string? part) => part is not null
            && (string.Equals(line.Template.From.Port?.Part.Name, part, StringComparison.Ordinal)
                || string.Equals(line.Template.To.Port?.Part.Name, part, StringComparison.Ordinal));
    }
}
