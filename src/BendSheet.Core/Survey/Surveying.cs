using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A line whose measurements are adjusted, before anything is said of it.</summary>
internal sealed class Surveying
{
    private readonly LineTemplate _template;
    private readonly MeasuringTolerance _tolerance;
    private readonly ObservedLine _line;
    private readonly Places _typed;
    private readonly ImmutableArray<TapedMeasurement> _beside;
    private readonly ImmutableArray<WeighedQuantity> _weighed;
    private readonly Adjustment _adjustment;
    private readonly int _toSpare;
    private ImmutableArray<SurveyedMeasurement>? _measurements;

    private Surveying(
        LineTemplate template, (ObservedLine Line, Places Typed, Adjustment Adjustment) adjusted, ImmutableArray<TapedMeasurement> beside,
        ImmutableArray<WeighedQuantity> weighed, MeasuringTolerance tolerance)
    {
        (_template, _tolerance, _beside, _weighed) = (template, tolerance, beside, weighed);
        (_line, _typed, _adjustment) = adjusted;
        _toSpare = weighed.Length - _line.Figures.Count(figure => figure.IsUnmeasured);
        IsSuspect = !template.Beside.IsEmpty && SlipSearch.IsSuspect(_adjustment.ChiSquare, _toSpare, () => Measurements);
    }

    /// <summary>The measurements do not agree.</summary>
    public bool IsSuspect { get; }

    /// <summary>The line they agree on best.</summary>
    public LineTemplate Adjusted => _template.Beside.IsEmpty ? _template : _line.With(_adjustment.Values);

    /// <summary>How far B may be off its port once the line is rolled in A to suit: one standard deviation.</summary>
    public Length Miss => Length.FromMillimetres(Root(Landing.Of(_adjustment.Slopes).OfB));

    private ImmutableArray<SurveyedMeasurement> Measurements => _measurements ??= [.. Figures(), .. Quantities()];

    /// <summary>Adjusts a line.</summary>
    /// <param name="template">With all that was measured.</param>
    /// <param name="isToGoOn">Another adjustment goes on from it, so that it need not come to its last digits.</param>
    /// <returns>Null where the line has no bend, no shape, nothing that was measured, or more than can be adjusted.</returns>
    public static Surveying? Of(LineTemplate template, bool isToGoOn = false)
    {
        if (template.Route.Bends.IsEmpty)
        {
            return null;
        }

        var tolerance = template.Tolerance ?? MeasuringTolerance.CommonPractice;
        var line = ObservedLine.Of(template, tolerance);
        var figures = line.Typed;
        if (line.Figures.IsEmpty || line.Figures.Length > LineSurvey.MostFigures || PlaceSlopes.Near(line, figures) is not { } slopes)
        {
            return null;
        }

        var typed = slopes.At;
        ImmutableArray<TapedMeasurement> beside =
        [
            .. Distances(template),
            .. template.Beside.Where(one => typed.Has(one.Quantity)),
        ];
        ImmutableArray<WeighedQuantity> weighed = [.. beside.Select(one => Weighing.Of(one, typed, tolerance))];
        var stillToCome = isToGoOn ? Adjustment.ToGoOnFrom : Adjustment.StillToCome;
        if (Adjustment.From(line, figures, slopes, weighed, stillToCome: stillToCome) is not { } adjustment)
        {
            return null;
        }

        if (line.ToFirstOrder(adjustment) is var known && known != line)
        {
            (line, typed) = (known, known.PlacesWith(known.Typed)!);
            adjustment = Adjustment.Of(line, line.Typed, weighed)!;
        }

        return new(template, (line, typed, adjustment), beside, weighed, tolerance);
    }

    /// <summary>The line with more measured beside it.</summary>
    /// <param name="more">Between its ends.</param>
    /// <returns>Null where it has no shape then.</returns>
    public Surveying? With(ImmutableArray<TapedMeasurement> more)
    {
        var template = _template with { Beside = [.. _template.Beside, .. more] };
        if (_template.Taped is not null)
        {
            // What is nearer to flat than its distances can tell may no longer be so with more of them.
            return Of(template);
        }

        ImmutableArray<WeighedQuantity> weighed = [.. _weighed, .. more.Select(one => Weighing.Of(one, _typed, _tolerance))];
        return _adjustment.Again(_line, _line.Typed, weighed) is { } adjustment
            ? new(template, (_line, _typed, adjustment), [.. _beside, .. more], weighed, _tolerance)
            : null;
    }

    /// <summary>What is said of it.</summary>
    /// <param name="steps">What looking for slips may cost: shared with the other lines of the file.</param>
    public LineSurvey Survey(SearchSteps steps)
    {
        var places = _adjustment.Slopes.At;
        var landing = Landing.Of(_adjustment.Slopes);
        var (slips, telling) = IsSuspect
            ? SlipSearch.Of(
                _line, _weighed, Measurements, _toSpare, NextMeasurements.Quantities(_template.Route, places), steps)
            : ([], null);
        var survey = new LineSurvey(Adjusted, Measurements, _adjustment.ChiSquare, _toSpare)
        {
            Miss = Length.FromMillimetres(Root(landing.OfB)),
            Along = Length.FromMillimetres(Root([landing.AlongLastStraight])),
            Askew = Angle.FromRadians(Root(landing.OfLastStraight)),
            Spread = Length.FromMillimetres(Root(landing.Spread)),
            IsSuspect = IsSuspect,
            Slips = slips,
            AllSlipsTried = !IsSuspect || !steps.AreUsedUp,
            TellsSlipsApart = telling?.Name(_template.Route.Bends.Length),
            IsCommonPractice = _template.Tolerance is null,
            IsAtLeast = _line.IsNearFlat,
        };
        return IsSuspect || survey.FitsAs(_template.Wanted) ? survey : survey with
        {
            Next = NextMeasurements.Of(_adjustment, landing, (_template, _typed, _tolerance), _beside.Select(one => one.Quantity)),
        };
    }

    /// <summary>What a route of nothing but distances was measured by.</summary>
    private static IEnumerable<TapedMeasurement> Distances(LineTemplate template) => (template.Taped?.Residuals ?? []).Select(
        one => new TapedMeasurement(
            new(TapedKind.Distance, Math.Min(one.Measured.From, one.Measured.To), Math.Max(one.Measured.From, one.Measured.To))
            {
                Back = one.Measured.Back,
            },
            one.Measured.Distance,
            one.Measured.At)
        {
            Within = one.Measured.Within,
        });

    private IEnumerable<SurveyedMeasurement> Figures()
    {
        for (var i = 0; i < _line.Figures.Length; i++)
        {
            var figure = _line.Figures[i];
            if (!figure.IsUnmeasured)
            {
                yield return new(
                    figure.Name,
                    figure.Observation.Value,
                    figure.Deviation,
                    _adjustment.Values[i],
                    _adjustment.RedundancyOfFigure(i),
                    figure.Observation.IsAngle,
                    figure.Observation.At)
                {
                    IsRotation = figure.Observation.Kind == ObservationKind.Rotation,
                };
            }
        }
    }

    private IEnumerable<SurveyedMeasurement> Quantities() => _beside.Select((one, i) => new SurveyedMeasurement(
        one.Quantity.Name(_template.Route.Bends.Length),
        one.Value.Millimetres,
        _weighed[i].Deviation,
        one.Value.Millimetres - (_adjustment.Misses[i] * _weighed[i].Deviation),
        _adjustment.RedundancyBeside(i),
        IsAngle: false,
        one.At));

    /// <summary>The root of the trace of a covariance.</summary>
    private double Root(ReadOnlySpan<double[]> slopes)
    {
        var trace = 0.0;
        foreach (var slope in slopes)
        {
            trace += NormalEquations.Dot(slope, _adjustment.Covariance(slope));
        }

        return Math.Sqrt(trace);
    }
}
