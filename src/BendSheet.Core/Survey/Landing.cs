using BendSheet.Core.Geometry;

namespace BendSheet.Core.Survey;

/// <summary>
/// What of the far end matters once the line is rolled in A to suit: how far B is ahead of A and aside of its straight, and which way the
/// last straight goes, seen from A with B's side up.
/// </summary>
internal static class Landing
{
    /// <summary>B ahead and B aside; where B lies on the line through A's straight, aside has two ways.</summary>
    /// <param name="slopes">Of the line.</param>
    public static double[][] OfB(PlaceSlopes slopes)
    {
        var ahead = slopes.Of(places => places.EndB.X);
        var (left, up) = (slopes.Of(places => places.EndB.Y), slopes.Of(places => places.EndB.Z));
        var spread = Math.Sqrt(Adjustment.Dot(left, left) + Adjustment.Dot(up, up));
        return Places.AsideOf(slopes.At.EndB) <= 1e-6 * spread
            ? [ahead, left, up]
            : [ahead, slopes.Of(places => Places.AsideOf(places.EndB))];
    }

    /// <summary>The three components of the last straight's direction.</summary>
    public static double[][] OfLastStraight(PlaceSlopes slopes)
    {
        var rolls = Places.AsideOf(slopes.At.EndB) > 1e-6;
        return
        [
            slopes.Of(places => places.LastDirection.X),
            slopes.Of(places => Rolled(places, rolls).Y),
            slopes.Of(places => Rolled(places, rolls).Z),
        ];
    }

    /// <summary>B along its last straight: what trim left on at B takes up.</summary>
    public static double[] AlongLastStraight(PlaceSlopes slopes)
    {
        var b = slopes.At.EndB;
        var aside = Places.AsideOf(b);
        var way = slopes.At.LastDirection;
        var sideways = aside > 1e-6 ? ((way.Y * b.Y) + (way.Z * b.Z)) / aside : 0;
        return slopes.Of(places => (way.X * places.EndB.X) + (sideways * Places.AsideOf(places.EndB)));
    }

    /// <summary>B in A's frame, whose side is where the first bend turns to.</summary>
    public static double[][] Spread(PlaceSlopes slopes) =>
    [
        slopes.Of(places => places.EndB.X),
        slopes.Of(places => places.EndB.Y),
        slopes.Of(places => places.EndB.Z),
    ];

    private static Vector3D Rolled(Places places, bool rolls)
    {
        var way = places.LastDirection;
        if (!rolls)
        {
            return way;
        }

        var b = places.EndB;
        var aside = Places.AsideOf(b);
        return new(way.X, ((way.Y * b.Y) + (way.Z * b.Z)) / aside, ((way.Z * b.Y) - (way.Y * b.Z)) / aside);
    }
}
