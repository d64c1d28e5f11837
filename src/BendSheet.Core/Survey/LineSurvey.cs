using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A measurement beside what the adjustment made of it. In millimetres or radians.</summary>
/// <param name="Name">As in the file: <c>leg 2</c>, <c>B ahead</c>.</param>
/// <param name="Measured">As it was read.</param>
/// <param name="Within">One standard deviation.</param>
/// <param name="Adjusted">As all measurements together have it.</param>
/// <param name="Redundancy">How much of it the others check, from 0 to 1.</param>
/// <param name="IsAngle">It is an angle, in radians.</param>
/// <param name="At">Where it was typed.</param>
public sealed record SurveyedMeasurement(
    string Name, double Measured, double Within, double Adjusted, double Redundancy, bool IsAngle, SourcePosition At)
{
    /// <summary>It is a rotation, which goes one way or the other.</summary>
    public bool IsRotation { get; init; }

    /// <summary>Below this nothing checks a measurement, and its residual is only rounding.</summary>
    private const double LeastRedundancy = 1e-9;

    /// <summary>
    /// The residual, measured less adjusted, in its own standard deviations; null where nothing checks it. Beyond ±3.29 in one honest
    /// measurement of a thousand.
    /// </summary>
    public double? Standardised => Redundancy > LeastRedundancy ? (Measured - Adjusted) / (Within * Math.Sqrt(Redundancy)) : null;
}

/// <summary>What a line's measurements come to: the line they agree on best, and how sure that is.</summary>
/// <param name="Line">Adjusted; as it was typed, to the last bit, where nothing is measured twice.</param>
/// <param name="Measurements">The route's figures, then what is measured beside it, in the order of the file.</param>
/// <param name="ChiSquare">The weighed sum of the squares of all residuals.</param>
/// <param name="ToSpare">Measurements beyond what the shape needs: degrees of freedom.</param>
public sealed record LineSurvey(
    LineTemplate Line, ImmutableArray<SurveyedMeasurement> Measurements, double ChiSquare, int ToSpare)
{
    /// <summary>How far B may be off its port once the line is rolled in A to suit: one standard deviation.</summary>
    public required Length Miss { get; init; }

    /// <summary>The part of the miss that lies along the last straight, which trim left on at B takes up.</summary>
    public required Length Along { get; init; }

    /// <summary>How far off square the last straight may enter: one standard deviation.</summary>
    public required Angle Askew { get; init; }

    /// <summary>The root of the trace of end B's covariance, in the frame of A's straight and the first bend.</summary>
    public required Length Spread { get; init; }

    /// <summary>What to measure next, until the line fits as well as wanted; none where it does.</summary>
    public required ImmutableArray<NextMeasurement> Next { get; init; }

    /// <summary>The measurements do not agree: one or more of them must be wrong, and the line is not to be believed.</summary>
    public bool IsSuspect { get; private init; }

    /// <summary>What was probably misread, the likeliest first; none where nothing is suspected, or no single slip explains it.</summary>
    public ImmutableArray<Slip> Slips { get; private init; } = [];

    /// <summary>Every likely slip was tried; otherwise there may be one that explains it and is not named.</summary>
    public bool AllSlipsTried { get; private init; } = true;

    /// <summary>The measurement that would tell the slips apart; null where there is one or none.</summary>
    public string? TellsSlipsApart { get; private init; }

    /// <summary>Nobody said how well it was measured.</summary>
    public bool IsCommonPractice { get; private init; }

    /// <summary>It may be less sure: part of the shape is too flat for its distances to say how sure it is.</summary>
    public bool IsAtLeast { get; private init; }

    /// <summary>
    /// A line of more figures, three to a bend, is not adjusted: work and memory grow with the third power, and no line has so many.
    /// </summary>
    public const int MostFigures = 180;

    /// <summary>B is as sure as wanted.</summary>
    public bool FitsAs(WantedFit wanted) => Miss <= wanted.Miss && Askew <= wanted.Askew;

    /// <summary>Adjusts a line and says how sure it is. First order: JCGM 100:2008, 5.1 and JCGM 102:2011, 6.2.</summary>
    /// <returns>Null where the line has no bend, no shape, nothing that was measured, or more than can be adjusted.</returns>
    public static LineSurvey? Of(LineTemplate template) => Of(template, SlipSearch.StepsOfFile);

    /// <summary>The same; what looking for slips may cost is shared with the other lines of the file.</summary>
    internal static LineSurvey? Of(LineTemplate template, SearchSteps steps) => Surveying.Of(template)?.Survey(steps);

    /// <summary>The adjusted line alone, before anything is said of it.</summary>
    /// <returns>Null where <see cref="Of(LineTemplate)"/> says nothing, and where its measurements do not agree.</returns>
    public static LineTemplate? Agreed(LineTemplate template) =>
        Surveying.Of(template) is { IsSuspect: false } surveying ? surveying.Adjusted : null;

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

    /// <summary>From an adjustment to what is said of it.</summary>
    private sealed class Surveying
    {
        private readonly LineTemplate _template;
        private readonly MeasuringTolerance _tolerance;
        private readonly ObservedLine _line;
        private readonly Places _typed;
        private readonly Adjustment _adjustment;
        private readonly List<TapedMeasurement> _beside;
        private readonly List<WeighedQuantity> _weighed;
        private readonly ImmutableArray<SurveyedMeasurement> _measurements;
        private readonly int _toSpare;

        private Surveying(
            LineTemplate template,
            (ObservedLine Line, Places Typed, Adjustment Adjustment) adjusted,
            List<TapedMeasurement> beside,
            List<WeighedQuantity> weighed,
            MeasuringTolerance tolerance)
        {
            (_template, _tolerance, _beside, _weighed) = (template, tolerance, beside, weighed);
            (_line, _typed, _adjustment) = adjusted;
            _measurements = [.. Figures(), .. Quantities()];
            _toSpare = weighed.Count - _line.Figures.Count(figure => figure.IsUnmeasured);
            IsSuspect = !template.Beside.IsEmpty && SlipSearch.IsSuspect(_adjustment.ChiSquare, _toSpare, _measurements);
        }

        /// <summary>The measurements do not agree.</summary>
        public bool IsSuspect { get; }

        /// <summary>The line they agree on best.</summary>
        public LineTemplate Adjusted => _template.Beside.IsEmpty ? _template : _line.With(_adjustment.Values);

        public static Surveying? Of(LineTemplate template)
        {
            if (template.Route.Bends.IsEmpty)
            {
                return null;
            }

            var tolerance = template.Tolerance ?? MeasuringTolerance.CommonPractice;
            var line = ObservedLine.Of(template, tolerance);
            if (line.Figures.IsEmpty || line.Figures.Length > MostFigures || line.PlacesWith(line.Typed) is not { } typed)
            {
                return null;
            }

            List<TapedMeasurement> beside =
            [
                .. Distances(template),
                .. template.Beside.Where(one => typed.Has(one.Quantity)),
            ];
            var weighed = beside.ConvertAll(one => Weighing.Of(one, typed, tolerance));
            if (Adjustment.Of(line, line.Typed, weighed) is not { } adjustment)
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

        public LineSurvey Survey(SearchSteps steps)
        {
            var places = _adjustment.Slopes.At;
            var landing = Landing.Of(_adjustment.Slopes);
            var (slips, telling) = IsSuspect
                ? SlipSearch.Of(
                    _line, _weighed, _measurements, _toSpare, NextMeasurements.Quantities(_template.Route, places), steps)
                : ([], null);
            return new(Adjusted, _measurements, _adjustment.ChiSquare, _toSpare)
            {
                Miss = Length.FromMillimetres(Root(landing.OfB)),
                Along = Length.FromMillimetres(Root([landing.AlongLastStraight])),
                Askew = Angle.FromRadians(Root(landing.OfLastStraight)),
                Spread = Length.FromMillimetres(Root(landing.Spread)),
                Next = IsSuspect ? [] : NextMeasurements.Of(_adjustment, landing, _typed, _template, _tolerance),
                IsSuspect = IsSuspect,
                Slips = slips,
                AllSlipsTried = !IsSuspect || !steps.AreUsedUp,
                TellsSlipsApart = telling?.Name(_template.Route.Bends.Length),
                IsCommonPractice = _template.Tolerance is null,
                IsAtLeast = _line.IsNearFlat,
            };
        }

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
                trace += Adjustment.Dot(slope, _adjustment.Covariance(slope));
            }

            return Math.Sqrt(trace);
        }
    }
}
