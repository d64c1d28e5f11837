using BendSheet.Core.Geometry;

namespace BendSheet.Core.Survey;

/// <summary>
/// What of the far end matters once the line is rolled in A to suit: how far B is ahead of A and aside of its straight, and which way the
/// last straight goes, seen from A with B's side up. How each changes with the line's figures.
/// </summary>
/// <param name="OfB">B ahead and B aside; where B lies on the line through A's straight, aside has two ways.</param>
/// <param name="OfLastStraight">The three components of the last straight's direction.</param>
/// <param name="AlongLastStraight">B along its last straight: what trim left on at B takes up.</param>
/// <param name="Spread">B in A's frame, whose side is where the first bend turns to.</param>
internal sealed record Landing(double[][] OfB, double[][] OfLastStraight, double[] AlongLastStraight, double[][] Spread)
{
    /// <summary>Of a line.</summary>
    public static Landing Of(PlaceSlopes slopes)
    {
        var (b, end) = (slopes.At.EndB, slopes.At.Points.Length - 1);
        var ahead = slopes.Of(end, Places.AheadWay);
        var (left, up) = (slopes.Of(end, new Vector3D(0, 1, 0)), slopes.Of(end, new Vector3D(0, 0, 1)));
        var spread = Math.Sqrt(NormalEquations.Dot(left, left) + NormalEquations.Dot(up, up));
        var (asideOfB, way) = (Places.AsideOf(b), slopes.At.LastDirection);
        var rolls = asideOfB > 1e-6;
        var sideways = rolls ? ((way.Y * b.Y) + (way.Z * b.Z)) / asideOfB : 0;
        return new(
            asideOfB <= 1e-6 * spread ? [ahead, left, up] : [ahead, slopes.Of(end, Places.AsideWay(b))],
            [
                slopes.OfLastStraight(static (_, last) => last.X),
                slopes.OfLastStraight((place, last) => Rolled(place, last, rolls).Y),
                slopes.OfLastStraight((place, last) => Rolled(place, last, rolls).Z),
            ],
            slopes.Of(end, (way.X * Places.AheadWay) + (sideways * Places.AsideWay(b))),
            [ahead, left, up]);
    }

    private static Vector3D Rolled(Vector3D b, Vector3D way, bool rolls)
    {
        if (!rolls)
        {
            return way;
        }

        var aside = Places.AsideOf(b);
        return new(way.X, ((way.Y * b.Y) + (way.Z * b.Z)) / aside, ((way.Z * b.Y) - (way.Y * b.Z)) / aside);
    }
}
