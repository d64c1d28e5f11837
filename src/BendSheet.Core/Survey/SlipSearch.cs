using System.Collections.Immutable;
using BendSheet.Core.Templates;
using MathNet.Numerics.Distributions;

namespace BendSheet.Core.Survey;

/// <summary>
/// Looks for the one measurement that was misread, where all of them together do not agree: every mistake that a person makes is tried,
/// one at a time, and what makes all agree is what was probably meant.
/// </summary>
internal sealed class SlipSearch
{
    /// <summary>A larger standardised residual has one honest measurement in a thousand.</summary>
    private const double Unlikely = 3.29;

    /// <summary>The same for all of them together: the part of honest lines that are not suspected.</summary>
    private const double Honest = 0.99;

    /// <summary>Measurements that the others check by less are not looked at: anything would agree with them.</summary>
    private const double LeastRedundancy = 0.01;

    /// <summary>A standardised residual below this is none of a slip that has to be looked for.</summary>
    private const double Noticed = 1.5;

    /// <summary>So many mistakes are tried in full, the likeliest first.</summary>
    private const int MostTried = 60;

    /// <summary>Twice the logarithm of how much likelier one explanation must be than another to stand alone.</summary>
    private const double TellsApart = 6;

    /// <summary>With more of them, none is named.</summary>
    private const int MostNamed = 4;

    private readonly ObservedLine _line;
    private readonly IReadOnlyList<WeighedQuantity> _beside;
    private readonly ImmutableArray<SurveyedMeasurement> _measurements;
    private readonly int _toSpare;

    private SlipSearch(
        ObservedLine line,
        IReadOnlyList<WeighedQuantity> beside,
        ImmutableArray<SurveyedMeasurement> measurements,
        int toSpare)
    {
        _line = line;
        _beside = beside;
        _measurements = measurements;
        _toSpare = toSpare;
    }

    /// <summary>Whether measurements agree so badly that one of them must be wrong.</summary>
    /// <param name="chiSquare">Of all.</param>
    /// <param name="toSpare">Degrees of freedom.</param>
    /// <param name="measurements">All.</param>
    public static bool IsSuspect(double chiSquare, int toSpare, IEnumerable<SurveyedMeasurement> measurements) =>
        toSpare > 0 && (chiSquare > ChiSquared.InvCDF(toSpare, Honest)
            || measurements.Any(one => Math.Abs(one.Standardised ?? 0) > Unlikely));

    /// <summary>The mistakes that explain it, the likeliest first, and what would tell them apart.</summary>
    /// <param name="line">As it was typed.</param>
    /// <param name="beside">What else was measured.</param>
    /// <param name="measurements">Its figures and then what is beside them.</param>
    /// <param name="toSpare">Degrees of freedom.</param>
    /// <param name="quantities">What could be measured to tell.</param>
    public static (ImmutableArray<Slip> Slips, TapedQuantity? Telling) Of(
        ObservedLine line,
        IReadOnlyList<WeighedQuantity> beside,
        ImmutableArray<SurveyedMeasurement> measurements,
        int toSpare,
        IEnumerable<TapedQuantity> quantities)
    {
        var search = new SlipSearch(line, beside, measurements, toSpare);
        var explained = search.Explanations();
        var likely = explained.TakeWhile(one => one.Score <= explained[0].Score + TellsApart).Take(MostNamed).ToList();
        return ([.. likely.Select(one => one.Slip)], likely.Count > 1 ? search.Telling(likely, quantities) : null);
    }

    /// <summary>The best for each measurement, the likeliest first; every one makes all agree.</summary>
    private List<Explanation> Explanations() =>
    [
        .. Suspicions().OrderByDescending(one => one.Promise).Take(MostTried)
            .Select(Tried)
            .OfType<Explanation>()
            .GroupBy(one => one.Slip.Name, StringComparer.Ordinal)
            .Select(same => same.MinBy(one => one.Score)!)
            .OrderBy(one => one.Score),
    ];

    /// <summary>Every mistake that would change a measurement towards what the others say.</summary>
    private IEnumerable<Suspicion> Suspicions()
    {
        var figures = _line.Figures.Count(figure => !figure.IsUnmeasured);
        for (var i = 0; i < _measurements.Length; i++)
        {
            var one = _measurements[i];
            if (one.Redundancy < LeastRedundancy || one.Standardised is not { } standardised || Math.Abs(standardised) < Noticed)
            {
                continue;
            }

            // What the measurement is wrong by if it alone is, to first order.
            var wrongBy = (one.Measured - one.Adjusted) / one.Redundancy;
            var unsure = one.Within / Math.Sqrt(one.Redundancy);
            yield return new(i, SlipKind.Other, one.Measured - wrongBy, Math.Abs(standardised));
            var misreadings = i < figures
                ? Misreadings.Of(_line.Figures[i].Observation.Kind, one.Measured)
                    .Concat(_line.OtherFace(i) is { } other ? [(SlipKind.Face, other)] : [])
                : Misreadings.OfLength(one.Measured);
            foreach (var (kind, instead) in misreadings)
            {
                var (change, off) = (one.Measured - instead, Math.Abs(one.Measured - instead - wrongBy));
                if (off <= Math.Max(5 * unsure, 0.6 * Math.Abs(change)))
                {
                    yield return new(i, kind, instead, Math.Abs(standardised) + 1 - (off / (off + unsure)));
                }
            }
        }
    }

    private Explanation? Tried(Suspicion suspicion)
    {
        var index = suspicion.Measurement;
        var figures = _line.Figures.Count(figure => !figure.IsUnmeasured);
        var leftOut = suspicion.Kind == SlipKind.Other;
        var typed = _line.Typed;
        var beside = _beside.ToList();
        if (index < figures)
        {
            typed[index] = leftOut ? typed[index] : suspicion.Instead;
        }
        else if (leftOut)
        {
            beside.RemoveAt(index - figures);
        }
        else
        {
            beside[index - figures] = beside[index - figures] with { Millimetres = suspicion.Instead };
        }

        var toSpare = _toSpare - (leftOut ? 1 : 0);
        if (Adjustment.Of(_line, typed, beside, leftOut && index < figures ? index : -1) is not { } tried
            || (toSpare == 0 ? tried.ChiSquare > Unlikely : tried.ChiSquare > ChiSquared.InvCDF(toSpare, Honest)))
        {
            return null;
        }

        var one = _measurements[index];
        var instead = !leftOut ? suspicion.Instead
            : index < figures ? tried.Values[index]
            : tried.Slopes.At.ValueOf(_beside[index - figures].Quantity, _line.Start);
        var misses = tried.Misses.Zip(beside, (miss, quantity) => miss * quantity.Deviation).ToList();
        var agreesTo = misses.Count == 0 ? 0 : Math.Sqrt(misses.Sum(miss => miss * miss) / misses.Count);
        return new(
            new(one.Name, suspicion.Kind, one.Measured, instead, one.IsAngle, agreesTo, one.At)
            {
                IsRotation = one.IsRotation,
            },
            tried.ChiSquare + Surprise(suspicion.Kind),
            tried.Slopes.At);
    }

    /// <summary>Twice the logarithm of how rare a mistake is, against the commonest, and in how many ways it can be made.</summary>
    private static double Surprise(SlipKind kind) => kind switch
    {
        SlipKind.Sense or SlipKind.Included => 0,
        SlipKind.Face => 1,
        SlipKind.Digits => 2,
        SlipKind.Misread => 3,
        _ => 8,
    };

    /// <summary>What would read most differently if one or the other were true.</summary>
    private TapedQuantity? Telling(List<Explanation> likely, IEnumerable<TapedQuantity> quantities)
    {
        var taken = _beside.Select(one => one.Quantity).ToHashSet();
        var (first, second) = (likely[0].Places, likely[1].Places);
        return quantities.Where(quantity => !taken.Contains(quantity))
            .Select(quantity => (TapedQuantity?)quantity)
            .MaxBy(quantity => Math.Abs(
                first.ValueOf(quantity!.Value, _line.Start) - second.ValueOf(quantity.Value, _line.Start)));
    }

    private sealed record Suspicion(int Measurement, SlipKind Kind, double Instead, double Promise);

    private sealed record Explanation(Slip Slip, double Score, Places Places);
}
