using BendSheet.Core.Units;

namespace BendSheet.Core.Fittings;

/// <summary>
/// A single flare by geometry: the tube above the place where the bar grips it becomes the slant of a cone. The wall is left out, so a
/// tool's own figure, measured on a practice piece, is better.
/// </summary>
/// <param name="Slant">Of the cone: so much tube becomes it.</param>
/// <param name="FlareAllowance">How much shorter the tube becomes: slant·(1 − cos a).</param>
/// <remarks>
/// Slant = (F − D)/2 / sin a from tube diameter D to flare diameter F at a° each side; the cone is slant·cos a long. The holes of flaring
/// bars are countersunk (FAA-H-8083-30, p. 7-5), so that the tube is gripped below the face of the bar.
/// </remarks>
public sealed record SingleFlare(Length Slant, Length FlareAllowance)
{
    /// <summary>Tube to leave standing out of the bar: the slant less what stands in the countersink, which is flared as well.</summary>
    /// <param name="countersink">How deep the bar's hole is countersunk.</param>
    /// <returns>Not below zero: in a deeper countersink the tube ends flush with the bar.</returns>
    public Length StandOut(Length countersink) => countersink < Slant ? Slant - countersink : Length.Zero;

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
