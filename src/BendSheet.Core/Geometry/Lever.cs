using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>How far end B moves when a bend is one degree off.</summary>
/// <remarks>First-order motion of a rigid body about an axis: |axis × arm|·π/180.</remarks>
public static class Lever
{
    private const double OneDegree = Math.PI / 180;

    /// <summary>
    /// For one degree more at a bend. The tube wraps further round the former and the length comes off the straight beyond, so the rest
    /// turns about the end of the bend.
    /// </summary>
    public static Length OfBend(TubeCentreline centreline, int bend)
    {
        var end = centreline.Arcs[bend].End;
        return Length.FromMillimetres(end.Axis.Cross(centreline.EndB - end.Position).Norm * OneDegree);
    }
}
