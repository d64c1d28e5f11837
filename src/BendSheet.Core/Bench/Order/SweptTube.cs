using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Order;

/// <summary>A bend on the arm, as it comes when walking outwards.</summary>
/// <param name="Straight">Before it.</param>
/// <param name="Roll">Of its plane since the bend before; a rotation reads the same from either end.</param>
/// <param name="Layout">Radius and turn.</param>
/// <param name="Tube">Still straight tube that it is made of.</param>
internal readonly record struct ArmBend(Length Straight, Angle Roll, BendLayout Layout, Length Tube);

/// <summary>
/// The tube on one side of a bend that is being made: from the bend outwards to the cut end, the bends nearest to it made already and the
/// others still straight.
/// </summary>
/// <remarks>
/// Frame of the tool: origin where the arm's tube touches the former first, x along the tube away from the other side, y to the former's
/// middle, so that the former's axis stands at (0, R). Turning by φ rolls R·φ of tube on to the former: a point that was at (x, y) from
/// the place of contact is then at (x − R·φ, y), turned. The square of its distance from the axis is a parabola in φ, largest at one end
/// of the sweep; its height over the plane of the bend does not change.
/// </remarks>
/// <param name="own">The bend that is being made.</param>
/// <param name="ownTube">Still straight tube in it.</param>
/// <param name="pull">How far the tool is pulled.</param>
/// <param name="outwards">The bends beyond it.</param>
/// <param name="last">Straight after the last of them, up to the cut end.</param>
internal sealed class SweptTube(BendLayout own, Length ownTube, Angle pull, IReadOnlyList<ArmBend> outwards, Length last)
{
    /// <summary>Points on made bends no further apart than this: the reach is then right to a hundredth of the bend's radius.</summary>
    private const double SampleDegrees = 15;

    private readonly double _radius = own.Radius.Millimetres;
    private readonly double _rolled = ownTube.Millimetres * (pull.Degrees / own.Bend.Turn.Degrees);

    /// <summary>How far the arm reaches from the former's axis while the bend is made, to the tube's centreline.</summary>
    /// <returns>Entry m is the reach with the m nearest bends made.</returns>
    public Length[] Reaches()
    {
        var reaches = new Length[outwards.Count + 1];
        var sofar = 0.0;
        foreach (var (made, points, tail) in Walk())
        {
            foreach (var point in points)
            {
                sofar = Math.Max(sofar, Reach(point));
            }

            reaches[made] = Length.FromMillimetres(Math.Max(sofar, Reach(tail)));
        }

        return reaches;
    }

    /// <summary>
    /// Points along the arm, all of its bends made, before the sweep: between two points it is straight, but on made bends.
    /// </summary>
    public IReadOnlyList<Vector3D> Points()
    {
        var all = new List<Vector3D> { default };
        foreach (var (made, points, tail) in Walk())
        {
            all.AddRange(points);
            if (made == outwards.Count)
            {
                all.Add(tail);
            }
        }

        return all;
    }

    /// <summary>How far a point of the arm is from the former's axis, at that end of the sweep where it is further.</summary>
    public double Reach(Vector3D point)
    {
        var x = Math.Max(Math.Abs(point.X), Math.Abs(point.X - _rolled));
        return Math.Sqrt((x * x) + ((point.Y - _radius) * (point.Y - _radius)));
    }

    /// <summary>A point of the arm when the bend is made, from the former's middle.</summary>
    public Vector3D Swept(Vector3D point)
    {
        var (sin, cos) = Math.SinCos(pull.Radians);
        var (x, y) = (point.X - _rolled, point.Y - _radius);
        return new((cos * x) - (sin * y), (sin * x) + (cos * y), point.Z);
    }

    /// <summary>Bend by bend outwards: the points that making it adds, and where the cut end is while all beyond it is straight.</summary>
    private IEnumerable<(int Made, Vector3D[] Points, Vector3D Tail)> Walk()
    {
        var frame = Frame.Default.Advanced(ownTube);
        var rest = outwards.Aggregate(last, (sum, bend) => sum + bend.Straight + bend.Tube);
        yield return (0, [], frame.Advanced(rest).Position);
        for (var i = 0; i < outwards.Count; i++)
        {
            var next = outwards[i];
            var start = frame.Advanced(next.Straight).Rolled(next.Roll);
            frame = start.Bent(next.Layout.Radius, next.Layout.Bend.Turn);
            rest -= next.Straight + next.Tube;
            yield return (i + 1, Along(start, next.Layout), frame.Advanced(rest).Position);
        }
    }

    private static Vector3D[] Along(Frame start, BendLayout bend)
    {
        var steps = (int)Math.Ceiling(bend.Bend.Turn.Degrees / SampleDegrees);
        var points = new Vector3D[steps + 1];
        for (var i = 0; i < points.Length; i++)
        {
            points[i] = start.OnArc(bend.Radius, Angle.FromDegrees(bend.Bend.Turn.Degrees * i / steps));
        }

        return points;
    }
}
