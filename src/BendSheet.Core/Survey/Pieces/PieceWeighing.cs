using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>How sure measurements on a piece are.</summary>
internal static class PieceWeighing
{
    /// <summary>Nothing is read better than this, in millimetres.</summary>
    private const double LeastTape = 0.05;

    /// <summary>Nor an angle, in radians.</summary>
    private const double LeastAngle = 0.05 * Math.PI / 180;

    /// <summary>A distance on a bench, where the file does not say. Common practice, no source.</summary>
    private static readonly Length CommonTape = Length.FromMillimetres(1);

    /// <summary>A bend by protractor. Common practice, no source.</summary>
    private static readonly Angle ProtractorOfBend = Angle.FromDegrees(1);

    /// <summary>A roll by protractor, which has no edge to lie on. Common practice, no source.</summary>
    private static readonly Angle ProtractorOfRoll = Angle.FromDegrees(2);

    /// <summary>One standard deviation of a distance on the piece, in millimetres.</summary>
    public static double Tape(LineTemplate template) => (template.Tolerance?.Tape ?? CommonTape).Millimetres;

    /// <summary>One standard deviation of a quantity, in millimetres or radians; the straight edge's grows with reach.</summary>
    public static double Deviation(PieceQuantity quantity, PiecePlaces places, LineTemplate template)
    {
        var tape = Tape(template);
        var square = (template.Tolerance ?? MeasuringTolerance.CommonPractice).Square.Radians;
        return quantity.Kind switch
        {
            PieceKind.Bend => ProtractorOfBend.Radians,
            PieceKind.Roll => ProtractorOfRoll.Radians,
            PieceKind.Ahead => Root(tape, square * Places.AsideOf(places.Touched[quantity.To]!.Value)),
            PieceKind.Aside => Root(tape, square * places.Touched[quantity.To]!.Value.X),
            _ => tape,
        };
    }

    /// <summary>A measurement, weighed.</summary>
    public static WeighedPiece Of(PieceMeasurement measured, PiecePlaces places, LineTemplate template) => new(
        measured.Quantity,
        measured.Value,
        Math.Max(
            measured.Quantity.IsAngle ? LeastAngle : LeastTape,
            measured.Within ?? Deviation(measured.Quantity, places, template)));

    private static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
