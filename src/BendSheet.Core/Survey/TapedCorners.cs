using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// The corners of a line from nothing but taped distances between them: for places at the car where no protractor fits.
/// </summary>
/// <remarks>
/// Neighbours give the legs, distances over one corner the bends, distances over two the size of the rotations; what was seen gives their
/// sides, or distances over more corners do. Where there are more distances than needed, or they do not quite agree, all of them are
/// reconciled by least squares. The needed ones are always asked for, so that the corners have a place before anything is reconciled.
/// </remarks>
public static class TapedCorners
{
    /// <summary>Finds the corners.</summary>
    /// <param name="distances">In any order, each pair of corners once.</param>
    /// <param name="sides">In any order, each bend once, none for the first.</param>
    /// <param name="at">Where the distances as a whole were typed: findings about what is missing point there.</param>
    /// <param name="tape">One standard deviation of a distance that does not say its own; null where nobody said.</param>
    /// <returns>No corners, but what to measure next or again, where a finding is an error; a fit with all else.</returns>
    public static (TapedFit? Fit, ImmutableArray<Finding> Findings) Solve(
        IReadOnlyList<TapedDistance> distances, IReadOnlyList<TapedSide> sides, SourcePosition at, Length? tape = null)
    {
        var sure = tape ?? MeasuringTolerance.CommonPractice.Tape;
        var solved = ToCorners(distances, sides, at, sure);
        if (solved.Fit is null || distances.All(taped => taped.Back is null))
        {
            return solved;
        }

        // Where the backs lie follows from the shape, and the shape from where the backs lie: in rounds, until both stay.
        for (var round = 0; round < MostRounds && solved.Fit is { } fit; round++)
        {
            var backs = new Places([.. fit.Corners], default, Frame.Default);
            var before = fit.Corners;
            List<TapedDistance> toCorners =
                [.. distances.Select(taped => taped with { Distance = taped.Distance + Deeper(taped, backs) })];
            solved = ToCorners(toCorners, sides, at, sure);
            if (solved.Fit?.Corners.Zip(before, (now, then) => now.DistanceTo(then)).Max() < Tolerances.SamePoint.Millimetres)
            {
                break;
            }
        }

        return (solved.Fit is { } found ? AsTyped(found, distances) : null, solved.Findings);
    }

    private const int MostRounds = 20;

    /// <summary>How much further apart than the backs the corners are.</summary>
    private static Length Deeper(TapedDistance taped, Places places)
    {
        var toCorners = new TapedQuantity(TapedKind.Distance, taped.From, taped.To);
        return Length.FromMillimetres(places.ValueOf(toCorners) - places.ValueOf(toCorners with { Back = taped.Back }));
    }

    /// <summary>The same with the distances as they were typed, to backs where they are.</summary>
    private static TapedFit AsTyped(TapedFit fit, IReadOnlyList<TapedDistance> distances)
    {
        TapedResidual Typed(TapedResidual one)
        {
            var typed = distances.First(taped => taped.At == one.Measured.At);
            return new(one.Measured with { Distance = typed.Distance }, typed.Distance - one.Residual);
        }

        return fit with { Residuals = [.. fit.Residuals.Select(Typed)], Worst = fit.Worst is { } worst ? Typed(worst) : null };
    }

    private static (TapedFit? Fit, ImmutableArray<Finding> Findings) ToCorners(
        IReadOnlyList<TapedDistance> distances, IReadOnlyList<TapedSide> sides, SourcePosition at, Length tape)
    {
        var findings = new List<Finding>();
        if (DistanceTable.Of(distances, tape, at, findings) is not { } table)
        {
            return (null, [.. findings]);
        }

        findings.AddRange(TapedNext.Check(table, at));
        findings.AddRange(TapedSides.Check(table, sides));
        var turns = new double?[table.Last];
        for (var corner = 1; corner < table.Last; corner++)
        {
            turns[corner] = TapedBend.At(corner, table, findings);
        }

        var rotations = Enumerable.Range(2, Math.Max(0, table.Last - 2))
            .Select(bend => TapedRotation.At(bend, turns, table, findings)).OfType<TapedRotation>().ToList();
        if (Stopped(findings))
        {
            return (null, [.. findings]);
        }

        var sided = TapedSides.Rotations(rotations, table, sides, at, findings);
        var search = new TapedSearch(table, [.. turns.Select(turn => turn ?? 0)], sided);
        var best = SidesFromDistances.Settle(search, at, findings);
        if (!double.IsFinite(best.Misfit))
        {
            findings.Add(TapedRules.DistanceMisfit.Error(at, "no shape has these distances: measure all of them again"));
        }

        if (Stopped(findings))
        {
            return (null, [.. findings]);
        }

        return (TapedMisfit.Judged(table, best, search.Spans, at, findings), [.. findings]);
    }

    private static bool Stopped(List<Finding> findings) => findings.Exists(finding => finding.Severity == Severity.Error);
}
