using BendSheet.Core.Units;

namespace BendSheet.Core.Fittings;

/// <summary>
/// A single flare by geometry: what stands out of the flaring bar becomes the slant of a cone. The wall is left out, so a tool's own
/// figure, measured on a practice piece, is better.
/// </summary>
/// <param name="StandOut">Tube to leave standing out of the bar.</param>
/// <param name="FlareAllowance">How much shorter the tube becomes.</param>
/// <remarks>
/// Slant = (F − D)/2 / sin a from tube diameter D to flare diameter F at a° each side; the cone is slant·cos a long. For 3/16 in and 37°
/// it gives the tenth of an inch of common practice (no source).
/// </remarks>
public sealed record SingleFlare(Length StandOut, Length FlareAllowance)
{
    /// <summary>Null for an end that is not a single flare, or is no wider than the tube.</summary>
    public static SingleFlare? Of(Flare flare, Length tubeDiameter, Length flareDiameter)
    {
        if (AngleOf(flare) is not { } angle || flareDiameter <= tubeDiameter)
        {
            return null;
        }

        var slant = 0.5 / Math.Sin(angle.Radians) * (flareDiameter - tubeDiameter);
        return new(slant, (1 - Math.Cos(angle.Radians)) * slant);
    }

    /// <summary>Of the cone, each side.</summary>
    private static Angle? AngleOf(Flare flare) => flare switch
    {
        Flare.Single37 => Angle.FromDegrees(37),
        Flare.Single45 => Angle.FromDegrees(45),
        _ => null,
    };
}
