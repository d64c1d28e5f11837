using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// A random tube as a general-purpose geometry kernel filleted and measured it; `tests/references/kernel/routes.cpp` made the table.
/// Millimetres and degrees.
/// </summary>
internal sealed class KernelRoute
{
    private readonly IReadOnlyDictionary<string, string> _row;

    private KernelRoute(IReadOnlyDictionary<string, string> row) => _row = row;

    public static IReadOnlyList<KernelRoute> All { get; } =
    [
        .. ReferenceTable.Read("kernel/routes.csv").Select(row => new KernelRoute(row)),
    ];

    public double Radius => AssertGeometry.Number(_row["radius_mm"]);

    public double[] Bends => Figures("bends_deg");

    public double[] Rotations => Figures("rotations_deg");

    /// <summary>End A, the corners, end B.</summary>
    public Vector3D[] Corners => Points("corner_points_mm");

    /// <summary>Corner to corner, from the points alone.</summary>
    public double[] Legs => [.. Corners.Skip(1).Zip(Corners, (to, from) => to.DistanceTo(from))];

    /// <summary>Of the filleted wire, integrated along it.</summary>
    public double Length => AssertGeometry.Number(_row["length_mm"]);

    /// <summary>What the fillets left of the legs.</summary>
    public double[] Straights => Figures("straights_mm");

    public double[] Arcs => Figures("arcs_mm");

    /// <summary>Distances along the wire from end A.</summary>
    public double[] Places => Figures("at_mm");

    /// <summary>The wire's points at those places.</summary>
    public Vector3D[] PointsAtPlaces => Points("points_mm");

    /// <summary>Size of the wire's box.</summary>
    public Vector3D Box => Points("box_high_mm")[0] - Points("box_low_mm")[0];

    public double TubeDiameter => AssertGeometry.Number(_row["tube_diameter_mm"]);

    /// <summary>Size of the box of the tube swept along the wire.</summary>
    public Vector3D TubeBox => Points("tube_high_mm")[0] - Points("tube_low_mm")[0];

    /// <summary>
    /// How far a point of the swept tube lies outside the kernel's own box of it: above zero where its search for the box failed.
    /// </summary>
    public double BeyondTubeBox => AssertGeometry.Number(_row["tube_beyond_box_mm"]);

    /// <summary>The rows that a person would type for it.</summary>
    public LineTemplate Template() => Lines.Of(Lines.Bender(Radius), Legs, [.. Rotations.Zip(Bends)]);

    private double[] Figures(string column) => [.. _row[column].Split(' ').Select(AssertGeometry.Number)];

    private Vector3D[] Points(string column) => [.. Figures(column).Chunk(3).Select(point => new Vector3D(point[0], point[1], point[2]))];
}
