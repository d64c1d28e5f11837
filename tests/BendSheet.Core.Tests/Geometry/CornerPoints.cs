using BendSheet.Core.Geometry;

namespace BendSheet.Core.Tests.Geometry;

/// <summary>
/// The other route between rows and points: vectors between corner points only, no frames. Lengths in millimetres, angles in degrees.
/// </summary>
/// <param name="Legs">Corner to corner.</param>
/// <param name="Bends">What the line turns at each corner.</param>
/// <param name="Rotations">Of bend i + 1 against bend i: one less than bends.</param>
internal sealed record CornerPoints(double[] Legs, double[] Bends, double[] Rotations)
{
    private const double Degrees = 180 / Math.PI;

    /// <summary>
    /// Leg = |P(i+1) − P(i)|; bend = angle between successive directions; rotation = atan2(d·(m × m'), m·m') with d the direction of
    /// the leg between and m, m' the normals of the two bends' planes. Never acos.
    /// </summary>
    public static CornerPoints Read(IReadOnlyList<Vector3D> points)
    {
        var ways = points.Skip(1).Select((point, i) => point - points[i]).ToArray();
        var normals = ways.Skip(1).Select((way, i) => ways[i].Cross(way)).ToArray();
        return new(
            [.. ways.Select(way => way.Norm)],
            [.. normals.Select((normal, i) => Degrees * Math.Atan2(normal.Norm, ways[i].Dot(ways[i + 1])))],
            [.. normals.Skip(1).Select((next, i) => Degrees * Math.Atan2(
                Unit(ways[i + 1]).Dot(normals[i].Cross(next)), normals[i].Dot(next)))]);
    }

    /// <summary>
    /// Corner points from rows: each next direction is built from the last two legs (in their plane, across it, along the leg), as a
    /// dihedral angle places an atom. The first leg goes along X, the first bend turns towards +Y rolled by its rotation about X.
    /// </summary>
    public static Vector3D[] Build(IReadOnlyList<double> legs, IReadOnlyList<double> bendDegrees, IReadOnlyList<double> rotationDegrees)
    {
        var points = new List<Vector3D> { default, legs[0] * new Vector3D(1, 0, 0) };
        for (var i = 0; i < bendDegrees.Count; i++)
        {
            var along = i == 0 ? new Vector3D(1, 0, 0) : Unit(points[^1] - points[^2]);
            var normal = i == 0 ? new Vector3D(0, 0, 1) : Unit((points[^2] - Before(points, i)).Cross(points[^1] - points[^2]));
            var side = normal.Cross(along);
            var roll = rotationDegrees[i] / Degrees;
            var turn = bendDegrees[i] / Degrees;
            var way = (Math.Cos(turn) * along)
                + (Math.Sin(turn) * Math.Cos(roll) * side)
                + (Math.Sin(turn) * Math.Sin(roll) * normal);
            points.Add(points[^1] + (legs[i + 1] * way));
        }

        return [.. points];
    }

    private static Vector3D Before(List<Vector3D> points, int bend) => points[bend - 1];

    private static Vector3D Unit(Vector3D vector) => (1 / vector.Norm) * vector;
}
