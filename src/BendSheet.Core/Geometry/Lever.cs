using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>How far end B moves when a bend is one degree off.</summary>
/// <remarks>First-order motion of a rigid body about an axis: |axis × arm|·π/180.</remarks>
public static class Lever
{
    private const double OneDegree = Math.PI / 180;

    /// <summary>
    /// For one degree more at a bend. The tube wraps further round the former and the length comes off the swept side: with the side of A
    /// held the rest turns about the end of the bend, with the side of B held about its start.
    /// </summary>
    /// <param name="centreline">Of the line.</param>
    /// <param name="bend">From 0.</param>
    /// <param name="aboutStart">The side of B is held.</param>
    public static Length OfBend(TubeCentreline centreline, int bend, bool aboutStart)
    {
        var arc = centreline.Arcs[bend];
        var pivot = aboutStart ? arc.Start.Position : arc.End.Position;
        return Length.FromMillimetres(arc.End.Axis.Cross(centreline.EndB - pivot).Norm * OneDegree);
    }
}
