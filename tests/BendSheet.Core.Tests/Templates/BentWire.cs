using BendSheet.Core.Geometry;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Templates;

/// <summary>
/// A wire laid along corner points, and what a ruler reads on it, from the places where its faces and its bends' centres lie: lines of
/// neighbouring legs, moved sideways, are made to meet. No tangent of half an angle is used.
/// </summary>
internal sealed record BentWire(IReadOnlyList<Vector3D> Corners, double Diameter, double Radius)
{
    /// <summary>What is read on each leg, in millimetres.</summary>
    public double[] Read(MeasuredTo habit) =>
        [.. Enumerable.Range(0, Corners.Count - 1).Select(leg => habit switch
        {
            MeasuredTo.Corner => Between(leg, inwards: 0),
            MeasuredTo.Outside => Between(leg, inwards: -Diameter / 2),
            MeasuredTo.Inside => Between(leg, inwards: Diameter / 2),
            MeasuredTo.Straight => Between(leg, inwards: Radius),
            _ => Between(leg, inwards: Radius) + HalfArc(leg) + HalfArc(leg + 1),
        })];

    /// <summary>Along a leg, between the places abreast of where its line moved inwards meets those of its neighbours.</summary>
    private double Between(int leg, double inwards) =>
        Corners[leg].DistanceTo(Corners[leg + 1])
        + (IsFree(leg + 1) ? 0 : Meeting(leg + 1, inwards).BeforeCorner)
        - (IsFree(leg) ? 0 : Meeting(leg, inwards).BehindCorner);

    /// <summary>Half of the bend's own length, from the angle between the arms to its two tangent points.</summary>
    private double HalfArc(int corner)
    {
        if (IsFree(corner))
        {
            return 0;
        }

        var (way, next, normal) = At(corner);
        var (before, behind) = Meeting(corner, Radius);
        var centre = Corners[corner] + (before * way) + (Radius * normal.Cross(way));
        var (from, to) = (Corners[corner] + (before * way) - centre, Corners[corner] + (behind * next) - centre);
        return Radius * Math.Atan2(from.Cross(to).Norm, from.Dot(to)) / 2;
    }

    /// <summary>
    /// Where the two lines at a corner meet once both are moved inwards, as distances along the legs' ways from the corner.
    /// </summary>
    private (double BeforeCorner, double BehindCorner) Meeting(int corner, double inwards)
    {
        // before·way − behind·next = inwards·(normal × next − normal × way), a plane system of two equations.
        var (way, next, normal) = At(corner);
        var apart = inwards * (normal.Cross(next) - normal.Cross(way));
        var sine = way.Cross(next).Dot(normal);
        return (apart.Cross(next).Dot(normal) / sine, apart.Cross(way).Dot(normal) / sine);
    }

    private (Vector3D Way, Vector3D Next, Vector3D Normal) At(int corner)
    {
        var way = Unit(Corners[corner] - Corners[corner - 1]);
        var next = Unit(Corners[corner + 1] - Corners[corner]);
        return (way, next, Unit(way.Cross(next)));
    }

    private bool IsFree(int corner) => corner == 0 || corner == Corners.Count - 1;

    private static Vector3D Unit(Vector3D vector) => (1 / vector.Norm) * vector;
}
