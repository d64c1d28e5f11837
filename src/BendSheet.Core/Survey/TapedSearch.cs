using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>A placing of all corners.</summary>
/// <param name="Points">From end A to end B, in the frame of <see cref="TapedFit"/>.</param>
/// <param name="Misfit">The weighed sum of the squares of what the distances miss, in mm².</param>
internal sealed record Placing(Vector3D[] Points, double Misfit)
{
    /// <summary>The root of the sum of squares, in mm.</summary>
    public double Norm => Math.Sqrt(Misfit);

    /// <summary>The placing that misses the distances by the least sum of squares near this one.</summary>
    /// <param name="spans">The distances.</param>
    /// <param name="allowed">Where the points may go; null is anywhere.</param>
    /// <param name="leastGain">It goes no further where a step promises less than this part of the misfit.</param>
    public Placing Refined(
        IReadOnlyList<TapedSpan> spans, Predicate<Vector3D[]>? allowed = null, double leastGain = Reconciliation.LastDigits)
    {
        var points = Points.ToArray();
        var misfit = Reconciliation.Refine(points, spans, Reconciliation.FreeIn(points.Length), allowed, leastGain);
        return new(CornerChain.InFrame(points), misfit);
    }
}

/// <summary>
/// Finds the corners one after the other. Each lies where leg, bend and rotation put it, on either side where that is open; distances to
/// corners further back then tell which side it was. The better placings are kept until the end, because the distance that tells may come
/// later.
/// </summary>
internal sealed class TapedSearch
{
    /// <summary>Placings kept at each corner: enough for four sides in a row that only a later distance tells.</summary>
    private const int Kept = 16;

    /// <summary>Placings refined at the end.</summary>
    private const int Refined = 4;

    private readonly DistanceTable _table;
    private readonly double[] _legs;
    private readonly double[] _turns;

    /// <param name="table">The distances, none missing.</param>
    /// <param name="turns">By corner number, in radians.</param>
    /// <param name="rotations">One for each bend but the first.</param>
    public TapedSearch(DistanceTable table, double[] turns, ImmutableArray<SidedRotation> rotations)
    {
        _table = table;
        _legs = [.. Enumerable.Range(1, table.Last).Select(corner => table.Between(corner - 1, corner)!.Distance.Millimetres)];
        _turns = turns;
        Rotations = rotations;
        var overTwo = rotations.ToDictionary(rotation => rotation.Bend + 1, rotation => rotation.Size.Over);
        Spans = [.. table.All.Select(taped => table.SpanOf(taped.To - taped.From == 3 ? overTwo[taped.To] : taped))];
    }

    /// <summary>One for each bend but the first.</summary>
    public ImmutableArray<SidedRotation> Rotations { get; }

    /// <summary>All distances to meet: as taped, but flat where a bend is taken to be flat.</summary>
    public ImmutableArray<TapedSpan> Spans { get; }

    /// <summary>The same search with the known side of one rotation the other way.</summary>
    public TapedSearch WithOther(SidedRotation rotation) =>
        new(_table, _turns, Rotations.Replace(rotation, rotation with { Sign = -rotation.Sign }));

    /// <summary>Whether points keep to every side that is known.</summary>
    public bool KeepsSides(Vector3D[] points) => Rotations.All(rotation => rotation.KeptBy(points));

    /// <summary>Whether the placing meets every distance as exactly as doubles can; then there is nothing to reconcile.</summary>
    public bool Meets(Vector3D[] points) =>
        Spans.All(span => Math.Abs(points[span.From].DistanceTo(points[span.To]) - span.Millimetres) < Tolerances.SamePoint.Millimetres);

    /// <summary>The placing that fits best.</summary>
    public Placing Best()
    {
        var start = new Vector3D[_legs.Length + 1];
        CornerChain.Begin(start, _legs[0], _turns.Length > 1 ? _turns[1] : 0, _legs.Length > 1 ? _legs[1] : 0);
        List<Placing> kept = [new(start, 0)];
        foreach (var rotation in Rotations)
        {
            var next = rotation.Bend + 1;
            var back = Spans.Where(span => span.To == next).ToArray();
            int[] signs = rotation.Sign == 0 ? [1, -1] : [rotation.Sign];
            kept =
            [
                .. kept.SelectMany(placing => signs.Select(sign => With(placing, rotation, sign, back))).OrderBy(placing => placing.Misfit)
                .Take(Kept),
            ];
        }

        var whole = kept.Select(placing => placing with { Misfit = Reconciliation.Misfit(placing.Points, Spans) })
            .OrderBy(placing => placing.Misfit);
        var first = whole.First();
        return Meets(first.Points)
            ? first
            : whole.Take(Refined).Select(placing => placing.Refined(Spans, KeepsSides))
                .MinBy(placing => placing.Misfit)!;
    }

    private Placing With(Placing placing, SidedRotation rotation, int sign, TapedSpan[] back)
    {
        var next = rotation.Bend + 1;
        var points = placing.Points.ToArray();
        points[next] = CornerChain.Next(points.AsSpan(next - 3, 3), sign * rotation.Size.Size, _turns[rotation.Bend], _legs[rotation.Bend]);

        // On its own side: what would fit on the other one is tried by itself.
        var misfit = back.Length > 3
            ? Reconciliation.Refine(
                points, back, [3 * next, (3 * next) + 1, (3 * next) + 2], tried => CornerChain.SideOf(tried, rotation.Bend) * sign >= 0)
            : 0;
        return new(points, placing.Misfit + misfit);
    }
}
