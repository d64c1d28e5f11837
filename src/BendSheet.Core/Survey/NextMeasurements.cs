using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// Of everything that a person could still measure beside the route, what brings end B nearest to its port: the best one, the best one
/// after it, and so on.
/// </summary>
/// <remarks>
/// A measurement a of variance s² takes C·a·aᵀ·C / (s² + aᵀ·C·a) from the figures' covariance C, whatever it reads, so that each can
/// be tried without measuring (rank-one update; any text on least squares).
/// </remarks>
internal sealed class NextMeasurements
{
    private const int Most = 4;

    /// <summary>A point nearer to A's straight than so many standard deviations may lie on either side of it.</summary>
    private const double ClearOfStraight = 3;

    private readonly Adjustment _adjustment;
    private readonly List<Candidate> _candidates = [];
    private readonly List<Candidate> _taken = [];
    private readonly Landing _landing;

    /// <summary>The covariance times each slope of end B, with what was taken.</summary>
    private readonly double[][] _spread;

    /// <summary>The same of the last straight's direction.</summary>
    private readonly double[][] _turned;

    private NextMeasurements(Adjustment adjustment, Landing landing)
    {
        _adjustment = adjustment;
        _landing = landing;
        _spread = Array.ConvertAll(landing.OfB, adjustment.Covariance);
        _turned = Array.ConvertAll(landing.OfLastStraight, adjustment.Covariance);
    }

    /// <summary>In millimetres.</summary>
    private double Miss => Root(_landing.OfB, _spread);

    /// <summary>In radians.</summary>
    private double Askew => Root(_landing.OfLastStraight, _turned);

    /// <summary>What to measure next, in this order.</summary>
    /// <param name="adjustment">Of the line.</param>
    /// <param name="landing">Of its end B.</param>
    /// <param name="typed">
    /// The line as it was typed, with the fit that is wanted; its places by the figures as they were read; how sure tape and square are.
    /// </param>
    /// <param name="beside">What was taped already.</param>
    public static ImmutableArray<NextMeasurement> Of(
        Adjustment adjustment,
        Landing landing,
        (LineTemplate Line, Places Places, MeasuringTolerance Tolerance) typed,
        IEnumerable<TapedQuantity> beside)
    {
        var template = typed.Line;
        var next = new NextMeasurements(adjustment, landing);
        var taken = beside.Select(quantity => quantity with { Back = null }).ToHashSet();
        foreach (var quantity in Quantities(template.Route, adjustment.Slopes.At))
        {
            if (!taken.Contains(quantity))
            {
                next._candidates.Add(Candidate.Of(quantity, adjustment, typed.Places, typed.Tolerance));
            }
        }

        return [.. next.Best(template.Route.Bends.Length, template.Wanted)];
    }

    /// <summary>Everything between two points that a tape or a straight edge reaches, but for the legs, which the rows have.</summary>
    public static IEnumerable<TapedQuantity> Quantities(Route route, Places places)
    {
        var last = places.Points.Length - 1;
        for (var from = 0; from < last; from++)
        {
            for (var to = from + 2; to <= last && !(to - 2 >= from && route.Bends[to - 2].FromTangent); to++)
            {
                if (places.Points[from] is null || places.Points[to] is null)
                {
                    continue;
                }

                yield return new(TapedKind.Distance, from, to);
                if (from == 0)
                {
                    yield return new(TapedKind.Ahead, 0, to);
                    yield return new(TapedKind.Aside, 0, to);
                }
            }
        }
    }

    private IEnumerable<NextMeasurement> Best(int bends, WantedFit wanted)
    {
        for (var count = 0; count < Most && _candidates.Count > 0 && !Fits(wanted); count++)
        {
            if (Best() is not { } best)
            {
                yield break;
            }

            _candidates.Remove(best);
            Take(best);
            yield return new(
                best.Quantity,
                best.Quantity.Name(bends),
                Length.FromMillimetres(best.Expected),
                Length.FromMillimetres(best.Deviation),
                Length.FromMillimetres(Miss),
                Angle.FromRadians(Askew));
        }
    }

    private bool Fits(WantedFit wanted) => Miss <= wanted.Miss.Millimetres && Askew <= wanted.Askew.Radians;

    /// <summary>
    /// The candidate that takes most from the trace of the covariance. None takes more than it would if it were itself sure already, so
    /// that most need not be looked at closer.
    /// </summary>
    private Candidate? Best()
    {
        var atMost = new double[_candidates.Count];
        for (var i = 0; i < atMost.Length; i++)
        {
            foreach (var force in _spread)
            {
                atMost[i] += Squared(force, _candidates[i].Slope);
            }
        }

        Candidate? best = null;
        var most = 0.0;
        for (var at = FirstLargest(atMost); atMost[at] > most; at = FirstLargest(atMost))
        {
            var candidate = _candidates[at];
            candidate.Follow(_taken, _adjustment);
            if (candidate.IsOffered && atMost[at] / (1 + candidate.Variance) is var gain && gain > most)
            {
                (best, most) = (candidate, gain);
            }

            atMost[at] = 0;
        }

        return best;
    }

    private static int FirstLargest(double[] values)
    {
        var largest = 0;
        for (var i = 1; i < values.Length; i++)
        {
            largest = values[i].CompareTo(values[largest]) > 0 ? i : largest;
        }

        return largest;
    }

    /// <summary>The covariance as if the candidate had been measured.</summary>
    private void Take(Candidate best)
    {
        _taken.Add(best);
        foreach (var forces in (ReadOnlySpan<double[][]>)[_spread, _turned])
        {
            foreach (var force in forces)
            {
                best.TakeFrom(force, NormalEquations.Dot(force, best.Slope));
            }
        }
    }

    private static double Squared(double[] force, double[] slope)
    {
        var part = NormalEquations.Dot(force, slope);
        return part * part;
    }

    private static double Root(double[][] slopes, double[][] forces)
    {
        var trace = 0.0;
        for (var i = 0; i < slopes.Length; i++)
        {
            trace += NormalEquations.Dot(slopes[i], forces[i]);
        }

        return Math.Sqrt(Math.Max(0, trace));
    }

    /// <summary>Something that could be measured.</summary>
    private sealed class Candidate
    {
        private readonly Places _places;
        private double[] _force = [];
        private int _followed;

        private Candidate(TapedQuantity quantity, double expected, double deviation, double[] slope, Places places)
        {
            Quantity = quantity;
            Expected = expected;
            Deviation = deviation;
            Slope = slope;
            _places = places;
        }

        public TapedQuantity Quantity { get; }

        /// <summary>In millimetres.</summary>
        public double Expected { get; }

        /// <summary>In millimetres.</summary>
        public double Deviation { get; }

        /// <summary>With the figures, in its own standard deviations.</summary>
        public double[] Slope { get; }

        /// <summary>Of the expected value, in variances of the measurement, once what was taken before is known.</summary>
        public double Variance { get; private set; }

        /// <summary>The first order is good enough to tell what it would say.</summary>
        public bool IsOffered { get; private set; }

        public static Candidate Of(
            TapedQuantity quantity, Adjustment adjustment, Places typed, MeasuringTolerance tolerance)
        {
            var deviation = Weighing.Deviation(quantity, typed, tolerance);
            var slope = adjustment.Slopes.Of(quantity);
            for (var i = 0; i < slope.Length; i++)
            {
                slope[i] /= deviation;
            }

            return new(quantity, adjustment.Slopes.At.ValueOf(quantity), deviation, slope, adjustment.Slopes.At);
        }

        /// <summary>Takes into account what was taken since it was last looked at.</summary>
        public void Follow(List<Candidate> taken, Adjustment adjustment)
        {
            if (_force.Length == 0)
            {
                _force = adjustment.Covariance(Slope);
                IsOffered = MayBeOffered(Deviation * Math.Sqrt(1 + NormalEquations.Dot(Slope, _force)));
            }

            for (; _followed < taken.Count; _followed++)
            {
                taken[_followed].TakeFrom(_force, NormalEquations.Dot(taken[_followed]._force, Slope));
            }

            Variance = NormalEquations.Dot(Slope, _force);
        }

        /// <summary>What is left of a force once this is measured.</summary>
        /// <param name="force">Of something else.</param>
        /// <param name="shared">What it moves this by.</param>
        public void TakeFrom(double[] force, double shared)
        {
            for (var i = 0; i < force.Length; i++)
            {
                force[i] -= shared / (1 + Variance) * _force[i];
            }
        }

        private bool MayBeOffered(double spread) => Quantity.Kind switch
        {
            TapedKind.Aside => Expected > ClearOfStraight * spread,
            TapedKind.Distance => Expected > ClearOfStraight * spread && !IsNearlyInLine(),
            _ => true,
        };

        /// <summary>The tape lies all but along the legs between its ends, and would read the same if they were bent a little.</summary>
        private bool IsNearlyInLine()
        {
            var along = 0.0;
            for (var i = Quantity.From; i < Quantity.To; i++)
            {
                if (_places.Points[i] is not { } from || _places.Points[i + 1] is not { } to)
                {
                    return false;
                }

                along += from.DistanceTo(to);
            }

            return along - _places.Points[Quantity.From]!.Value.DistanceTo(_places.Points[Quantity.To]!.Value)
                < ClearOfStraight * Deviation;
        }
    }
}
