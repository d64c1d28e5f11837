using System.Collections.Immutable;
using BendSheet.Core.Bench;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>Holes along a rail, worked out by hand.</summary>
public class ClipRunTests
{
    [Fact]
    public void Every_hole_counts_from_the_first_one()
    {
        // First and last 60 from the ends of 1000: 880 between them, more than two times 300 and so in three.
        var run = Assert.Single(Runs("[{straight: 1000}]"));
        Assert.Equal((1, 60.0, 5.0), (run.Straight, run.FirstAlongTube.Millimetres, run.Hole!.Value.Millimetres));
        Assert.Equal([0, 293.333, 586.667, 880], run.Holes.Select(hole => Math.Round(hole.Millimetres, 3)));
    }

    [Fact]
    public void A_straight_with_one_clip_needs_no_strip()
    {
        // 200 has one clip, 60 from A; the bend's corner lies 14.3 before the straight of 985.7 begins.
        var run = Assert.Single(Runs("[{straight: 200, bend: 90}, {straight: 1000}]"));
        Assert.Equal(2, run.Straight);
        Assert.True(run.Holes.Length > 3);
        var line = Assert.Single(Plan("[{straight: 200, bend: 90}, {straight: 1000}]").Lines);
        Assert.Equal(
            line.Clips!.Clips.TakeLast(run.Holes.Length).Select(clip => Math.Round(clip.AlongTube.Millimetres, 6)),
            run.Holes.Select(hole => Math.Round((run.FirstAlongTube + hole).Millimetres, 6)));
    }

    [Fact]
    public void A_line_without_clips_has_none() => Assert.Empty(
        ClipRun.Of(Assert.Single(TypedCars.Plan(TypedCars.Top + "lines: {rail: [{straight: 1000}]}\n").Lines)));

    private static ImmutableArray<ClipRun> Runs(string rows) => ClipRun.Of(Assert.Single(Plan(rows).Lines));

    private static Core.Car.CarPlan Plan(string rows) =>
        TypedCars.Plan(TypedCars.Top + $"lines: {{rail: {{clips: {{every: 300, from-ends: 60, hole: 5}}, rows: {rows}}}}}\n");
}
