using System.Collections.Immutable;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Survey.Pieces;

/// <summary>
/// Which distances on a finished piece say most of how it came out: between the faces of its ends and the backs of its bends, so that
/// every bend and every roll shows.
/// </summary>
/// <remarks>
/// Of all distances the one is taken that makes the angles surest, weighed by how hands scatter, then the next one after it, as in
/// <see cref="NextMeasurements"/>.
/// </remarks>
internal sealed class PieceChecks
{
    /// <summary>An angle is sure enough where this part of its scatter is left.</summary>
    private const double SureEnough = 0.5;

    /// <summary>So many more distances than bends tell mistakes apart nearly as well as any number of them.</summary>
    private const int More = 3;

    /// <summary>Where this part of the variance is left, nothing was said.</summary>
    private const double Unsure = 0.8;

    /// <summary>A line of more bends is measured stretch by stretch.</summary>
    private const int MostSearched = 12;

    /// <summary>Over more bends a tape says little that shorter ones do not, and a long line would have too many.</summary>
    private const int LongestSpan = 6;

    private readonly BentPiece _piece;
    private readonly List<Candidate> _candidates;
    private readonly double[] _variances;

    private PieceChecks(BentPiece piece, List<Candidate> candidates)
    {
        (_piece, _candidates) = (piece, candidates);
        _variances = [.. piece.Errors.Select(error => error.Scatter * error.Scatter)];
    }

    /// <summary>The distances to measure, in the order of their places.</summary>
    /// <param name="piece">As the sheet has it.</param>
    /// <param name="tape">One standard deviation, in millimetres.</param>
    public static ImmutableArray<PieceQuantity> Of(BentPiece piece, double tape)
    {
        var places = piece.Nominal;
        if (piece.Bends > MostSearched)
        {
            return [.. Near(places)];
        }

        PieceQuantity[] quantities = [.. Quantities(places)];
        var motions = piece.Motions(places);
        var candidates = quantities.Select(one =>
        {
            double[] slope = [.. motions.Select(motion => motion.Of(one, places) / tape)];
            return new Candidate(
                one, slope, [.. slope.Select((part, error) => part * piece.Errors[error].Scatter * piece.Errors[error].Scatter)]);
        }).ToList();
        var checks = new PieceChecks(piece, candidates);
        PieceQuantity[] chosen = [.. checks.Chosen().OrderBy(one => (one.From, one.To))];
        return [.. chosen, .. checks.Unseen()];
    }

    /// <summary>Every distance that a tape can be held to.</summary>
    public static IEnumerable<PieceQuantity> Quantities(PiecePlaces places)
    {
        for (var from = 0; from < places.Touched.Length; from++)
        {
            for (var to = from + 1; to < places.Touched.Length; to++)
            {
                var isWhole = from == 0 && to == places.Touched.Length - 1;
                if ((to - from <= LongestSpan || isWhole) && places.Touched[from] is not null && places.Touched[to] is not null)
                {
                    yield return new(PieceKind.Distance, from, to);
                }
            }
        }
    }

    /// <summary>Of a line of many bends: over one bend, which says its angle, and over two, which says the roll between them.</summary>
    private static IEnumerable<PieceQuantity> Near(PiecePlaces places)
    {
        int[] there = [.. Enumerable.Range(0, places.Touched.Length).Where(i => places.Touched[i] is not null)];
        for (var i = 0; i < there.Length; i++)
        {
            foreach (var to in new[] { i + 2, i + 3 }.Where(to => to < there.Length))
            {
                yield return new(PieceKind.Distance, there[i], there[to]);
            }
        }
    }

    private IEnumerable<PieceQuantity> Chosen()
    {
        if (_candidates.Find(one => one.Quantity.From == 0 && one.Quantity.To == _piece.Bends + 1) is { } whole)
        {
            // What everybody wants to know first.
            yield return Take(whole);
        }

        var most = _piece.Bends + More;
        for (var count = 1; count < most && _candidates.Count > 0 && Enumerable.Range(0, _variances.Length).Any(IsUnsure); count++)
        {
            var best = _candidates.MaxBy(Gain)!;
            if (Gain(best) < 0.01)
            {
                yield break;
            }

            yield return Take(best);
        }
    }

    private PieceQuantity Take(Candidate best)
    {
        _candidates.Remove(best);
        for (var i = 0; i < _variances.Length; i++)
        {
            _variances[i] -= best.Force[i] * best.Force[i] / (1 + best.Variance);
        }

        _candidates.ForEach(one => one.Follow(best));
        return best.Quantity;
    }

    /// <summary>Rolls that no tape shows, since nothing lies aside of them to first order: in a line that is flat.</summary>
    private IEnumerable<PieceQuantity> Unseen() => _piece.Errors.Index()
        .Where(one => one.Item.Kind == PieceErrorKind.Roll
            && _variances[one.Index] > Unsure * one.Item.Scatter * one.Item.Scatter)
        .Select(one => new PieceQuantity(PieceKind.Roll, 0, one.Item.Bend));

    private bool IsAngle(int error) => _piece.Errors[error].Kind is PieceErrorKind.Bend or PieceErrorKind.Roll;

    private bool IsUnsure(int error)
    {
        var scatter = SureEnough * _piece.Errors[error].Scatter;
        return IsAngle(error) && _variances[error] > scatter * scatter;
    }

    /// <summary>What a distance takes from the variances of the angles that are not sure yet, in parts of their scatter.</summary>
    private double Gain(Candidate one)
    {
        var sum = 0.0;
        for (var i = 0; i < _variances.Length; i++)
        {
            if (IsUnsure(i))
            {
                var part = one.Force[i] / _piece.Errors[i].Scatter;
                sum += part * part;
            }
        }

        return sum / (1 + one.Variance);
    }

    /// <summary>A distance that could be measured, all in its standard deviations.</summary>
    private sealed class Candidate(PieceQuantity quantity, double[] slope, double[] force)
    {
        public PieceQuantity Quantity => quantity;

        /// <summary>The covariance of the errors times the slope.</summary>
        public double[] Force => force;

        public double Variance => NormalEquations.Dot(slope, force);

        /// <summary>After another one has been measured.</summary>
        public void Follow(Candidate taken)
        {
            var part = NormalEquations.Dot(slope, taken.Force) / (1 + taken.Variance);
            for (var i = 0; i < force.Length; i++)
            {
                force[i] -= part * taken.Force[i];
            }
        }
    }
}
