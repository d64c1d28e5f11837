using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Sheets.Shape;

/// <summary>The centreline as short straight pieces, fine enough that no eye sees a corner in a bend.</summary>
internal sealed class Polyline
{
    /// <summary>On paper a bend is at most some centimetres wide: four degrees of it are within a hair of the chord.</summary>
    private const double DegreesPerPiece = 4;

    private Polyline(List<Vector3D> points, List<int> bendMiddles)
    {
        Points = points;
        BendMiddles = bendMiddles;
    }

    /// <summary>From end A to end B.</summary>
    public IReadOnlyList<Vector3D> Points { get; }

    /// <summary>Index of the point in the middle of each bend.</summary>
    public IReadOnlyList<int> BendMiddles { get; }

    /// <summary>The pieces of a centreline.</summary>
    public static Polyline Of(TubeCentreline centreline)
    {
        var points = new List<Vector3D> { centreline.EndA };
        var middles = new List<int>();
        foreach (var arc in centreline.Arcs)
        {
            // An even number of pieces, so that there is a point in the middle.
            var pieces = 2 * (int)Math.Ceiling(arc.Turn.Degrees / (2 * DegreesPerPiece));
            points.Add(arc.Start.Position);
            for (var i = 1; i <= pieces; i++)
            {
                points.Add(arc.PointAt(Angle.FromDegrees(arc.Turn.Degrees * i / pieces)));
            }

            middles.Add(points.Count - 1 - (pieces / 2));
        }

        points.Add(centreline.EndB);
        return new(points, middles);
    }
}
