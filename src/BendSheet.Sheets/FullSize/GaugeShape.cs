using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.FullSize;

/// <summary>
/// A bend on paper: its middle at the top, both legs falling away alike, the circle's centre at the origin, y downwards. Angles are counted
/// clockwise from the top, so the tangent points lie half the bend to either side.
/// </summary>
/// <param name="Gauge">Which bend.</param>
/// <param name="Diameter">Of the tube, in millimetres.</param>
/// <param name="Leg">Straight tube at either side, in millimetres.</param>
internal sealed record GaugeShape(BendGauge Gauge, double Diameter, double Leg)
{
    /// <summary>To the centreline.</summary>
    public double Radius => Gauge.Radius.Millimetres;

    /// <summary>To the face towards the centre.</summary>
    public double InnerRadius => Radius - (Diameter / 2);

    /// <summary>To the face away from the centre.</summary>
    public double OuterRadius => Radius + (Diameter / 2);

    /// <summary>Half the bend, in degrees.</summary>
    public double Half => Gauge.Turn.Degrees / 2;

    /// <summary>A point on a circle around the centre.</summary>
    public static PagePoint OnCircle(double radius, double degreesFromTop)
    {
        var (sin, cos) = Math.SinCos(degreesFromTop * Math.PI / 180);
        return new(radius * sin, -radius * cos);
    }

    /// <summary>Direction of the tube after a point of the circle, away from the top; length 1.</summary>
    public static PagePoint Onwards(double degreesFromTop)
    {
        var (sin, cos) = Math.SinCos(degreesFromTop * Math.PI / 180);
        return Math.Sign(degreesFromTop) * new PagePoint(cos, sin);
    }

    /// <summary>End of a leg's face or centreline.</summary>
    /// <param name="radius">Whose circle it goes on from.</param>
    /// <param name="side">−1 left, 1 right.</param>
    public PagePoint LegEnd(double radius, int side) => OnCircle(radius, side * Half) + (Leg * Onwards(side * Half));
}
