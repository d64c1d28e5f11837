using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using CsCheck;

namespace BendSheet.Core.Tests.Survey;

/// <summary>
/// The search keeps the better placings from corner to corner. Here it is held against every way to choose the sides, each of them tried by
/// itself: with one side for each rotation there is nothing to keep and nothing to rank.
/// </summary>
public class TapedSearchTests
{
    private const double Tape = 1.5;

    [Fact]
    public void No_other_choice_of_sides_fits_better() => Taped.Sample(
        sample =>
        {
            var (search, turns, table) = Search(sample.Route, sample.Noise);
            if (search is null || !search.Rotations.Any(rotation => rotation.Sign == 0))
            {
                return;
            }

            var least = Choices(search.Rotations).Min(sides => new TapedSearch(table!, turns, sides).Best().Misfit);
            Assert.InRange(search.Best().Misfit, 0, (least * (1 + 1e-6)) + 1e-9);
        },
        iter: 400);

    private static Gen<(TapedRoute Route, double[] Noise)> Taped { get; } =
        from route in TapedRoute.ClearOf(3, 8)
        from noise in Gen.Double[-Tape, Tape].Array[(route.Legs.Length + 1) * (route.Legs.Length + 1)]
        select (route, noise);

    private static (TapedSearch? Search, double[] Turns, DistanceTable? Table) Search(TapedRoute route, double[] noise)
    {
        var points = route.Points;
        var findings = new List<Finding>();
        TapedDistance[] distances =
        [
            .. TapedRoute.Distances(points).Select(one => TapedRoute.Taped(
                one.From, one.To, one.Distance.Millimetres + noise[(one.From * points.Length) + one.To])),
        ];
        if (DistanceTable.Of(distances, Lines.Mm(1), TapedRoute.At, findings) is not { } table)
        {
            return default;
        }

        var turns = new double?[table.Last];
        for (var corner = 1; corner < table.Last; corner++)
        {
            turns[corner] = TapedBend.At(corner, table, findings);
        }

        List<TapedRotation> rotations =
        [
            .. Enumerable.Range(2, Math.Max(0, table.Last - 2)).Select(bend => TapedRotation.At(bend, turns, table, findings))
                .OfType<TapedRotation>(),
        ];
        var sided = TapedSides.Rotations(rotations, table, [.. route.Sides.Take(1)], TapedRoute.At, findings);
        double[] known = [.. turns.Select(turn => turn ?? 0)];
        return findings.Exists(finding => finding.Severity == Severity.Error)
            ? default : (new(table, known, sided), known, table);
    }

    private static IEnumerable<ImmutableArray<SidedRotation>> Choices(ImmutableArray<SidedRotation> rotations)
    {
        int[] open = [.. Enumerable.Range(0, rotations.Length).Where(i => rotations[i].Sign == 0)];
        for (var choice = 0; choice < 1 << open.Length; choice++)
        {
            var sides = rotations;
            for (var i = 0; i < open.Length; i++)
            {
                sides = sides.SetItem(open[i], sides[open[i]] with { Sign = (choice >> i) % 2 == 0 ? 1 : -1 });
            }

            yield return sides;
        }
    }
}
