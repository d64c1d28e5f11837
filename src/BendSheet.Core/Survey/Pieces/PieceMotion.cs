using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// How a piece moves with one of its errors, in millimetres for each millimetre or radian of it: nothing before the bend that is out moves,
/// its back moves as given, and everything beyond moves as a rigid body.
/// </summary>
/// <param name="Place">Of the bend, as in <see cref="PiecePlaces.Touched"/>; of an end the end's.</param>
/// <param name="OfBack">How the back of that bend moves, or the face of that end.</param>
/// <param name="Beyond">How what lies beyond moves.</param>
/// <param name="Error">Which error it is.</param>
internal readonly record struct PieceMotion(int Place, Vector3D OfBack, Twist Beyond, PieceError Error)
{
    /// <summary>How a quantity changes, in millimetres or radians.</summary>
    /// <param name="quantity">Its places must exist.</param>
    /// <param name="places">Of the piece.</param>
    public double Of(PieceQuantity quantity, PiecePlaces places)
    {
        switch (quantity.Kind)
        {
            case PieceKind.Bend:
                return Error.Kind == PieceErrorKind.Bend && Error.Bend == quantity.To ? 1 : 0;
            case PieceKind.Roll:
                return Error.Kind == PieceErrorKind.Roll && Error.Bend == quantity.To ? 1 : 0;
            case PieceKind.Ahead:
                return Of(quantity.To, places).X;
            case PieceKind.Aside:
                var point = places.Touched[quantity.To]!.Value;
                var (aside, way) = (Places.AsideOf(point), Of(quantity.To, places));
                return aside > 0 ? ((point.Y * way.Y) + (point.Z * way.Z)) / aside : 0;
            default:
                var apart = places.Touched[quantity.To]!.Value - places.Touched[quantity.From]!.Value;
                return apart.Dot(Of(quantity.To, places) - Of(quantity.From, places)) / apart.Norm;
        }
    }

    /// <summary>How end B moves.</summary>
    public Vector3D OfEndB(PiecePlaces places) => Of(places.Touched.Length - 1, places.EndB);

    private Vector3D Of(int place, PiecePlaces places) => Of(place, places.Touched[place]!.Value);

    private Vector3D Of(int place, Vector3D at) => place < Place ? default : place == Place ? OfBack : Beyond.At(at);
}
