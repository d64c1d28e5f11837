using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey;

/// <summary>
/// How everything that can be measured on a line changes with its figures, each taken as large as its standard deviation. How its places
/// move is known in closed form (<see cref="WalkedRoute"/>, <see cref="CornerMotions"/>), and what is measured between corners follows from
/// that; what is measured to the backs of bends, by central differences, whose error is of the second order in a step that no tape shows.
/// </summary>
internal sealed class PlaceSlopes
{
    /// <summary>Of a standard deviation: a micrometre or so, where rounding is a billionth of it.</summary>
    private const double Step = 1e-3;

    private readonly PlaceMotion[] _motions;
    private readonly Lazy<(Places Less, Places More)[]> _moved;

    private PlaceSlopes(Places at, PlaceMotion[] motions)
    {
        At = at;
        _motions = motions;
        _moved = new(() => [.. motions.Select(motion => (motion.Moved(at, -Step), motion.Moved(at, Step)))]);
    }

    /// <summary>The line itself.</summary>
    public Places At { get; }

    /// <summary>How many figures there are.</summary>
    public int Count => _motions.Length;

    /// <summary>The slopes of a line near some values of its figures; null where it has no shape.</summary>
    public static PlaceSlopes? Near(ObservedLine line, double[] values) =>
        line.WalkWith(values) is { } walked ? Near(line, walked, values) : null;

    /// <summary>The same of a line that is walked already.</summary>
    public static PlaceSlopes Near(ObservedLine line, WalkedRoute walked, double[] values) =>
        new(walked.Places, line.Motions(walked, values));

    /// <summary>The same slopes of a line so near to this one that they are the same.</summary>
    public PlaceSlopes MovedTo(Places at) => new(at, _motions);

    /// <summary>What a quantity changes by when each figure changes by its standard deviation.</summary>
    public double[] Of(Func<Places, double> quantity) =>
        [.. _moved.Value.Select(moved => (quantity(moved.More) - quantity(moved.Less)) / (2 * Step))];

    /// <summary>The same of how far a point, which must exist, lies in a direction.</summary>
    /// <param name="point">Which.</param>
    /// <param name="way">In the frame of the places, length 1.</param>
    public double[] Of(int point, Vector3D way)
    {
        var slopes = new double[Count];
        for (var i = 0; i < slopes.Length; i++)
        {
            slopes[i] = way.Dot(_motions[i].Points[point]);
        }

        return slopes;
    }

    /// <summary>The same of what follows from end B and the direction of its straight.</summary>
    public double[] OfLastStraight(Func<Vector3D, Vector3D, double> quantity)
    {
        var (b, last, slopes) = (At.EndB, At.LastDirection, new double[Count]);
        for (var i = 0; i < slopes.Length; i++)
        {
            var (way, turning) = (_motions[i].Points[^1], _motions[i].LastDirection);
            slopes[i] = (quantity(b + (Step * way), last + (Step * turning)) - quantity(b + (-Step * way), last + (-Step * turning)))
                / (2 * Step);
        }

        return slopes;
    }

    /// <summary>The same of what is measured beside the route. Its points must exist.</summary>
    public double[] Of(TapedQuantity quantity) => quantity switch
    {
        { Kind: TapedKind.Distance, Back: null } => OfDistance(quantity),
        { Kind: TapedKind.Ahead, Back: null } => Of(quantity.To, Places.AheadWay),
        { Kind: TapedKind.Aside, Back: null } => Of(quantity.To, Places.AsideWay(At.Points[quantity.To]!.Value)),
        { Kind: TapedKind.Part, Back: null } => OfPart(quantity),
        _ => Of(places => places.ValueOf(quantity)),
    };

    private double[] OfPart(TapedQuantity quantity)
    {
        var (from, to, slopes) = (At.Points[quantity.From]!.Value, At.Points[quantity.To]!.Value, new double[Count]);
        var way = Places.OnCar(At.Start, to - from);
        for (var i = 0; i < slopes.Length; i++)
        {
            // It goes with its points, and turns as the line turns on the car.
            var moved = Places.OnCar(At.Start, _motions[i].Points[quantity.To] - _motions[i].Points[quantity.From]);
            slopes[i] = quantity.Axis.Dot(moved + _motions[i].StartTurning.Cross(way));
        }

        return slopes;
    }

    private double[] OfDistance(TapedQuantity quantity)
    {
        var (from, to) = (At.Points[quantity.From]!.Value, At.Points[quantity.To]!.Value);
        var apart = from.DistanceTo(to);
        var way = apart > 0 ? 1 / apart * (to - from) : default;
        var slopes = new double[Count];
        for (var i = 0; i < slopes.Length; i++)
        {
            slopes[i] = way.Dot(_motions[i].Points[quantity.To] - _motions[i].Points[quantity.From]);
        }

        return slopes;
    }
}
