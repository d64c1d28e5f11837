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
    public static LineSurvey? Of(LineTemplate template)
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
            (line, adjustment) = (known, Adjustment.Of(known, known.Typed, weighed)!);
        }

        return new Surveying(template, line, adjustment, beside, weighed, tolerance).Survey();
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

    /// <summary>From an adjustment to what is said of it.</summary>
    private sealed record Surveying(
        LineTemplate Template,
        ObservedLine Line,
        Adjustment Adjustment,
        List<TapedMeasurement> Beside,
        List<WeighedQuantity> Weighed,
        MeasuringTolerance Tolerance)
    {
        public LineSurvey Survey()
        {
            ImmutableArray<SurveyedMeasurement> measurements = [.. Figures(), .. Quantities()];
            var toSpare = Weighed.Count - Line.Figures.Count(figure => figure.IsUnmeasured);
            var isSuspect = !Template.Beside.IsEmpty && SlipSearch.IsSuspect(Adjustment.ChiSquare, toSpare, measurements);
            var places = Adjustment.Slopes.At;
            var (slips, telling) = isSuspect
                ? SlipSearch.Of(
                    Line, Weighed, measurements, toSpare, NextMeasurements.Quantities(Template.Route, places))
                : ([], null);
            return new(Template.Beside.IsEmpty ? Template : Line.With(Adjustment.Values), measurements, Adjustment.ChiSquare, toSpare)
            {
                Miss = Length.FromMillimetres(Root(Landing.OfB(Adjustment.Slopes))),
                Along = Length.FromMillimetres(Root([Landing.AlongLastStraight(Adjustment.Slopes)])),
                Askew = Angle.FromRadians(Root(Landing.OfLastStraight(Adjustment.Slopes))),
                Spread = Length.FromMillimetres(Root(Landing.Spread(Adjustment.Slopes))),
                Next = isSuspect ? [] : NextMeasurements.Of(Line, Adjustment, Template, Tolerance, Template.Wanted),
                IsSuspect = isSuspect,
                Slips = slips,
                TellsSlipsApart = telling?.Name(Template.Route.Bends.Length),
                IsCommonPractice = Template.Tolerance is null,
                IsAtLeast = Line.IsNearFlat,
            };
        }

        private IEnumerable<SurveyedMeasurement> Figures() => Line.Figures.Index().Where(figure => !figure.Item.IsUnmeasured).Select(
            figure => new SurveyedMeasurement(
                figure.Item.Name,
                figure.Item.Observation.Value,
                figure.Item.Deviation,
                Adjustment.Values[figure.Index],
                Adjustment.RedundancyOfFigure(figure.Index),
                figure.Item.Observation.IsAngle,
                figure.Item.Observation.At)
            {
                IsRotation = figure.Item.Observation.Kind == ObservationKind.Rotation,
            });

        private IEnumerable<SurveyedMeasurement> Quantities() => Beside.Select((one, i) => new SurveyedMeasurement(
            one.Quantity.Name(Template.Route.Bends.Length),
            one.Value.Millimetres,
            Weighed[i].Deviation,
            one.Value.Millimetres - (Adjustment.Misses[i] * Weighed[i].Deviation),
            Adjustment.RedundancyBeside(i),
            IsAngle: false,
            one.At));

        /// <summary>The root of the trace of a covariance.</summary>
        private double Root(double[][] slopes) =>
            Math.Sqrt(slopes.Sum(slope => Adjustment.Dot(slope, Adjustment.Covariance(slope))));
    }
}
