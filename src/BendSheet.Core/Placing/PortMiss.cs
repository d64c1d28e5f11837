using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Placing;

/// <summary>What a template and the places of its two ports disagree by.</summary>
/// <param name="Distance">From where the template ends to where its port lies.</param>
/// <param name="Beyond">Forward, left and up in millimetres, template minus port; null where nobody knows how the line lies.</param>
/// <param name="Askew">Between the way the line comes and the way into its port; null where either is not known.</param>
/// <param name="AskewAtA">Between the way the line says it leaves A and the way A's port faces; null where either is not known.</param>
public sealed record PortMiss(Length? Distance, Vector3D? Beyond, Angle? Askew, Angle? AskewAtA)
{
    /// <summary>Null where nothing can be compared.</summary>
    /// <param name="typed">The line.</param>
    /// <param name="layout">Of its template.</param>
    /// <param name="start">How it lies; null where nobody knows.</param>
    internal static PortMiss? Of(LineTemplate typed, RouteLayout layout, Frame? start)
    {
        var (from, to) = (typed.From.Port?.Port.Lie, typed.To.Port?.Port.Lie);
        var centreline = layout.Centreline(start ?? Frame.Default);
        var way = centreline.EndB - centreline.EndA;
        Vector3D? wanted = from?.Position is { } a && to?.Position is { } b ? b - a : null;
        var beyond = start is null ? null : way - wanted;
        var miss = new PortMiss(
            beyond is { } known ? Length.FromMillimetres(known.Norm) : DistanceOnly(way, wanted, from),
            beyond,
            start is not null && to?.Facing is { } into ? Between(centreline.Straights[^1].Start.Direction, -1 * into) : null,
            typed.LiesOnCar && start is { } lies && from?.Facing is { } heading ? Between(lies.Direction, heading) : null);
        return miss is { Distance: null, Askew: null, AskewAtA: null } ? null : miss;
    }

    /// <summary>Of a line that may be rolled in A to suit, or that may lie anyhow.</summary>
    private static Length? DistanceOnly(Vector3D way, Vector3D? wanted, PortLie? from)
    {
        if (wanted is not { } port)
        {
            return null;
        }

        if (from!.Facing is not { } heading)
        {
            return Length.FromMillimetres(Math.Abs(way.Norm - port.Norm));
        }

        var ahead = port.Dot(heading);
        var aside = (port - (ahead * heading)).Norm;
        var off = Math.Sqrt((way.Y * way.Y) + (way.Z * way.Z));
        return Length.FromMillimetres(Math.Sqrt(((way.X - ahead) * (way.X - ahead)) + ((off - aside) * (off - aside))));
    }

    private static Angle Between(Vector3D one, Vector3D other) =>
        Angle.FromRadians(Math.Atan2(one.Cross(other).Norm, one.Dot(other)));
}
