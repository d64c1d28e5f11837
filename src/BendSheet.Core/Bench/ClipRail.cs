using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench;

/// <summary>A straight of a line along a rail.</summary>
/// <param name="Line">Its name.</param>
/// <param name="Straight">The straight's number, 1 at end A.</param>
/// <param name="IsFirst">It begins at the finished end A.</param>
/// <param name="IsLast">It ends at the finished end B.</param>
/// <param name="From">Where the straight begins, from the edge.</param>
/// <param name="To">Where it ends, from the edge.</param>
/// <param name="Reversed">End B of the line lies towards the edge.</param>
/// <param name="Drill">For each clip's fastener; null where the file does not say it.</param>
public sealed record RailLine(
    string Line, int Straight, bool IsFirst, bool IsLast, Length From, Length To, bool Reversed, Length? Drill)
{
    /// <summary>How far it runs beside the first of the rail's lines, middle to middle where its own middle is.</summary>
    public Length Aside { get; init; }
}

/// <summary>A clip on a rail.</summary>
/// <param name="Line">The line that it holds.</param>
/// <param name="Number">On its line, 1 nearest to A.</param>
/// <param name="Place">Its middle, from the edge.</param>
/// <param name="Free">Where its middle may stand, from the edge: clear of bends and nuts.</param>
/// <param name="Width">What it takes of the rail.</param>
/// <param name="Drill">For its fastener; null where the file does not say it.</param>
public sealed record RailClip(string Line, int Number, Length Place, ClipGap Free, Length Width, Length? Drill);

/// <summary>A hole in a rail: for a clip, or for one that holds several lines there.</summary>
/// <param name="Clips">Of the lines held there, in order along the rail.</param>
public sealed record RailHole(ImmutableArray<RailClip> Clips)
{
    /// <summary>From the edge: midway between clips that fall together, or as near to that as all of them may stand.</summary>
    public Length Place
    {
        get
        {
            var (free, midway) = (FreeOf(Clips), 0.5 * (Clips[0].Place + Clips[^1].Place));
            return Length.FromMillimetres(Math.Clamp(midway.Millimetres, free.From.Millimetres, free.To.Millimetres));
        }
    }

    /// <summary>
    /// Where the middle of one clip for several lines may stand, as wide as the widest of theirs; of no length where there is no place.
    /// </summary>
    internal static ClipGap FreeOf(IReadOnlyCollection<RailClip> clips)
    {
        var width = clips.Max(clip => clip.Width);
        return new(
            clips.Max(clip => clip.Free.From + (0.5 * (width - clip.Width))),
            clips.Min(clip => clip.Free.To - (0.5 * (width - clip.Width))));
    }

    /// <summary>Clips of several lines fall together.</summary>
    public bool IsShared => Clips.Length > 1;
}

/// <summary>
/// Holes along one rail, all from one edge, so that errors do not add up. The edge is where the straight begins that reaches furthest back.
/// </summary>
/// <param name="Name">As the file calls the rail; null where one line is alone on it.</param>
/// <param name="Lines">In the order of the file.</param>
/// <param name="Holes">From the edge on.</param>
public sealed record ClipRail(string? Name, ImmutableArray<RailLine> Lines, ImmutableArray<RailHole> Holes)
{
    /// <summary>Straights that differ by more do not lie along one rail.</summary>
    private static readonly double LeastCosine = Math.Cos(2 * Math.PI / 180);

    /// <summary>Lines further apart than this share no clip, in millimetres (common practice, no source).</summary>
    private const double MostBesideMm = 100;

    /// <summary>The rail of one straight of a line, its edge where the straight begins.</summary>
    public static ClipRail Of(SolvedLine line, ClipRun run) => Of(null, [new(line, run, Length.Zero, Reversed: false)]);

    /// <summary>
    /// A rail that lines with known places share: for the first of them the straight with most clips, for each other that straight beside
    /// it with most clips. Null where fewer than two lie beside one another.
    /// </summary>
    /// <param name="name">Of the rail.</param>
    /// <param name="lines">Those that name it, in the order of the file.</param>
    public static ClipRail? Shared(string name, IEnumerable<SolvedLine> lines)
    {
        var placed = lines.Where(line => line is { Centreline: not null, Template.HasPlace: true })
            .Select(line => (Line: line, Runs: ClipRun.OfStraights(line))).Where(one => !one.Runs.IsEmpty).ToList();
        if (placed.Count == 0)
        {
            return null;
        }

        var first = placed[0].Runs.MaxBy(run => run.Holes.Length)!;
        var axis = placed[0].Line.Centreline!.Straights[first.Straight - 1].Start;
        List<Lie> lies =
        [
            new(placed[0].Line, first, Length.Zero, Reversed: false),
            .. placed.Skip(1).SelectMany(one => one.Runs.Select(run => Beside(axis, one.Line, run)).OfType<Lie>()
                .OrderByDescending(lie => lie.Run.Holes.Length).Take(1)),
        ];
        if (lies.Count < 2)
        {
            return null;
        }

        var edge = lies.Min(lie => lie.From);
        return Of(name, lies.ConvertAll(lie => lie with { From = lie.From - edge }));
    }

    /// <summary>How a straight lies along an axis; null where it does not lie beside it.</summary>
    private static Lie? Beside(Frame axis, SolvedLine line, ClipRun run)
    {
        var straight = line.Centreline!.Straights[run.Straight - 1];
        var cosine = straight.Start.Direction.Dot(axis.Direction);
        var (start, end) = (straight.Start.Position - axis.Position, straight.End - axis.Position);
        if (Math.Abs(cosine) < LeastCosine
            || start.Cross(axis.Direction).Norm > MostBesideMm
            || end.Cross(axis.Direction).Norm > MostBesideMm)
        {
            return null;
        }

        // Its middle is projected on to the axis; from there its own lengths count, which a slant does not shorten.
        var middle = Length.FromMillimetres(0.5 * (start + end).Dot(axis.Direction));
        var aside = Length.FromMillimetres((0.5 * (start + end)).Cross(axis.Direction).Norm);
        return new(line, run, middle - (0.5 * run.Length), cosine < 0) { Aside = aside };
    }

    private static ClipRail Of(string? name, List<Lie> lies) =>
        new(name, [.. lies.Select(lie => lie.OnRail())], Together([.. lies.SelectMany(lie => lie.Clips()).OrderBy(clip => clip.Place)]));

    /// <summary>Clips of different lines that would lie on one another are one, where all of them may stand in one place.</summary>
    private static ImmutableArray<RailHole> Together(List<RailClip> clips)
    {
        var holes = ImmutableArray.CreateBuilder<RailHole>();
        List<RailClip> together = [];
        foreach (var clip in clips)
        {
            var width = together.Select(other => other.Width).Append(clip.Width).Max();
            if (together.Count > 0 && (clip.Place - together[0].Place >= width
                || RailHole.FreeOf([.. together, clip]).Length < Length.Zero
                || together.Exists(other => string.Equals(other.Line, clip.Line, StringComparison.Ordinal))))
            {
                holes.Add(new([.. together]));
                together.Clear();
            }

            together.Add(clip);
        }

        if (together.Count > 0)
        {
            holes.Add(new([.. together]));
        }

        return holes.ToImmutable();
    }

    /// <summary>A straight with its clips along a rail.</summary>
    private sealed record Lie(SolvedLine Line, ClipRun Run, Length From, bool Reversed)
    {
        public Length Aside { get; init; }

        public RailLine OnRail() => new(
            Line.Template.Name,
            Run.Straight,
            Run.Straight == 1,
            Run.Straight == Line.Layout!.Legs.Length,
            From,
            From + Run.Length,
            Reversed,
            Run.Hole)
        {
            Aside = Aside,
        };

        public IEnumerable<RailClip> Clips() => Run.Holes.Select((hole, i) => new RailClip(
            Line.Template.Name,
            Run.FirstNumber + i,
            FromEdge(Run.FirstAlongTube + hole),
            Reversed ? new(FromEdge(Run.Free.To), FromEdge(Run.Free.From)) : new(FromEdge(Run.Free.From), FromEdge(Run.Free.To)),
            Line.Template.Clips!.Width,
            Run.Hole));

        private Length FromEdge(Length alongTube) =>
            From + (Reversed ? Run.Length - (alongTube - Run.Begins) : alongTube - Run.Begins);
    }
}
