using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace BendSheet.Core.Tests.Survey;

/// <summary>Distances as a tape gives them: seeded, so that each run tapes the same lines with the same errors.</summary>
public class TapedNoiseTests
{
    private const int Lines = 200;

    [Fact]
    public void Residuals_are_measured_minus_reconciled_and_pull_no_corner()
    {
        foreach (var (route, taped) in TapedLines(4, 7))
        {
            var fit = Fit(taped, route.Sides);
            var pulls = new Vector3D[fit.Corners.Length];
            foreach (var residual in fit.Residuals)
            {
                var (from, to) = (residual.Measured.From, residual.Measured.To);
                var way = fit.Corners[to] - fit.Corners[from];
                AssertGeometry.Equal(residual.Measured.Distance.Millimetres - way.Norm, residual.Residual.Millimetres, "residual");
                pulls[to] += residual.Residual.Millimetres / way.Norm * way;
                pulls[from] -= residual.Residual.Millimetres / way.Norm * way;
            }

            // Where the sum of squares is least, the residuals are forces in balance.
            Assert.All(pulls, pull => AssertGeometry.Equal(default(Vector3D), pull, "pull"));
            AssertGeometry.Equal(
                Math.Sqrt(fit.Residuals.Average(residual => Math.Pow(residual.Residual.Millimetres, 2))), fit.RootMeanSquare.Millimetres);
        }
    }

    /// <summary>
    /// Six distances more than needed leave six squares of the tape's deviation on average; the deviation of this average is 0.04.
    /// </summary>
    [Fact]
    public void The_squares_left_over_are_those_of_the_distances_to_spare()
    {
        var squares = TapedLines(5, 5)
            .Average(line => Fit(line.Taped, line.Route.Sides).Residuals.Sum(residual => Math.Pow(residual.Residual.Millimetres, 2)));
        Assert.InRange(squares / 6, 0.88, 1.12);
    }

    [Fact]
    public void All_distances_together_come_nearer_to_the_truth_than_the_needed_ones()
    {
        var (needed, all, nearer, lines) = (0.0, 0.0, 0, 0);
        foreach (var (route, taped) in TapedLines(4, 7))
        {
            if (TapedCorners.Solve([.. taped.Where(one => one.To - one.From <= 3)], route.Sides, TapedRoute.At).Fit is not { } minimal)
            {
                continue;
            }

            var (with, without) = (Off(Fit(taped, route.Sides), route), Off(minimal, route));
            needed += without;
            all += with;
            nearer += with < without ? 1 : 0;
            lines++;
        }

        Assert.InRange(lines, Lines * 95 / 100, Lines);
        Assert.InRange(all / needed, 0, 0.6);
        Assert.InRange(nearer, lines * 3 / 4, lines);
    }

    [Fact]
    public void An_honest_tape_is_seldom_suspected()
    {
        var suspected = TapedLines(4, 7).Count(line => TapedCorners.Solve(line.Taped, line.Route.Sides, TapedRoute.At).Findings
            .Any(finding => finding.Rule == TapedRules.DistanceMisfit));
        Assert.InRange(suspected, 0, Lines / 20);
    }

    /// <summary>Each distance of a line in turn, 25 mm too long and 25 mm too short, among honest ones with half a millimetre.</summary>
    [Fact]
    public void A_distance_misread_by_25_mm_is_the_one_to_measure_again()
    {
        var route = new TapedRoute([180, 140, 220, 160, 240, 150, 200], [70, 85, 60, 95, 75, 80], [0, 75, -100, 60, 110, -80]);
        var normal = new Normal(0, 0.5, new MersenneTwister(7, false));
        var honest = route.All().Select(taped => taped with { Distance = Longer(taped, normal.Sample()) }).ToArray();
        for (var i = 0; i < honest.Length; i++)
        {
            foreach (var slip in new[] { 25.0, -25.0 })
            {
                var taped = honest.Select((one, k) => k == i ? one with { Distance = Longer(one, slip) } : one).ToArray();
                var (fit, findings) = TapedCorners.Solve(taped, route.Sides, TapedRoute.At);
                Assert.True(fit is not null, string.Join(Environment.NewLine, findings));
                var finding = Assert.Single(findings);
                Assert.Same(TapedRules.DistanceMisfit, finding.Rule);
                Assert.Equal(Severity.Warning, finding.Severity);
                Assert.Equal(honest[i].At, finding.Position);
                Assert.StartsWith($"distance {honest[i].Name} is ", finding.Message, StringComparison.Ordinal);
                Assert.Contains(
                    slip > 0
                        ? " more than the other distances say"
                        : " less than the other distances say", finding.Message, StringComparison.Ordinal);
                Assert.Equal(honest[i].Name, fit.Worst!.Measured.Name);
            }
        }
    }

    private static IEnumerable<(TapedRoute Route, TapedDistance[] Taped)> TapedLines(int fewest, int most)
    {
        var chance = new MersenneTwister(42, false);
        var normal = new Normal(0, 1, chance);
        double Between(double least, double greatest) => least + ((greatest - least) * chance.NextDouble());
        for (var line = 0; line < Lines; line++)
        {
            var bends = fewest + (line % (most - fewest + 1));
            var route = new TapedRoute(
                [.. Enumerable.Range(0, bends + 1).Select(_ => Between(150, 400))],
                [.. Enumerable.Range(0, bends).Select(_ => Between(50, 110))],
                [.. Enumerable.Range(0, bends).Select(i => i == 0 ? 0 : Between(50, 130) * (chance.NextBoolean() ? 1 : -1))]);
            yield return (route, [.. route.All().Select(taped => taped with { Distance = Longer(taped, normal.Sample()) })]);
        }
    }

    private static Length Longer(TapedDistance taped, double millimetres) => taped.Distance + Tests.Lines.Mm(millimetres);

    private static TapedFit Fit(TapedDistance[] taped, TapedSide[] sides) => TapedCorners.Solve(taped, sides, TapedRoute.At).Fit!;

    private static double Off(TapedFit fit, TapedRoute route) =>
        fit.Corners.Zip(route.Points, (found, truth) => found.DistanceTo(truth)).Max();
}
