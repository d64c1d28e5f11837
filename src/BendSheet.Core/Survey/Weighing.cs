using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>How sure a quantity measured beside the route is.</summary>
internal static class Weighing
{
    /// <summary>A measurement with its own deviation, or that of tape and square.</summary>
    public static WeighedQuantity Of(TapedMeasurement measured, Places typed, MeasuringTolerance tolerance) => new(
        measured.Quantity,
        measured.Value.Millimetres,
        Math.Max(LeastDeviation, measured.Within?.Millimetres ?? Deviation(measured.Quantity, typed, tolerance)));

    /// <summary>
    /// One standard deviation in millimetres: a straight edge that lies askew is out by more, the further off a point lies across the way
    /// measured.
    /// </summary>
    /// <param name="quantity">Its points must exist.</param>
    /// <param name="typed">The line as its rows were typed.</param>
    /// <param name="tolerance">Of tape and square.</param>
    public static double Deviation(TapedQuantity quantity, Places typed, MeasuringTolerance tolerance)
    {
        var point = typed.Points[quantity.To]!.Value;
        var reach = quantity.Kind switch
        {
            TapedKind.Ahead => Places.AsideOf(point),
            TapedKind.Aside => point.X,
            _ => 0,
        };
        var (tape, square) = (tolerance.Tape.Millimetres, tolerance.Square.Radians * reach);
        return Math.Sqrt((tape * tape) + (square * square));
    }

    /// <summary>What was typed as exact still moves by less than anybody could see, so that all can agree; in millimetres.</summary>
    private const double LeastDeviation = 1e-4;
}
