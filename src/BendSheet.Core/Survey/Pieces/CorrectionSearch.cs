using System.Collections.Immutable;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using MathNet.Numerics.LinearAlgebra;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// Looks for the fewest bends to open, to close or to twist against each other that bring end B of a piece back to its port, and of those
/// for the ones that a tape shows best while they are moved.
/// </summary>
/// <remarks>Least squares on what is off, for sets of one, of two and of three; the best sets of one size are what the next size starts
/// from.</remarks>
internal sealed class CorrectionSearch
{
    /// <summary>Where more than three bends would have to be put right, a new piece is made.</summary>
    private const int MostSteps = 3;

    /// <summary>So many sets of one size are looked at further.</summary>
    private const int Kept = 12;

    private const int Refinements = 5;

    /// <summary>What an angle costs, for each radian, against what is off, in parts of what is wanted: to settle what is open.</summary>
    private const double Cost = 0.02;

    /// <summary>A bend is not opened or closed by more, nor a straight twisted. Common practice, no source.</summary>
    private static readonly double MostBend = 10 * Math.PI / 180;

    /// <summary>
    /// How far a twist may shear the tube's wall, radius · angle / length: a tenth of what the bend beside it has stretched it at least,
    /// r/R being 15 % and more.
    /// </summary>
    private const double MostShear = 0.015;

    private readonly BentPiece _piece;
    private readonly PieceLanding _port;
    private readonly WantedFit _wanted;
    private readonly double _halfWidth;
    private readonly double _tape;
    private readonly bool _atPort;

    private CorrectionSearch(BentPiece piece, PieceLanding port, WantedFit wanted, double halfWidth, double tape, bool atPort) =>
        (_piece, _port, _wanted, _halfWidth, _tape, _atPort) = (piece, port, wanted, halfWidth, tape, atPort);

    /// <summary>The correction; no steps where the piece is near enough as it is, null where nothing brings it there.</summary>
    /// <param name="piece">With its errors.</param>
    /// <param name="errors">What it most probably is.</param>
    /// <param name="port">Where B is to land.</param>
    /// <param name="wanted">How near is near enough.</param>
    /// <param name="outsideDiameter">Of the tube.</param>
    /// <param name="tape">How well a distance is read while a bend is moved: one standard deviation, in millimetres.</param>
    /// <param name="atPort">The piece is offered up while a bend is moved, and the gap at the port is what is read.</param>
    public static Correction? Of(
        BentPiece piece,
        double[] errors,
        PieceLanding port,
        WantedFit wanted,
        Length outsideDiameter,
        double tape,
        bool atPort = false)
    {
        var search = new CorrectionSearch(piece, port, wanted, outsideDiameter.Millimetres / 2, tape, atPort);
        List<Try> tries = [search.Tried([], errors)];
        Try? near = null;
        for (var count = 0; count <= MostSteps; count++)
        {
            if (tries.Where(search.IsGood).Select(one => (Try: one, Sure: search.Sureness(one))).ToList() is { Count: > 0 } good)
            {
                return search.InSteps(good.MinBy(one => one.Sure).Try, errors);
            }

            near ??= tries.Where(search.IsNear).MinBy(one => one.Off);
            tries = [.. tries.OrderBy(one => one.Off).Take(Kept).SelectMany(one => search.Longer(one, errors))
                .DistinctBy(one => string.Join(' ', one.Set), StringComparer.Ordinal)];
        }

        return near is null ? null : search.InSteps(near, errors);
    }

    /// <summary>A set of errors that are changed, and what comes of it.</summary>
    private sealed record Try(ImmutableArray<int> Set, double[] Errors, double Off, double Miss, double Askew);

    private bool IsGood(Try one) => one.Miss <= _wanted.Miss.Millimetres / 3 && one.Askew <= _wanted.Askew.Radians / 2;

    private bool IsNear(Try one) => one.Miss <= _wanted.Miss.Millimetres && one.Askew <= _wanted.Askew.Radians;

    /// <summary>
    /// The mean square of how far off B comes to lie, in mm², where each bend is moved until a tape reads right: what hands and tape make
    /// of it counts for more than how far a bend is moved.
    /// </summary>
    private double Sureness(Try one)
    {
        if (_atPort && Watched(one) is { } watched)
        {
            return (one.Miss * one.Miss) + (_tape * _tape * watched.Variance);
        }

        PieceQuantity[] quantities = [.. PieceChecks.Quantities(_piece.With(one.Errors))];
        var sum = one.Miss * one.Miss;
        foreach (var i in one.Set)
        {
            var most = Slope(one.Errors, i, tried => [.. quantities.Select(_piece.With(tried).ValueOf)]).Max(Math.Abs);
            var moved = Slope(one.Errors, i, tried => Off(tried)[..2]);
            var off = _tape / most * _wanted.Miss.Millimetres;
            sum += NormalEquations.Dot(moved, moved) * off * off;
        }

        return sum;
    }

    private IEnumerable<Try> Longer(Try one, double[] errors)
    {
        for (var i = 0; i < _piece.Errors.Length; i++)
        {
            if (_piece.Errors[i].Kind is PieceErrorKind.Bend or PieceErrorKind.Roll && !one.Set.Contains(i)
                && Solved([.. one.Set.Add(i).Order()], errors) is { } found)
            {
                yield return found;
            }
        }
    }

    /// <summary>The set changed so that B lands best; null where that takes more than hands should do.</summary>
    private Try? Solved(ImmutableArray<int> set, double[] errors)
    {
        var now = (double[])errors.Clone();
        for (var step = 0; step < Refinements; step++)
        {
            var off = Vector<double>.Build.DenseOfArray(Off(now));
            var slopes = Matrix<double>.Build.DenseOfColumnArrays(set.Select(i => Slope(now, i)));
            var changed = Vector<double>.Build.DenseOfEnumerable(set.Select(i => now[i] - errors[i]));
            var normal = slopes.TransposeThisAndMultiply(slopes) + (Cost * Matrix<double>.Build.DenseIdentity(set.Length));
            var by = normal.Cholesky().Solve(-slopes.TransposeThisAndMultiply(off) - (Cost * changed));
            for (var k = 0; k < set.Length; k++)
            {
                now[set[k]] += Math.Clamp(by[k], -MostBend, MostBend);
            }
        }

        // A bend that is closed takes the tube for it from the straight beside it.
        return set.All(i => Math.Abs(now[i] - errors[i]) <= Most(i)) && Array.TrueForAll(_piece.ShapeWith(now).Straights, left => left >= 0)
            ? Tried(set, now)
            : null;
    }

    private double Most(int error) => _piece.Errors[error] switch
    {
        { Kind: PieceErrorKind.Roll, Bend: var bend } =>
            Math.Min(MostBend, MostShear * Math.Max(0, _piece.StraightBefore(bend)) / _halfWidth),
        _ => MostBend,
    };

    private Try Tried(ImmutableArray<int> set, double[] now)
    {
        var landing = PieceLanding.Of(_piece.With(now));
        return new(
            set,
            now,
            landing.OffFrom(_port, _wanted).Sum(part => part * part),
            landing.MissTo(_port),
            landing.AskewTo(_port));
    }

    private double[] Off(double[] errors) => PieceLanding.Of(_piece.With(errors)).OffFrom(_port, _wanted);

    private double[] Slope(double[] errors, int error) => Slope(errors, error, Off);

    private static double[] Slope(double[] errors, int error, Func<double[], double[]> of)
    {
        const double Step = 1e-4;
        var (more, less) = ((double[])errors.Clone(), (double[])errors.Clone());
        more[error] += Step;
        less[error] -= Step;
        return [.. of(more).Zip(of(less), (up, down) => (up - down) / (2 * Step))];
    }

    /// <summary>One after the other, each with what a tape reads when it is done.</summary>
    private Correction InSteps(Try found, double[] errors)
    {
        var steps = ImmutableArray.CreateBuilder<CorrectionStep>();
        var now = (double[])errors.Clone();
        PieceQuantity[] quantities = [.. PieceChecks.Quantities(_piece.With(now))];
        var watched = _atPort ? Watched(found) : null;
        foreach (var (place, i) in (watched?.Order.Select(k => found.Set[k]) ?? found.Set).Index())
        {
            var before = _piece.With(now);
            now[i] = found.Errors[i];
            var slopes = Slope(now, i, tried => [.. quantities.Select(_piece.With(tried).ValueOf)]);
            var best = Enumerable.Range(0, quantities.Length).OrderByDescending(k => Math.Abs(slopes[k])).Select(k => (int?)k)
                .FirstOrDefault(k => Math.Abs(slopes[k!.Value]) * Math.PI / 180 >= LeastShown);
            steps.Add(new(
                _piece.Errors[i].Bend,
                _piece.Errors[i].Kind == PieceErrorKind.Roll,
                Angle.FromRadians(found.Errors[i] - errors[i]),
                best is { } k ? quantities[k] : null,
                Read(best, _piece.With(now)),
                Read(best, _piece.With(now)) - Read(best, before))
            {
                Gap = watched is null ? null : Gap(watched.IsAside[place], PieceLanding.Of(_piece.With(now))),
            });
        }

        Length Read(int? quantity, PiecePlaces places) =>
            Length.FromMillimetres(quantity is { } one ? places.ValueOf(quantities[one]) : 0);

        return new(steps.ToImmutable(), Length.FromMillimetres(found.Miss), Angle.FromRadians(found.Askew)) { Errors = found.Errors };
    }

    private PortGap Gap(bool isAside, PieceLanding landing) =>
        new(isAside, Length.FromMillimetres(isAside ? _port.Aside - landing.Aside : _port.Ahead - landing.Ahead));

    /// <summary>What to look at while the piece is offered up; null where the port does not show one of the moves.</summary>
    private PortWatch? Watched(Try one) => PortWatch.Of(
        [.. one.Set.Select(i => Slope(one.Errors, i, tried =>
        {
            var landing = PieceLanding.Of(_piece.With(tried));
            return [landing.Ahead, landing.Aside];
        }))],
        LeastShown * 180 / Math.PI);

    /// <summary>A tape shows a degree where it moves by so much, in millimetres.</summary>
    private const double LeastShown = 0.5;
}
