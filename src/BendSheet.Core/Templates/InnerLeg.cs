using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>Which leg of an offset or a saddle: nobody typed its length, it comes from the words of the row.</summary>
public enum InnerLegKind
{
    /// <summary>From run to run.</summary>
    OffsetSlope,

    /// <summary>Up to the bend over the top, or down from it.</summary>
    ThreeBendSlope,

    /// <summary>Up to the flat top, or down from it.</summary>
    FourBendSlope,

    /// <summary>The flat top.</summary>
    FourBendTop,
}

/// <summary>A leg inside an offset or a saddle, with the words that set its length.</summary>
/// <param name="Kind">Which leg.</param>
/// <param name="Height">Of the offset or the saddle.</param>
/// <param name="Slope">The bend of its slopes, up to 90°.</param>
/// <param name="SlopeFromSpan">The slope was typed as the offset's run or the width of a saddle of three bends, not as a bend.</param>
public sealed record InnerLeg(InnerLegKind Kind, Length Height, Angle Slope, bool SlopeFromSpan)
{
    /// <summary>What the leg is, in a sentence.</summary>
    public string Name => Kind switch
    {
        InnerLegKind.OffsetSlope => "the slope of this offset",
        InnerLegKind.FourBendTop => "the flat top of this saddle",
        _ => "a slope of this saddle",
    };

    /// <summary>The word for the height.</summary>
    public string HeightWord => Kind == InnerLegKind.OffsetSlope ? "offset" : "saddle";

    /// <summary>The word for the length along the run that the slope was typed by.</summary>
    public string SpanWord => Kind == InnerLegKind.OffsetSlope ? "run" : "width";

    /// <summary>
    /// The least height at which the slope has room for its bends on a radius of 1: R·(tan + tan) of the half bends at both ends, as a
    /// height. Rises with the bend.
    /// </summary>
    public double LeastHeight(Angle slope) => Math.Sin(slope.Radians) * (Math.Tan(slope.Radians / 2)
        + Math.Tan(Kind == InnerLegKind.ThreeBendSlope ? slope.Radians : slope.Radians / 2));

    /// <summary>The largest bend whose slope has room for its bends at this height, found far finer than a protractor shows.</summary>
    public Angle LargestSlope(Length radius)
    {
        var (fits, tooMuch) = (0.0, Slope.Degrees);
        for (var i = 0; i < 50; i++)
        {
            var middle = (fits + tooMuch) / 2;
            (fits, tooMuch) = LeastHeight(Angle.FromDegrees(middle)) * radius <= Height ? (middle, tooMuch) : (fits, middle);
        }

        return Angle.FromDegrees(fits);
    }
}
