using System.Globalization;

namespace BendSheet.Core.Units;

/// <summary>
/// How angles are shown to people: to a tenth of a degree, finer than any hand bender's scale, without a trailing <c>.0</c>.
/// </summary>
public static class AngleNotation
{
    /// <summary>A bend: <c>45°</c>, <c>22.5°</c>.</summary>
    public static string Figure(Angle angle) => Typed(angle) + "°";

    /// <summary>The same without its sign, as it is typed: <c>22.5</c>.</summary>
    public static string Typed(Angle angle) => Tenths.Shortest(InTenths(angle));

    /// <summary>A dial reading, from 0° to 359.9°.</summary>
    public static string Dial(Angle angle) => Tenths.Shortest(InTenths(angle.OnDial()) % 3600) + "°";

    /// <summary>A rotation with its sense: <c>90° cw</c>, <c>45° ccw</c>; <c>0°</c> without one.</summary>
    public static string Rotation(Angle rotation)
    {
        var tenths = InTenths(rotation);
        return Tenths.Shortest(Math.Abs(tenths)) + (tenths == 0 ? "°" : tenths > 0 ? "° cw" : "° ccw");
    }

    /// <summary>
    /// A direction as on the face of a clock, clockwise from 12, to the nearest five minutes (2.5°): <c>12:00</c>, <c>4:30</c>. For a
    /// glance; the figure stands beside it.
    /// </summary>
    public static string Clock(Angle clockwise)
    {
        const int HalfDay = 12 * 60;
        var minutes = (int)Math.Round(InTenths(clockwise.OnDial()) / 25.0, MidpointRounding.AwayFromZero) * 5 % HalfDay;
        return string.Create(CultureInfo.InvariantCulture, $"{(minutes < 60 ? 12 : minutes / 60)}:{minutes % 60:00}");
    }

    private static long InTenths(Angle angle) =>
        (long)Math.Round(Math.Round(angle.Degrees * 10, 6, MidpointRounding.AwayFromZero), MidpointRounding.AwayFromZero);
}
