using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>Rails that lines share, worked out by hand: each line's own holes, moved by what lies between the ends.</summary>
public class ClipRailTests
{
    private const string Clips = "clips: {every: 300, from-ends: 60, hole: 5, rail: left}";

    private const string Second = $"two: {{from: far.out, to: end.in, {Clips}, rows: [{{straight: 1300, bend: 90}}, {{straight: 100}}]}}";

    /// <summary>From an end to a clip's middle at least: half a clip of 12 and the tube's 4.7625, as ClipPlan has it.</summary>
    private const double FromEnd = 6 + 4.7625;

    [Fact]
    public void All_holes_count_from_where_the_line_begins_that_reaches_furthest_back()
    {
        // Both run backwards, the second from 100 mm further back than the first.
        var strip = Assert.Single(Sheets(Car(second: At(1400, 250, "back"), end: At(100, 350)))[0].DrillingStrips);
        var own = OwnHoles();
        Assert.Equal(
            own.Concat(own.Select(place => place + 100)).Order().Select(place => Math.Round(place, 6)),
            strip.Holes.Select(hole => Math.Round(hole.Place.Millimetres, 6)));
        Assert.Equal("one 1, two 1, one 2, two 2", string.Join(", ", strip.Holes.Take(4).SelectMany(hole => hole.Clips)));
        Assert.StartsWith("rail left: one, straight 1, two, straight 1", strip.Name, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_that_runs_the_other_way_is_turned_round()
    {
        // A of the second is 1300 mm from A of the first, and looks at it: its first clip is 1240 from the edge.
        var strip = Assert.Single(Sheets(Car(second: At(200, 250, "forward"), end: At(1500, 350)))[0].DrillingStrips);
        Assert.Equal(
            OwnHoles().Concat(OwnHoles().Select(place => 1300 - place)).Order().Select(place => Math.Round(place, 6)),
            strip.Holes.Select(hole => Math.Round(hole.Place.Millimetres, 6)));
        Assert.Equal("← A of one, B of two", strip.Left);
    }

    [Fact]
    public void The_strip_says_how_far_beside_each_other_the_lines_run()
    {
        // Left 240 and 250, at one height.
        var strip = Assert.Single(Sheets(Car(second: At(1400, 250, "back"), end: At(100, 350)))[0].DrillingStrips);
        Assert.Contains(strip.HowTo, text => text.Contains("two runs 10.0 mm beside one, middle to middle", StringComparison.Ordinal));
        var alone = Sheets(Car(At(1400, 450, "back"), At(100, 550)))[0].DrillingStrips[0];
        Assert.DoesNotContain(alone.HowTo, text => text.Contains("middle to middle", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(11.9, true)]
    [InlineData(12, false)]
    public void Clips_that_would_lie_on_one_another_are_one_midway(double apart, bool shared)
    {
        var strip = Assert.Single(Sheets(Car(second: At(1500 - apart, 250, "back"), end: At(200 - apart, 350)))[0].DrillingStrips);
        var own = OwnHoles();
        Assert.Equal(shared ? own.Count : 2 * own.Count, strip.Holes.Length);
        Assert.Equal(shared ? 60 + (apart / 2) : 60, strip.Holes[0].Place.Millimetres, 6);
        Assert.Equal(shared ? own.Count : 0, strip.HowTo.Count(text => text.Contains("is shared", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_hole_that_several_lines_share_stands_where_all_of_them_may_have_a_clip()
    {
        // Each first clip as near to its own end as it may be, and the second line begins 5 mm further on: its clip cannot come nearer.
        var strip = Assert.Single(Sheets(NearEnds(Car(second: At(1495, 250, "back"), end: At(195, 350))))[0].DrillingStrips);
        Assert.Equal(5 + FromEnd, strip.Holes[0].Place.Millimetres, 6);
        Assert.Contains(
            FormattableString.Invariant($"Hole 1 is shared: the clips one 1 at 11.0 and two 1 at 16.0 fall together, so one clip at 16.0 ")
                + "holds all of them, clear of their bends and nuts.",
            strip.HowTo,
            StringComparer.Ordinal);
    }

    [Fact]
    public void One_clip_for_several_lines_is_as_wide_as_the_widest_of_theirs()
    {
        // The first line has clips of 12 mm, the second, which begins 5 mm nearer to the edge, of 20: one of 20 must clear the first's nut.
        var line = Second.Replace("every: 300", "every: 300, width: 20", StringComparison.Ordinal);
        var strip = Assert.Single(Sheets(NearEnds(Car(At(1505, 250, "back"), At(205, 350), line)))[0].DrillingStrips);
        Assert.Equal("one 1, two 1", string.Join(", ", strip.Holes[0].Clips.Order(StringComparer.Ordinal)));
        Assert.Equal(20, strip.Holes[0].Width.Millimetres, 6);
        Assert.Equal(5 + 10 + 4.7625, strip.Holes[0].Place.Millimetres, 6);
    }

    [Fact]
    public void Where_no_place_is_free_for_one_clip_there_are_two_holes_and_the_strip_says_so()
    {
        // The lines run away from each other, and beside their ends overlap so little that each clip stands beyond the other's.
        var begins = 1500 - ((2 * FromEnd) - 8);
        var strip = Assert.Single(
            Sheets(NearEnds(Car(At(begins, 250, "forward"), At(begins + 1300, 350))))[0].DrillingStrips);
        var (first, second) = strip.Holes.Zip(strip.Holes.Skip(1)).Single(two => two.Second.Place - two.First.Place < two.First.Width);
        Assert.Equal(8, (second.Place - first.Place).Millimetres, 6);
        Assert.Contains(
            FormattableString.Invariant($"Holes {first.Number} and {second.Number} are 8.0 mm apart, so their clips would lie on one ")
                + "another: offer them up before you drill.",
            strip.HowTo,
            StringComparer.Ordinal);
    }

    [Fact]
    public void The_rails_of_the_car_are_those_of_the_strips()
    {
        var plan = TypedCars.Plan(Car(second: At(1400, 250, "back"), end: At(100, 350)));
        var rail = Assert.Single(plan.Rails);
        Assert.Equal("left", rail.Name);
        Assert.Equal(
            Assert.Single(plan.SheetsToPrint(plan.Measured.Notation).First().DrillingStrips).Holes.Select(hole => hole.Place),
            rail.Holes.Select(hole => hole.Place));
        Assert.Empty(TypedCars.Plan(Car(At(1400, 450, "back"), At(100, 550))).Rails);
    }

    [Fact]
    public void The_strip_goes_with_the_first_line_that_is_printed_and_has_the_holes_of_all()
    {
        var car = Car(second: At(1400, 250, "back"), end: At(100, 350));
        Assert.Empty(Sheets(car)[1].DrillingStrips);
        var alone = CarPlan.Of(TypedCars.Plan(car).Measured, ["two"]);
        var strip = Assert.Single(Assert.Single(alone.SheetsToPrint(alone.Measured.Notation)).DrillingStrips);
        Assert.Equal(2 * OwnHoles().Count, strip.Holes.Length);
    }

    [Theory]
    [InlineData("two: {Clips, rows: [{straight: 1300, bend: 90}, {straight: 100}]}", "it is not known where this line lies on the car")]
    [InlineData("two: {from: far.out, to: end.in, Clips, rows: [{straight: 1300, bend: 90}, {straight: 100}]}", "runs beside this line")]
    public void Lines_of_which_it_is_not_known_have_a_strip_each_that_says_so(string line, string why)
    {
        var sheets = Sheets(Car(At(1400, 450, "back"), At(100, 550), line.Replace("Clips", Clips, StringComparison.Ordinal)));
        Assert.Equal([60, 60], sheets.Select(sheet => Assert.Single(sheet.DrillingStrips).Holes[0].Place.Millimetres));
        Assert.Contains(sheets[1].DrillingStrips[0].HowTo, text => text.Contains(why, StringComparison.Ordinal));
        Assert.Contains(
            sheets[0].DrillingStrips[0].HowTo, text => text.StartsWith("Rail left is shared with two", StringComparison.Ordinal));
    }

    [Fact]
    public void A_mirrored_line_lies_on_the_other_side() => Assert.Null(
        TypedCars.Plan(Car(At(1400, 250, "back"), At(100, 350), "other: {mirror: one}")).Lines[1].Template.Clips!.Rail);

    /// <summary>From end A.</summary>
    private static List<double> OwnHoles()
    {
        var run = ClipRun.Of(TypedCars.Plan(Car(At(1400, 250, "back"), At(100, 350))).Lines[0])[0];
        return [.. run.Holes.Select(hole => (run.FirstAlongTube + hole).Millimetres)];
    }

    private static ImmutableArray<SheetContent> Sheets(string text)
    {
        var plan = TypedCars.Plan(text);
        return [.. plan.SheetsToPrint(plan.Measured.Notation)];
    }

    private static string NearEnds(string car) => car.Replace("from-ends: 60", "from-ends: 5", StringComparison.Ordinal);

    private static string At(double forward, double left, string? faces = null) =>
        FormattableString.Invariant($"{{at: {{forward: {forward}, left: {left}, up: 600}}{(faces is null ? "" : $", faces: {faces}")}}}");

    private static string Car(string second, string end, string line = Second) => TypedCars.Top + """
        wanted: {miss: 1 m, askew: 90}
        clearance: 0
        parts:
          near: {kind: other, ports: {out: {at: {forward: 1500, left: 240, up: 600}, faces: back}}}
          far: {kind: other, ports: {out: SECOND}}
          tee: {kind: other, ports: {in: {at: {forward: 200, left: 340, up: 600}}}}
          end: {kind: other, ports: {in: END}}
        lines:
          one: {from: near.out, to: tee.in, CLIPS, rows: [{straight: 1300, bend: 90}, {straight: 100}]}
          LINE

        """
        .Replace("SECOND", second, StringComparison.Ordinal)
        .Replace("END", end, StringComparison.Ordinal)
        .Replace("CLIPS", Clips, StringComparison.Ordinal)
        .Replace("LINE", line, StringComparison.Ordinal);
}
