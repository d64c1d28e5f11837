using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Placing;

/// <summary>
/// A line between ports whose places on the car were typed. A is at one port, and its straight goes the way that port faces. Where the
/// other port lies is measured beside the route, as everything taped is, and adjusted with the rest.
/// </summary>
/// <remarks>A port says no roll: a line that does not say itself how it lies is rolled in A until its B lies on the side of its port, as
/// one would do by hand.</remarks>
public sealed record PlacedTemplate
{
    /// <summary>B nearer than this to the line through A's straight leaves the roll open, in millimetres.</summary>
    private const double LeastAside = 20;

    private readonly LineTemplate _typed;
    private readonly Surveying? _own;
    private readonly PortLie? _from;
    private readonly PortLie? _to;

    private PlacedTemplate(LineTemplate typed)
    {
        (_typed, _from, _to) = (typed, typed.From.Port?.Port.Lie, typed.To.Port?.Port.Lie);
        Line = typed;
        Surveying = _own = Surveying.Of(typed, isToGoOn: _from?.Position is not null && _to?.Position is not null);
    }

    /// <summary>As typed, with what its ports say of it.</summary>
    public LineTemplate Line { get; private init; }

    /// <summary>Of the line with what its ports say of it; null where nothing can be adjusted.</summary>
    internal Surveying? Surveying { get; private init; }

    /// <summary>Where the template by itself would end, minus where its port lies; null where that cannot be compared.</summary>
    public PortMiss? Miss { get; private init; }

    /// <summary>How far the template by itself may be off at B: one standard deviation; null where nobody knows.</summary>
    internal Length? MayMiss => _own?.Miss;

    /// <summary>Its ports say where its B lies.</summary>
    public bool IsObserved => Line.Beside.Length > _typed.Beside.Length;

    /// <summary>What a line's ports say of it; the line itself where they say nothing.</summary>
    public static PlacedTemplate Of(LineTemplate typed)
    {
        var placed = new PlacedTemplate(typed);
        return placed._from is null && placed._to is null ? placed : placed.WithPorts();
    }

    /// <summary>The line on the car, when its shape is known.</summary>
    /// <param name="template">Adjusted.</param>
    /// <param name="layout">Of it, no straight below zero.</param>
    public LineTemplate OnCar(LineTemplate template, RouteLayout layout)
    {
        if (_from is null && _to is null)
        {
            return template;
        }

        var start = template.Start;
        if (!_typed.LiesOnCar)
        {
            if (Headed(layout) is not { } headed)
            {
                return template;
            }

            (start, template) = (headed, template with { LiesOnCar = true });
        }

        var place = _from?.Position is { } a ? a
            : _to?.Position is { } b ? b - (layout.Centreline(start).EndB - start.Position)
            : template.HasPlace ? start.Position : (Vector3D?)null;
        return place is { } known
            ? template with { Start = start with { Position = known }, HasPlace = true }
            : template with { Start = start };
    }

    private PlacedTemplate WithPorts()
    {
        var own = _typed.Beside.IsEmpty ? _typed : Surveying is { IsSuspect: false } agreed ? agreed.Adjusted : null;
        if (own is null || RouteLayout.Of(own).Layout is not { } layout || layout.Legs.Any(leg => leg.StraightLeft < Length.Zero))
        {
            return this;
        }

        var start = _typed.LiesOnCar ? own.Start : Headed(layout);
        var mayBeAdjusted = _typed.Route.Bends.Length <= LineSurvey.MostFigures / 3;
        ImmutableArray<TapedMeasurement> measured = mayBeAdjusted ? [.. Measured(start)] : [];
        var placed = this with { Miss = PortMiss.Of(_typed, layout, start) };
        return measured.IsEmpty ? placed : placed with
        {
            Line = _typed with { Beside = [.. _typed.Beside, .. measured] },
            Surveying = Surveying?.With(measured),
        };
    }

    /// <summary>A's straight the way its port faces, and B on the side of its own port; null where either is not known.</summary>
    private Frame? Headed(RouteLayout layout)
    {
        if (_from is not { Facing: { } heading, Position: { } a } || _to?.Position is not { } b)
        {
            return null;
        }

        var way = layout.Centreline(Frame.Default).EndB;
        var wanted = b - a - ((b - a).Dot(heading) * heading);
        if (Math.Sqrt((way.Y * way.Y) + (way.Z * way.Z)) < LeastAside || wanted.Norm < LeastAside)
        {
            return null;
        }

        // B lies at this angle from the first bend's side, clockwise along the heading: the side is turned as far back from the port.
        var (sin, cos) = Math.SinCos(Math.Atan2(way.Z, way.Y));
        var aside = 1 / wanted.Norm * wanted;
        return new(default, heading, (cos * aside) - (sin * heading.Cross(aside)));
    }

    /// <summary>Where B lies, by the ports: along each axis of the car; ahead and aside where only the heading is known; or only how far.
    /// </summary>
    private IEnumerable<TapedMeasurement> Measured(Frame? start)
    {
        if (_from?.Position is not { } a || _to?.Position is not { } b)
        {
            yield break;
        }

        var (way, last, at) = (b - a, _typed.Route.Bends.Length + 1, _to.At);
        var within = Math.Sqrt(Square(_from.Within.Millimetres) + Square(_to.Within.Millimetres));
        if (_typed.LiesOnCar && start is not null)
        {
            foreach (var axis in new Vector3D[] { new(1, 0, 0), new(0, 1, 0), new(0, 0, 1) })
            {
                yield return Of(new(TapedKind.Part, 0, last) { Axis = axis }, way.Dot(axis), 0);
            }
        }
        else if (_from.Facing is { } heading)
        {
            var ahead = way.Dot(heading);
            var aside = (way - (ahead * heading)).Norm;
            yield return Of(new(TapedKind.Ahead, 0, last), ahead, aside);
            if (aside >= LeastAside)
            {
                yield return Of(new(TapedKind.Aside, 0, last), aside, ahead);
            }
        }
        else
        {
            yield return Of(new(TapedKind.Distance, 0, last), way.Norm, 0);
        }

        // A port that faces a little askew moves this figure by that angle times the reach across it.
        TapedMeasurement Of(TapedQuantity quantity, double value, double reach) => new(quantity, Length.FromMillimetres(value), at)
        {
            Within = Length.FromMillimetres(Math.Sqrt(Square(within) + Square(PortLie.UsualAim.Radians * reach))),
        };
    }

    private static double Square(double value) => value * value;
}
