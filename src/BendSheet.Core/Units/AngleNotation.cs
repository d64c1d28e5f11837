using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>
/// How angles are shown to people: to a tenth of a degree, finer than any hand bender's scale, without a trailing <c>.0</c>.
/// </summary>
public static class AngleNotation
{
    /// <summary>A bend: <c>45°</c>, <c>22.5°</c>.</summary>
    public static string Figure(Angle angle) => Tenths(angle).ToString("0.#", CultureInfo.InvariantCulture) + "°";

    /// <summary>A dial reading, from 0° to 359.9°.</summary>
    public static string Dial(Angle angle) => Figure(Angle.FromDegrees(Tenths(angle.OnDial())).OnDial());

    /// <summary>A rotation with its sense: <c>90° cw</c>, <c>45° ccw</c>; <c>0°</c> without one.</summary>
    public static string Rotation(Angle rotation)
    {
        var tenths = Tenths(rotation);
        return tenths == 0
            ? "0°"
            : Figure(Angle.FromDegrees(Math.Abs(tenths))) + (tenths > 0 ? " cw" : " ccw");
    }

    private static double Tenths(Angle angle) =>
        Math.Round(Math.Round(angle.Degrees * 10, 6, MidpointRounding.AwayFromZero), MidpointRounding.AwayFromZero) / 10;
}
