using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Survey;

/// <summary>A route walked from end A, in the frame of <see cref="Survey.Places"/>.</summary>
internal sealed class WalkedRoute
{
    private readonly LineTemplate _template;
    private readonly BendShape[] _bends;

    /// <summary>Where each bend begins, rolled into its plane.</summary>
    private readonly Frame[] _begins;

    private WalkedRoute(LineTemplate template, BendShape[] bends, Frame[] begins, Places places)
    {
        _template = template;
        _bends = bends;
        _begins = begins;
        Places = places;
    }

    /// <summary>Where its corners and ends are.</summary>
    public Places Places { get; }

    /// <summary>Walks a line; a leg too short for its bends has a straight below zero.</summary>
    /// <param name="template">The line.</param>
    /// <param name="valueOf">What was observed.</param>
    /// <returns>Null where a leg beside a bend without a corner was measured to a corner.</returns>
    public static WalkedRoute? Of(LineTemplate template, Func<Observation, double> valueOf)
    {
        var route = template.Route;
        var bends = new BendShape[route.Bends.Length];
        for (var i = 0; i < bends.Length; i++)
        {
            var turn = route.Bends[i].TurnFrom is { } from ? Angle.FromRadians(from.ValueWith(valueOf)) : route.Bends[i].Turn;
            if (turn >= Tolerances.NoCorner && (route.Bends[i].HasCorner || template.Habit != MeasuredTo.Straight))
            {
                return null;
            }

            bends[i] = BendShape.Of(route.Bends[i], turn);
        }

        var points = new Vector3D?[bends.Length + 2];
        var begins = new Frame[bends.Length];
        var frame = Frame.Default;
        points[0] = frame.Position;
        for (var i = 0; i <= bends.Length; i++)
        {
            var leg = route.Legs[i];
            var measured = leg.From is { } from ? Length.FromMillimetres(from.ValueWith(valueOf)) : leg.Measured;
            frame = frame.Advanced(RouteLayout.StraightLeft(
                template, leg, measured, i == 0 ? null : bends[i - 1], i == bends.Length ? null : bends[i]));
            if (i < bends.Length)
            {
                frame = frame.Rolled(i == 0 ? Angle.Zero : Rotation(route.Bends[i], valueOf));
                points[i + 1] = bends[i] is { HasCorner: true, FromTangent: false } ? frame.Advanced(bends[i].Setback).Position : null;
                begins[i] = frame;
                frame = frame.Bent(bends[i].Radius, bends[i].Turn);
            }
        }

        points[^1] = frame.Position;
        return new(template, bends, begins, new(points, frame.Direction, template.Start));
    }

    /// <summary>
    /// How its places move with each figure. What lies beyond a straight moves along it when it grows, what lies beyond a bend turns about
    /// the middle of its arc, what lies beyond a rotation about the straight there: a twist for each figure, which grows along the line.
    /// </summary>
    /// <param name="slopesOf">How a leg, a turn or a rotation changes with the figures; none where it is known.</param>
    /// <param name="figures">How many there are.</param>
    public PlaceMotion[] Motions(Func<Term?, FigureSlope[]> slopesOf, int figures)
    {
        var moving = new Moving(Places, figures);
        var route = _template.Route;
        FigureSlope[] turnBefore = [];
        for (var i = 0; i < route.Legs.Length; i++)
        {
            var along = Twist.Along(i < _bends.Length ? _begins[i].Direction : Places.LastDirection);
            var turn = i < _bends.Length ? slopesOf(route.Bends[i].TurnFrom) : [];
            moving.Add(slopesOf(route.Legs[i].From), along);
            if (i > 0)
            {
                moving.Add(turnBefore, RouteLayout.StraightSlope(_template, route.Legs[i], _bends[i - 1]) * along);
            }

            if (i < _bends.Length)
            {
                moving.Add(turn, RouteLayout.StraightSlope(_template, route.Legs[i], _bends[i]) * along);
                moving.Bend(i, _begins[i], _bends[i], i > 0 ? slopesOf(route.Bends[i].RotationFrom) : [], turn);
            }

            turnBefore = turn;
        }

        return moving.ToEnd();
    }

    /// <summary>What the figures have moved so far along the line.</summary>
    private sealed class Moving
    {
        private readonly Places _places;
        private readonly Twist[] _twists;
        private readonly Vector3D[][] _points;

        public Moving(Places places, int figures)
        {
            (_places, _twists, _points) = (places, new Twist[figures], new Vector3D[figures][]);
            for (var figure = 0; figure < figures; figure++)
            {
                _points[figure] = new Vector3D[places.Points.Length];
            }
        }

        public void Add(FigureSlope[] slopes, Twist twist)
        {
            foreach (var one in slopes)
            {
                _twists[one.Figure] += one.Slope * twist;
            }
        }

        public void Bend(int bend, Frame begin, BendShape shape, FigureSlope[] rotation, FigureSlope[] turn)
        {
            Add(rotation, Twist.About(begin.Direction, begin.Position));
            if (_places.Points[bend + 1] is not null)
            {
                MovePoint(bend + 1);
                foreach (var one in turn)
                {
                    _points[one.Figure][bend + 1] += one.Slope * shape.SetbackSlope * begin.Direction;
                }
            }

            Add(turn, Twist.About(begin.Axis, begin.Position + (shape.Radius.Millimetres * begin.Side)));
        }

        public PlaceMotion[] ToEnd()
        {
            MovePoint(^1);
            var motions = new PlaceMotion[_points.Length];
            for (var figure = 0; figure < motions.Length; figure++)
            {
                motions[figure] = new(_points[figure], _twists[figure].Turning.Cross(_places.LastDirection), default);
            }

            return motions;
        }

        private void MovePoint(Index point)
        {
            var at = _places.Points[point]!.Value;
            for (var figure = 0; figure < _points.Length; figure++)
            {
                _points[figure][point] = _twists[figure].At(at);
            }
        }
    }

    private static Angle Rotation(Bend bend, Func<Observation, double> valueOf) =>
        bend.RotationFrom is { } from ? Angle.FromRadians(from.ValueWith(valueOf)) : bend.Rotation;
}
