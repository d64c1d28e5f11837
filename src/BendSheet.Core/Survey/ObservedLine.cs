using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Survey;

/// <summary>One of the figures that a line's route was measured by.</summary>
/// <param name="Observation">As it was read.</param>
/// <param name="Name">Which: <c>leg 2</c>, <c>rotation 3</c>.</param>
/// <param name="Deviation">One standard deviation, in millimetres or radians, above zero.</param>
internal sealed record ObservedFigure(Observation Observation, string Name, double Deviation)
{
    /// <summary>Nobody read it: it only describes the shape, which follows from what is measured beside it.</summary>
    public bool IsUnmeasured { get; init; }
}

/// <summary>A line as a function of the figures that it was measured by.</summary>
internal sealed class ObservedLine
{
    /// <summary>
    /// A rotation that is nearer to flat than so many of its standard deviations may as well be none. Near flat a distance goes with the
    /// rotation's square: at n deviations from flat the rotation is as √(1 + 2z/n) with z normal, and the first order, 1/n, says it within
    /// a tenth from n = 4 on.
    /// </summary>
    private const double NearFlat = 4;

    private readonly LineTemplate _template;
    private readonly Dictionary<Observation, int> _index;

    /// <summary>Of each figure by itself.</summary>
    private readonly FigureSlope[][] _slopes;

    private ObservedLine(LineTemplate template, ImmutableArray<ObservedFigure> figures)
    {
        _template = template;
        Figures = figures;
        _index = new(figures.Length);
        _slopes = new FigureSlope[figures.Length][];
        Typed = new double[figures.Length];
        for (var i = 0; i < figures.Length; i++)
        {
            Typed[i] = figures[i].Observation.Value;
            _index.Add(figures[i].Observation, i);
            _slopes[i] = [new(i, figures[i].Deviation)];
        }
    }

    /// <summary>The figures that may be wrong, along the line.</summary>
    public ImmutableArray<ObservedFigure> Figures { get; }

    /// <summary>Some of the shape is nearer to flat than a tape can tell, so that nobody knows how sure it is.</summary>
    public bool IsNearFlat { get; private init; }

    /// <summary>As they were read: to be copied where others are tried.</summary>
    public double[] Typed { get; }

    /// <summary>The figures of a line, however it was measured.</summary>
    public static ObservedLine Of(LineTemplate template, MeasuringTolerance tolerance) => template switch
    {
        { Taped: not null } => OfShape(template, _ => true),
        { Corners.IsEmpty: false } => OfCorners(template, tolerance),
        _ => OfRows(template, tolerance),
    };

    /// <summary>
    /// The line with what its distances say of it: where some of the shape is nearer to flat than they can tell, without the rotations
    /// there, and <see cref="IsNearFlat"/>.
    /// </summary>
    /// <param name="adjustment">Of this line.</param>
    public ObservedLine ToFirstOrder(Adjustment adjustment)
    {
        var flat = new HashSet<Observation>();
        for (var i = 0; i < Figures.Length; i++)
        {
            if (IsFlat(Figures[i], adjustment, i))
            {
                flat.Add(Figures[i].Observation);
            }
        }

        return flat.Count == 0 ? this : OfShape(_template, bend => bend.RotationFrom is Observation roll && !flat.Contains(roll));
    }

    private static bool IsFlat(ObservedFigure figure, Adjustment adjustment, int index) =>
        figure is { IsUnmeasured: true, Observation.Kind: ObservationKind.Rotation }
            && Math.Abs(Math.IEEERemainder(adjustment.Values[index], Math.PI))
                <= NearFlat * figure.Deviation * adjustment.DeviationOfFigure(index);

    /// <summary>Nothing of the route was read: legs, bends and rotations only describe the shape that its distances came to.</summary>
    /// <param name="template">Of a route of distances.</param>
    /// <param name="turns">Which bends have a rotation that may change.</param>
    private static ObservedLine OfShape(LineTemplate template, Func<Bend, bool> turns)
    {
        var legs = template.Route.Legs.Select(leg => new Observation(ObservationKind.Leg, leg.Measured.Millimetres, leg.At)).ToList();
        var bends = template.Route.Bends.Select(bend => new Observation(ObservationKind.Bend, bend.Turn.Radians, bend.TurnAt)).ToList();
        var rolls = template.Route.Bends.Select((bend, i) => i > 0 && turns(bend)
            ? new Observation(ObservationKind.Rotation, bend.Rotation.Radians, bend.TurnAt)
            : null).ToList();
        var route = Route.Of(
            [.. template.Route.Legs.Zip(legs, (leg, from) => leg with { From = from })],
            [.. template.Route.Bends.Select((bend, i) => bend with { TurnFrom = bends[i], RotationFrom = rolls[i] })]);
        return new(template with { Route = route },
        [
            .. legs.Concat(bends).Concat(rolls.OfType<Observation>()).Select(
                one => new ObservedFigure(one, string.Empty, one.IsAngle ? Math.PI / 180 : 1) { IsUnmeasured = true }),
        ])
        {
            IsNearFlat = rolls.Skip(1).Any(roll => roll is null),
        };
    }

    private static ObservedLine OfCorners(LineTemplate template, MeasuringTolerance tolerance)
    {
        var corners = template.Corners;
        var byLegs = corners[0].From is null;
        var known = new HashSet<Observation>();
        var figures = ImmutableArray.CreateBuilder<ObservedFigure>();
        for (var i = 0; i < corners.Length; i++)
        {
            var number = FormattableString.Invariant($"{i}");
            var point = byLegs ? $"leg {number}" : i == 0 ? "A" : i == corners.Length - 1 ? "B" : number;
            corners[i].With(observation =>
            {
                if (known.Add(observation))
                {
                    figures.Add(new(observation, $"{point} {AxisWord(observation.Kind)}", DeviationOf(observation, tolerance)));
                }

                return observation.Value;
            });
        }

        return new(template, [.. figures.Where(figure => figure.Deviation > 0)]);
    }

    private static string AxisWord(ObservationKind kind) => kind switch
    {
        ObservationKind.Forward => "forward",
        ObservationKind.Left => "left",
        _ => "up",
    };

    private static ObservedLine OfRows(LineTemplate template, MeasuringTolerance tolerance)
    {
        var figures = ImmutableArray.CreateBuilder<ObservedFigure>();
        var known = new HashSet<Observation>();
        var route = template.Route;
        for (var i = 0; i < route.Legs.Length; i++)
        {
            Add(route.Legs[i].From, i + 1, bend: i);
            if (i < route.Bends.Length)
            {
                // The first rotation only sets the starting plane, which swings the whole line.
                Add(i == 0 ? null : route.Bends[i].RotationFrom, i + 1, bend: i + 1);
                Add(route.Bends[i].TurnFrom, i + 1, bend: i + 1);
            }
        }

        return new(template, figures.ToImmutable());

        void Add(Term? term, int leg, int bend) => term?.ValueWith(observation =>
        {
            if (known.Add(observation) && DeviationOf(observation, tolerance) is var deviation && deviation > 0)
            {
                figures.Add(new(observation, NameOf(observation.Kind, leg, bend), deviation));
            }

            return observation.Value;
        });
    }

    /// <summary>The line if its figures were these; the very same line if they are those that were read.</summary>
    /// <param name="values">For each of <see cref="Figures"/>.</param>
    public LineTemplate With(IReadOnlyList<double> values)
    {
        var valueOf = ValuesOf(values);
        if (!_template.Corners.IsEmpty)
        {
            return Through(CornersWith(valueOf));
        }

        var route = _template.Route;
        return _template with
        {
            Route = Route.Of(
                [
                    .. route.Legs.Select(leg => leg.From is { } from
                        ? leg with { Measured = Length.FromMillimetres(from.ValueWith(valueOf)) }
                        : leg),
                ],
                [
                    .. route.Bends.Select(bend => bend with
                    {
                        Turn = bend.TurnFrom is { } turn ? Angle.FromRadians(turn.ValueWith(valueOf)) : bend.Turn,
                        IsUBend = !bend.HasCorner,
                        Rotation = bend.RotationFrom is { } rotation ? Angle.FromRadians(rotation.ValueWith(valueOf)) : bend.Rotation,
                    }),
                ]),
        };
    }

    /// <summary>What a leg would have been typed as, had the ruler lain on the other face of the wire; null for anything else.</summary>
    /// <param name="figure">One of <see cref="Figures"/>.</param>
    public double? OtherFace(int figure)
    {
        var leg = _template.Route.Legs.IndexOf(_template.Route.Legs.FirstOrDefault(leg => leg.From == Figures[figure].Observation)!);
        if (leg < 0 || _template.Habit is not (MeasuredTo.Outside or MeasuredTo.Inside) || _template.Wire.Diameter is null)
        {
            return null;
        }

        var (typed, bends) = (_template.Route.Legs[leg], _template.Route.Bends);
        Angle? Turn(int bend) => bend < 0 || bend >= bends.Length || !bends[bend].HasCorner ? null : bends[bend].Turn;
        Length Corners(MeasuredTo habit) =>
            LegConversion.CornerToCorner(typed.Measured, habit, _template.Wire, Turn(leg - 1), Turn(leg));
        var other = _template.Habit == MeasuredTo.Outside ? MeasuredTo.Inside : MeasuredTo.Outside;
        return (typed.Measured + Corners(other) - Corners(_template.Habit)).Millimetres;
    }

    /// <summary>Where its corners and ends would be; a leg too short for its bends has a straight below zero.</summary>
    /// <param name="values">For each of <see cref="Figures"/>.</param>
    /// <returns>
    /// Null where a leg beside a bend without a corner was measured to a corner, or two corners would lie in one place.
    /// </returns>
    public Places? PlacesWith(double[] values) => WalkWith(values)?.Places;

    /// <summary>How the places of the line move with each figure.</summary>
    /// <param name="walked">The line with these values.</param>
    /// <param name="values">For each of <see cref="Figures"/>.</param>
    public PlaceMotion[] Motions(WalkedRoute walked, double[] values)
    {
        var valueOf = ValuesOf(values);
        return _template.Corners.IsEmpty
            ? walked.Motions(SlopesOf, Figures.Length)
            : CornerMotions.Of([.. _template.Corners.Select(SlopesOfCorner)], walked.Places, Figures.Length);

        FigureSlope[] SlopesOf(Term? term)
        {
            if (term is null or Observation)
            {
                return term is Observation one && _index.TryGetValue(one, out var read) ? _slopes[read] : [];
            }

            var slopes = new List<FigureSlope>();
            term.SlopesWith(valueOf, 1, (observation, slope) =>
            {
                if (_index.TryGetValue(observation, out var figure))
                {
                    slopes.Add(new(figure, slope * Figures[figure].Deviation));
                }
            });
            return [.. slopes];
        }

        FigureSlope[][] SlopesOfCorner(CornerPoint corner) =>
            corner.From is [var forward, var left, var up] ? [SlopesOf(forward), SlopesOf(left), SlopesOf(up)] : [[], [], []];
    }

    /// <summary>The line walked from end A; null where it has no places, as with two corners in one place.</summary>
    /// <param name="values">For each of <see cref="Figures"/>.</param>
    public WalkedRoute? WalkWith(double[] values)
    {
        var valueOf = ValuesOf(values);
        if (_template.Corners.IsEmpty)
        {
            return WalkedRoute.Of(_template, valueOf);
        }

        var corners = CornersWith(valueOf);
        return corners.Skip(1).Zip(corners, (corner, before) => corner.Position.DistanceTo(before.Position)).All(leg => leg > 0)
            ? WalkedRoute.Of(Through(corners), valueOf)
            : null;
    }

    private ImmutableArray<CornerPoint> CornersWith(Func<Observation, double> valueOf) =>
        [.. _template.Corners.Select(corner => corner.With(valueOf))];

    private LineTemplate Through(ImmutableArray<CornerPoint> corners)
    {
        var line = CornerRoute.Of(corners, _template.Bender);
        return _template with { Route = line.Route, Start = line.Start, Corners = line.Corners };
    }

    private Func<Observation, double> ValuesOf(IReadOnlyList<double> values) =>
        observation => _index.TryGetValue(observation, out var index) ? values[index] : observation.Value;

    private static double DeviationOf(Observation observed, MeasuringTolerance tolerance) => observed.Within ?? observed.Kind switch
    {
        ObservationKind.Bend => tolerance.Bend.Radians,
        ObservationKind.Rotation => tolerance.Rotate.Radians,
        ObservationKind.Forward or ObservationKind.Left or ObservationKind.Up => tolerance.Tape.Millimetres,
        _ => tolerance.Straight.Millimetres,
    };

    /// <summary>By the number of the leg or the bend; a figure of a slope by that of the bend before it.</summary>
    private static string NameOf(ObservationKind kind, int leg, int bend) => kind switch
    {
        ObservationKind.Leg => "leg " + Number(leg),
        ObservationKind.Bend => "bend " + Number(bend),
        ObservationKind.Rotation => "rotation " + Number(bend),
        ObservationKind.Offset => "offset " + Number(bend),
        ObservationKind.Run => "run " + Number(bend),
        ObservationKind.Saddle => "saddle " + Number(bend),
        _ => "width " + Number(bend),
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
