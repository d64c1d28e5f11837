using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using MathNet.Numerics.Distributions;

namespace BendSheet.Core.Survey;

/// <summary>
/// Looks for the one measurement that was misread, where all of them together do not agree: every mistake that a person makes is tried,
/// one at a time, and what makes all agree is what was probably meant.
/// </summary>
internal sealed class SlipSearch
{
    /// <summary>One honest measurement in a thousand has a larger standardised residual.</summary>
    private const double Unlikely = 3.29;

    /// <summary>Of more measurements than this, one in twenty lines would have a larger one by chance.</summary>
    private const int ManyMeasurements = 50;

    /// <summary>The part of lines whose largest residual is not suspected, where there are so many measurements (Šidák, 1967).</summary>
    private const double HonestLargest = 0.95;

    /// <summary>The same for all of them together: the part of honest lines that are not suspected.</summary>
    private const double Honest = 0.99;

    /// <summary>
    /// The limit where one measurement is to spare (any table of χ²: 6.63); it is larger where more are. No standardised residual is beyond
    /// the root of the sum of squares, so that none is unlikely either where that is less.
    /// </summary>
    private const double LeastSuspect = 6.63;

    /// <summary>A slip that explains all leaves no more than this part of honest lines would.</summary>
    private const double Explained = 0.999;

    /// <summary>Measurements that the others check by less are not looked at: they are what they are told to be.</summary>
    private const double LeastRedundancy = 1e-6;

    /// <summary>So many mistakes are tried in full, the likeliest first.</summary>
    private const int MostTried = 24;

    /// <summary>So many multiplications may be spent on screening angles; of the likeliest few always.</summary>
    private const double MostWork = 3e8;

    /// <summary>So many angles are screened whatever it costs, those that would leave least unexplained.</summary>
    private const int LeastScreened = 12;

    /// <summary>How much less than its screening said an adjustment may come to, in twice the logarithm of likelihood.</summary>
    private const double ScreenedTooHigh = 50;

    /// <summary>Twice the logarithm of how much likelier one explanation must be than another to stand alone.</summary>
    private const double TellsApart = 6;

    /// <summary>A tape tells two figures apart that differ by more than this, in millimetres.</summary>
    private const double LeastTelling = 5;

    /// <summary>So many are named at most.</summary>
    private const int MostNamed = 4;

    private readonly ObservedLine _line;
    private readonly IReadOnlyList<WeighedQuantity> _beside;
    private readonly ImmutableArray<SurveyedMeasurement> _measurements;
    private readonly int _toSpare;
    private readonly SearchSteps _steps;

    private SlipSearch(
        ObservedLine line,
        IReadOnlyList<WeighedQuantity> beside,
        ImmutableArray<SurveyedMeasurement> measurements,
        int toSpare,
        SearchSteps steps)
    {
        _steps = steps;
        _line = line;
        _beside = beside;
        _measurements = measurements;
        _toSpare = toSpare;
    }

    /// <summary>Whether measurements agree so badly that one of them must be wrong.</summary>
    /// <param name="chiSquare">Of all.</param>
    /// <param name="toSpare">Degrees of freedom.</param>
    /// <param name="measurements">All; only asked for where they tell.</param>
    public static bool IsSuspect(double chiSquare, int toSpare, Func<IEnumerable<SurveyedMeasurement>> measurements) =>
        toSpare > 0 && chiSquare > LeastSuspect
            && (chiSquare > ChiSquared.InvCDF(toSpare, Honest) || IsOneUnlikely([.. measurements().Select(one => one.Standardised)]));

    /// <summary>Of very many measurements the largest is large by chance.</summary>
    private static bool IsOneUnlikely(IReadOnlyList<double?> standardised)
    {
        var ofAll = Math.Pow(HonestLargest, 1.0 / standardised.Count);
        var limit = standardised.Count > ManyMeasurements ? Normal.InvCDF(0, 1, (1 + ofAll) / 2) : Unlikely;
        return standardised.Any(one => Math.Abs(one ?? 0) > limit);
    }

    /// <summary>Whether a slip that leaves so much explains what was measured.</summary>
    /// <param name="chiSquare">Of all, once the slip is put right.</param>
    /// <param name="toSpare">Degrees of freedom that are left; where there are none, all must agree almost exactly.</param>
    public static bool Agrees(double chiSquare, int toSpare) =>
        chiSquare <= (toSpare == 0 ? Unlikely : ChiSquared.InvCDF(toSpare, Explained));

    /// <summary>The mistakes that explain it, the likeliest first, and what would tell them apart.</summary>
    /// <param name="line">As it was typed.</param>
    /// <param name="beside">What else was measured.</param>
    /// <param name="measurements">Its figures and then what is beside them.</param>
    /// <param name="toSpare">Degrees of freedom.</param>
    /// <param name="quantities">What could be measured to tell.</param>
    /// <param name="steps">Takes what it needs; where they are used up, what is less likely is not tried.</param>
    public static (ImmutableArray<Slip> Slips, TapedQuantity? Telling) Of(
        ObservedLine line,
        IReadOnlyList<WeighedQuantity> beside,
        ImmutableArray<SurveyedMeasurement> measurements,
        int toSpare,
        IEnumerable<TapedQuantity> quantities,
        SearchSteps steps)
    {
        var search = new SlipSearch(line, beside, measurements, toSpare, steps);
        var explained = search.Explanations();
        var likely = explained.TakeWhile(one => one.Score <= explained[0].Score + TellsApart).Take(MostNamed).ToList();
        return ([.. likely.Select(one => one.Slip)], likely.Count > 1 ? search.Telling(likely, quantities) : null);
    }

    /// <summary>
    /// What looking for the slips of a whole file may cost: half a second or so, natively, on a machine of 2024. Counted, not timed, so
    /// that every machine says the same.
    /// </summary>
    public static SearchSteps StepsOfFile => new(10_000_000);

    private int Figures => _measurements.Length - _beside.Count;

    /// <summary>What it costs to solve the line once, in multiplications of two pairs of numbers or so.</summary>
    private long CostOfOnce => 200 + (Figures * Figures * (1 + (_beside.Count / 144)));

    /// <summary>The best for each measurement, the likeliest first; every one makes all agree.</summary>
    private List<Explanation> Explanations()
    {
        List<Explanation> explained = [];
        var best = double.PositiveInfinity;
        foreach (var suspicion in Suspicions().OrderBy(one => one.Screened).Take(MostTried))
        {
            if (_steps.AreUsedUp || suspicion.Screened > best + TellsApart + ScreenedTooHigh)
            {
                break;
            }

            if (Tried(suspicion) is { } explanation)
            {
                explained.Add(explanation);
                best = Math.Min(best, explanation.Score);
            }
        }

        return
        [
            .. explained.GroupBy(one => one.Slip.Name, StringComparer.Ordinal)
                .Select(same => same.MinBy(one => one.Score)!)
                .OrderBy(one => one.Score),
        ];
    }

    /// <summary>Every mistake that may have been made, the better it would explain the misses the more promising.</summary>
    private IEnumerable<Suspicion> Suspicions()
    {
        if (!_steps.Take(CostOfOnce) || SlipScreen.Around(_line, _line.Typed, _beside) is not { } screen)
        {
            return [];
        }

        var (figures, quantities) = (Figures, _measurements.Length - Figures);
        var checkedFigures = Enumerable.Range(0, figures).Where(IsChecked).ToList();
        return checkedFigures.Where(figure => !_measurements[figure].IsAngle).SelectMany(figure => OfLength(figure, screen))
            .Concat(OfAngles(checkedFigures.Where(figure => _measurements[figure].IsAngle), screen))
            .Concat(checkedFigures.Select(figure => new Suspicion(
                figure, SlipKind.Other, 0, screen.ChiSquareWithoutFigure(figure) + Surprise(SlipKind.Other))))
            .Concat(Enumerable.Range(0, quantities).Where(i => IsChecked(figures + i)).SelectMany(i => OfQuantity(i, screen)));
    }

    private bool IsChecked(int measurement) => _measurements[measurement].Redundancy >= LeastRedundancy;

    private IEnumerable<Suspicion> OfLength(int figure, SlipScreen screen)
    {
        foreach (var (kind, instead) in Misreadings.Of(_line.Figures[figure].Observation.Kind, _measurements[figure].Measured)
            .Concat(_line.OtherFace(figure) is { } other ? [(SlipKind.Face, other)] : []))
        {
            if (_line.PlacesWith(With(figure, instead)) is { } places)
            {
                yield return new(figure, kind, instead, screen.ChiSquareOf(Adjustment.MissesOf(places, _beside)) + Surprise(kind));
            }
        }
    }

    /// <summary>
    /// A rotation or a bend that is quite another one makes another line, on which all slopes are different: each takes a screen of its
    /// own. Where that is too much, only those are screened that leave least without an adjustment.
    /// </summary>
    private IEnumerable<Suspicion> OfAngles(IEnumerable<int> figures, SlipScreen screen)
    {
        var screens = (int)(MostWork / (_beside.Count * Math.Pow(Figures, 2)));
        var suspicions = figures.SelectMany(figure => Misreadings
            .Of(_line.Figures[figure].Observation.Kind, _measurements[figure].Measured)
            .Select(read => new Suspicion(figure, read.Kind, read.Instead, 0))).ToList();
        var likely = suspicions.Count <= screens
            ? suspicions
            : suspicions.OrderBy(one => _line.PlacesWith(With(one.Measurement, one.Instead)) is { } places
                ? screen.Unadjusted(Adjustment.MissesOf(places, _beside)) : double.PositiveInfinity)
                .Take(Math.Max(screens, LeastScreened));
        foreach (var one in likely)
        {
            if (_steps.Take(CostOfOnce) && SlipScreen.Around(_line, With(one.Measurement, one.Instead), _beside) is { } own)
            {
                yield return one with { Screened = own.ChiSquare + Surprise(one.Kind) };
            }
        }
    }

    private double[] With(int figure, double instead)
    {
        double[] typed = [.. _line.Typed];
        typed[figure] = instead;
        return typed;
    }

    private IEnumerable<Suspicion> OfQuantity(int quantity, SlipScreen screen)
    {
        var index = Figures + quantity;
        var (without, read) = screen.ChiSquareOfQuantity(quantity);
        yield return new(index, SlipKind.Other, 0, without + Surprise(SlipKind.Other));
        foreach (var (kind, instead) in Misreadings.OfLength(_measurements[index].Measured))
        {
            var more = (instead - _measurements[index].Measured) / _beside[quantity].Deviation;
            yield return new(index, kind, instead, read(more) + Surprise(kind));
        }
    }

    private Explanation? Tried(Suspicion suspicion)
    {
        var index = suspicion.Measurement;
        var figures = Figures;
        var leftOut = suspicion.Kind == SlipKind.Other;
        double[] typed = [.. _line.Typed];
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
        var adjusted = Adjustment.Of(_line, typed, beside, leftOut && index < figures ? index : -1);
        _steps.Take(CostOfOnce * (adjusted?.Steps ?? 1));
        if (adjusted is not { } tried || !Agrees(tried.ChiSquare, toSpare))
        {
            return null;
        }

        var one = _measurements[index];
        var instead = !leftOut ? suspicion.Instead
            : index < figures ? tried.Values[index]
            : tried.Slopes.At.ValueOf(_beside[index - figures].Quantity);
        if (instead < 0 && _measurements[index].Measured > 0 && !_measurements[index].IsRotation)
        {
            // Neither a length nor a bend is below zero.
            return null;
        }

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

    /// <summary>What would read most differently if one or the other were true; null where a tape cannot tell, as a mirror image.</summary>
    private TapedQuantity? Telling(List<Explanation> likely, IEnumerable<TapedQuantity> quantities)
    {
        var taken = _beside.Select(one => one.Quantity).ToHashSet();
        var (first, second) = (likely[0].Places, likely[1].Places);
        double Differs(TapedQuantity quantity) =>
            Math.Abs(first.ValueOf(quantity) - second.ValueOf(quantity));
        var best = quantities.Where(quantity => !taken.Contains(quantity)).Select(quantity => (TapedQuantity?)quantity)
            .MaxBy(quantity => Differs(quantity!.Value));
        return best is { } telling && Differs(telling) > LeastTelling ? best : null;
    }

    private sealed record Suspicion(int Measurement, SlipKind Kind, double Instead, double Screened);

    private sealed record Explanation(Slip Slip, double Score, Places Places);
}
