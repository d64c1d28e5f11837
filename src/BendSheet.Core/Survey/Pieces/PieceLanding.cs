using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// Where end B of a piece lies and how it enters, once the piece is rolled in A to suit: ahead and aside of A's straight, and the last
/// straight's direction seen with B's side up.
/// </summary>
/// <param name="Ahead">In millimetres.</param>
/// <param name="Aside">In millimetres.</param>
/// <param name="Direction">Length 1.</param>
internal readonly record struct PieceLanding(double Ahead, double Aside, Vector3D Direction)
{
    /// <summary>Nearer to A's straight than this, in millimetres, B has no side.</summary>
    private const double OnStraight = 1e-6;

    /// <summary>Of a piece.</summary>
    public static PieceLanding Of(PiecePlaces places) => Of(places.EndB, places.LastDirection);

    /// <summary>Of an end B and the direction of its straight.</summary>
    public static PieceLanding Of(Vector3D b, Vector3D way)
    {
        var aside = Places.AsideOf(b);
        return aside <= OnStraight
            ? new(b.X, 0, way)
            : new(b.X, aside, new(way.X, ((way.Y * b.Y) + (way.Z * b.Z)) / aside, ((way.Z * b.Y) - (way.Y * b.Z)) / aside));
    }

    /// <summary>How far from another one B lies, in millimetres.</summary>
    public double MissTo(PieceLanding port) => Math.Sqrt(Squared(Ahead - port.Ahead) + Squared(Aside - port.Aside));

    /// <summary>How far askew of another one the last straight goes, in radians.</summary>
    public double AskewTo(PieceLanding port) => Math.Atan2(Direction.Cross(port.Direction).Norm, Direction.Dot(port.Direction));

    /// <summary>What is off, in parts of what is wanted.</summary>
    public double[] OffFrom(PieceLanding port, WantedFit wanted)
    {
        var (miss, askew) = (wanted.Miss.Millimetres, wanted.Askew.Radians);
        var turned = Direction - port.Direction;
        return [(Ahead - port.Ahead) / miss, (Aside - port.Aside) / miss, turned.X / askew, turned.Y / askew, turned.Z / askew];
    }

    private static double Squared(double part) => part * part;
}
