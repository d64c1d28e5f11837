using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Order;

/// <summary>
/// The tube round the tool while one bend is made: the held side, and the swept side at both ends of its sweep, in a frame whose third axis
/// is the former's and whose origin is the former's middle, level with the tube's centreline.
/// </summary>
internal sealed class ToolClearance
{
    private readonly List<(Vector3D From, Vector3D To, bool BehindBend)> _pieces = [];

    private ToolClearance()
    {
    }

    /// <summary>The clearance of one bend in its turn.</summary>
    /// <param name="swings">Of the line.</param>
    /// <param name="step">The bend.</param>
    /// <param name="isMade">Which bends are made already.</param>
    /// <param name="radius">Of the former.</param>
    public static ToolClearance Of(SweepReach swings, BendStep step, Func<int, bool> isMade, Length radius)
    {
        var clearance = new ToolClearance();
        var held = swings.ArmOf(step.Bend, step.Held, isMade, held: true);
        var swept = swings.ArmOf(step.Bend, step.Held == TubeEnd.A ? TubeEnd.B : TubeEnd.A, isMade);
        var r = radius.Millimetres;

        // Seen from the other side the arm's x and the former's axis point the other way.
        clearance.Add(held.Points().Select(point => new Vector3D(0 - point.X, point.Y - r, 0 - point.Z)));
        clearance.Add(swept.Points().Select(point => new Vector3D(point.X, point.Y - r, point.Z)));
        clearance.Add(swept.Points().Select(point => swept.Swept(point)));
        return clearance;
    }

    /// <summary>
    /// How far the tube reaches beyond the plane of the bend, on the side that the former's axis points to or on the other.
    /// </summary>
    public Length Beyond(int side) => Length.FromMillimetres(_pieces.Max(piece => Math.Max(side * piece.From.Z, side * piece.To.Z)));

    /// <summary>
    /// How near tube beyond a made bend comes to the former's axis where it is level with the tool or beyond it on one side; null
    /// where none comes nearer than the tool's own reach.
    /// </summary>
    /// <param name="side">1 or -1, as above.</param>
    /// <param name="body">How far the tool reaches from the former's middle.</param>
    /// <param name="outsideDiameter">Of the tube: from half of it above the plane on, tube passes over the tool.</param>
    public Length? Nearest(int side, Length body, Length outsideDiameter)
    {
        double? nearest = null;
        foreach (var piece in _pieces.Where(piece => piece.BehindBend))
        {
            if (Level(piece.From, piece.To, side, 0 - (outsideDiameter.Millimetres / 2)) is var (first, last))
            {
                var distance = DistanceFromAxis(first, last);
                nearest = Math.Min(nearest ?? distance, distance);
            }
        }

        return nearest is { } known && Length.FromMillimetres(known).FallsShortOf(body) ? Length.FromMillimetres(known) : null;
    }

    private void Add(IEnumerable<Vector3D> points)
    {
        var line = points.ToList();
        for (var i = 1; i < line.Count; i++)
        {
            // The first piece is the straight that lies in the tool.
            _pieces.Add((line[i - 1], line[i], i > 1));
        }
    }

    /// <summary>The part of a piece that lies at some height or beyond it.</summary>
    private static (Vector3D Low, Vector3D High)? Level(Vector3D one, Vector3D other, int side, double height)
    {
        var (low, high) = side * one.Z <= side * other.Z ? (one, other) : (other, one);
        var (bottom, top) = (side * low.Z, side * high.Z);
        return top <= height ? null : bottom >= height ? (low, high) : (low + ((height - bottom) / (top - bottom) * (high - low)), high);
    }

    private static double DistanceFromAxis(Vector3D one, Vector3D other)
    {
        var (start, way) = (one with { Z = 0 }, (other - one) with { Z = 0 });
        var length = way.Dot(way);
        var part = length > 0 ? Math.Clamp((0 - start.Dot(way)) / length, 0, 1) : 0;
        return (start + (part * way)).Norm;
    }
}
