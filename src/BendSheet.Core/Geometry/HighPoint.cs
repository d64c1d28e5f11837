using BendSheet.Core.Units;

namespace BendSheet.Core.Geometry;

/// <summary>A hump between the ends, from which air rises to neither: it cannot be bled out.</summary>
/// <param name="Height">Above the lowest place on the side where it dips less: so much of the hump stays full of air.</param>
/// <param name="AlongTube">From finished end A along the centreline.</param>
/// <param name="Piece">Index of the straight at or after it.</param>
public sealed record HighPoint(Length Height, Length AlongTube, int Piece)
{
    /// <summary>Every hump of a line whose Z axis is up, from end A.</summary>
    /// <remarks>Along a straight the height changes evenly, along an arc as a sine: the highest places are ends of pieces, or where an arc
    /// runs level.</remarks>
    public static IEnumerable<HighPoint> Of(TubeCentreline centreline)
    {
        var places = Places(centreline);
        for (var i = 1; i + 1 < places.Count; i++)
        {
            var height = places[i].Z;
            if (height < places[i - 1].Z || height <= places[i + 1].Z)
            {
                continue;
            }

            var trapped = height - Math.Max(Valley(places, i, -1), Valley(places, i, +1));
            if (trapped > 0)
            {
                yield return new(Length.FromMillimetres(trapped), Length.FromMillimetres(places[i].Along), places[i].Piece);
            }
        }
    }

    /// <summary>The lowest place on one side, before the tube rises above the hump again or ends.</summary>
    private static double Valley(List<(double Z, double Along, int Piece)> places, int hump, int step)
    {
        var low = places[hump].Z;
        for (var i = hump + step; i >= 0 && i < places.Count && places[i].Z <= places[hump].Z; i += step)
        {
            low = Math.Min(low, places[i].Z);
        }

        return low;
    }

    private static List<(double Z, double Along, int Piece)> Places(TubeCentreline centreline)
    {
        var places = new List<(double Z, double Along, int Piece)>();
        var along = 0.0;
        for (var i = 0; i < centreline.Straights.Length; i++)
        {
            var straight = centreline.Straights[i];
            places.Add((straight.Start.Position.Z, along, i));
            along += straight.Length.Millimetres;
            places.Add((straight.End.Z, along, i));
            if (i == centreline.Arcs.Length)
            {
                break;
            }

            var arc = centreline.Arcs[i];
            foreach (var level in LevelPlaces(arc))
            {
                places.Add((arc.PointAt(level).Z, along + (level.Radians * arc.Radius.Millimetres), i + 1));
            }

            along += arc.Length.Millimetres;
        }

        return places;
    }

    /// <summary>Where the arc's direction cos φ·d + sin φ·side has no rise: at most one place in each half turn.</summary>
    private static IEnumerable<Angle> LevelPlaces(Arc arc)
    {
        var first = Math.Atan2(-arc.Start.Direction.Z, arc.Start.Side.Z);
        for (var turned = first - Math.PI; turned < arc.Turn.Radians; turned += Math.PI)
        {
            if (turned > 0)
            {
                yield return Angle.FromRadians(turned);
            }
        }
    }
}
