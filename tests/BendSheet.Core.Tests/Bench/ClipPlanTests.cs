using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench;

/// <summary>Tube of 4.7625 mm, which is also what a clip keeps clear of a bend, an end or hardware with its whole width of 12.</summary>
public class ClipPlanTests
{
    private const double Od = 4.7625;

    /// <summary>From a clip's middle.</summary>
    private const double Beside = 6 + Od;

    private static readonly Fitting An3 = new(
        "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));

    [Fact]
    public void Nobody_asked_for_clips() => Assert.Null(CarPlan.Line(Straight(1000)).Clips);

    [Theory]
    [InlineData(1000, 300, 60, new[] { 60, 353.3333333333333, 646.6666666666666, 940 })] // 880 between first and last: two more, even
    [InlineData(1000, 300, 150, new[] { 150, 383.3333333333333, 616.6666666666666, 850 })]
    [InlineData(600, 300, 150, new[] { 150.0, 450 })] // exactly as far apart as they may be
    [InlineData(300, 300, 150, new[] { 150.0 })]
    [InlineData(200, 300, 150, new[] { 100.0 })] // too short for two
    [InlineData(1000, 300, 0, new[] { Beside, 255.38125, 500, 744.61875, 1000 - Beside })]
    public void On_a_straight_line_they_are_few_and_even(double length, double every, double fromEnds, double[] places) =>
        Are(places, Plan(Straight(length), every, fromEnds));

    [Fact]
    public void Hardware_is_slid_back_without_meeting_one() => Are(
        [26 + Beside, 500, 1000 - 26 - Beside],
        Plan(Straight(1000) with { From = new(null, An3, Length.Zero), To = new(null, An3, Length.Zero) }, 500, 10));

    [Fact]
    public void None_stands_on_a_bend_or_nearer_to_it_than_the_tube_is_thick()
    {
        // Even would be 300, where the bend of radius 20 is: 289.3 to 320.7. The other way is shorter.
        var quarter = Math.PI / 2 * 20;
        var before = 300 - 10;
        var line = Flat(20, [before, 600 - before - quarter], 90);
        Are([100, before - Beside, 500], Plan(line, 250, 100));
    }

    [Fact]
    public void They_are_marked_on_the_straight_tube_from_the_cut_end_of_A()
    {
        var stretched = Lines.Bender(20) with { ArcFactor = 1.1 };
        var line = (Flat(20, [200, 500], 90) with { From = new(null, An3, Length.Zero) }).OnTool(stretched);
        var clips = Plan(line, 400, 50).Clips;
        var arc = Math.PI / 2 * 20;
        AssertGeometry.Equal(50, clips[0].AlongTube.Millimetres);
        AssertGeometry.Equal(50.5, clips[0].Mark.Millimetres);
        AssertGeometry.Equal(650 + arc, clips[^1].AlongTube.Millimetres);
        AssertGeometry.Equal(650.5 + (1.1 * arc), clips[^1].Mark.Millimetres);
        AssertGeometry.Equal(line.Plan().Bends[0].End.Millimetres + 450, clips[^1].Mark.Millimetres);
    }

    [Fact]
    public void The_end_that_is_cut_off_later_is_not_clipped() =>
        Are([50, 450], Plan(Straight(500) with { To = LineEnd.Unknown with { Trim = Lines.Mm(100) } }, 400, 50));

    [Fact]
    public void Beside_a_way_that_is_too_long_they_stand_as_near_as_can_be()
    {
        // An arc of 628 between two straights: one clip each side of it, and the rest even.
        var line = Flat(400, [500, 500], 90);
        var plan = Plan(line, 300, 100);
        var arc = Math.PI / 2 * 400;
        Are([100, (100 + 500 - Beside) / 2, 500 - Beside, 500 + arc + Beside, (500 + arc + Beside + 900 + arc) / 2, 900 + arc], plan);
        var gap = Assert.Single(plan.TooLong);
        AssertGeometry.Equal(500 - Beside, gap.From.Millimetres);
        AssertGeometry.Equal(arc + (2 * Beside), gap.Length.Millimetres);
    }

    [Fact]
    public void A_clip_beside_a_coil_does_as_the_first_one_where_it_stands_hardly_further_from_the_end() =>
        Are([120 - Beside, 120 + (Math.PI / 2 * 400) + Beside, 120 + (Math.PI / 2 * 400) + 300], Plan(Flat(400, [120, 400], 90), 300, 100));

    [Fact]
    public void It_does_as_the_last_one_too_at_the_other_end()
    {
        var arc = Math.PI / 2 * 400;
        Are([100, 400 - Beside, 400 + arc + Beside], Plan(Flat(400, [400, 120], 90), 300, 100));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Where_it_stands_clearly_further_from_the_end_both_stay(bool reversed)
    {
        // 100 and 195 from the end: nearer to each other than they may be apart, and further than half of what the end is given.
        var arc = Math.PI / 2 * 400;
        double[] places = [100, 200 - Beside, 200 + arc + Beside, 200 + arc + 300];
        var length = 200 + arc + 400;
        Are(
            reversed ? [.. places.Reverse().Select(place => length - place)] : places,
            Plan(Flat(400, reversed ? [400, 200] : [200, 400], 90), 300, 100));
    }

    [Fact]
    public void One_near_the_middle_does_not_do_where_it_leaves_an_end_hanging()
    {
        // 620 long: the middle, 310, lies in an arc of 500 that begins at 60. A clip at either side of it is nearer than `every` to its
        // end.
        var radius = 500 / (Math.PI / 2);
        Are([60 - Beside, 560 + Beside], Plan(Flat(radius, [60, 60], 90), 320, 320));
    }

    [Fact]
    public void A_mirrored_line_takes_the_clips_of_the_other_one()
    {
        var line = Flat(20, [300, 600], 90) with { Clips = Wish(300, 60) };
        Assert.Equal(CarPlan.Line(line).Clips!.Clips.AsEnumerable(), CarPlan.Line(line.Mirrored()).Clips!.Clips);
    }

    [Fact]
    public void A_wide_clip_keeps_its_whole_body_clear_of_a_bend()
    {
        var line = Flat(20, [100, 500], 90);
        Are([50, 500 - 50 + 131.41592653589794], Plan(line, 600, 50));
        var wide = CarPlan.Line(line with { Clips = Wish(600, 95) with { Width = Lines.Mm(20) } }).Clips!;
        Assert.Equal(100 - 10 - Od, wide.Clips[0].AlongTube.Millimetres, 6);
    }

    /// <summary>Straights of 330, 100 and 270: even would be 381.4.</summary>
    [Theory]
    [InlineData(500, 411.41592653589794)]
    [InlineData(340, 400)]
    [InlineData(330, 390)]
    public void One_that_is_alone_on_its_straight_stands_as_near_to_its_middle_as_every_allows(double every, double place) =>
        Are([60, place, 640 + (Math.PI * 20)], Plan(Flat(20, [330, 100, 270], 90, 90), every, 60));

    /// <summary>A straight between two long arcs, hardly longer than a clip needs: a clip at each end of it would be one clip.</summary>
    [Fact]
    public void Two_never_lie_on_one_another()
    {
        var arc = Math.PI / 2 * 400;
        Are(
            [100, 200 - Beside, 200 + arc + 15, 230 + (2 * arc) + Beside, 330 + (2 * arc)],
            Plan(Flat(400, [200, 30, 200], 90, 90), 600, 100));
    }

    /// <summary>
    /// Random lines. Everything asked for holds; between the first clip and the last one of a run without a way that is too long no placing
    /// on a grid of half a millimetre needs fewer; and one that is alone on its straight cannot stand nearer to its middle.
    /// </summary>
    [Fact]
    public void On_any_line_they_stand_free_no_fewer_would_do_and_none_could_be_nearer_to_its_middle()
    {
        var random = new Random(20240304);
        var (several, offMiddle) = (0, 0);
        for (var sample = 0; sample < 400; sample++)
        {
            var bends = random.Next(0, 7);
            double[] straights = [.. Enumerable.Range(0, bends + 1).Select(_ => 300 * random.NextDouble() * random.NextDouble())];
            double[] turns = [.. Enumerable.Range(0, bends).Select(_ => 20 + (130 * random.NextDouble()))];
            var every = 80 + (250 * random.NextDouble());
            var fromEnds = every * random.NextDouble();
            var line = Flat(sample % 4 == 0 ? 90 : 20, straights, turns);
            var plan = Plan(line, every, fromEnds);
            var what =
                $"sample {sample}: every {every}, from ends {fromEnds}, straights {string.Join(' ', straights)}, turns "
                    + $"{string.Join(' ', turns)}";

            var free = Free(straights, turns, sample % 4 == 0 ? 90 : 20);
            var places = plan.Clips.Select(clip => clip.AlongTube.Millimetres).ToList();
            Assert.Equal(free.Count == 0, places.Count == 0);
            Assert.All(
                places,
                place => Assert.True(
                    free.Exists(range => range.From <= place + 1e-6 && place <= range.To + 1e-6), $"{what}: {place} is not free"));
            Assert.All(plan.TooLong, gap => Assert.True(
                gap.Length.Millimetres > every
                    && !free.Exists(range => range.From < gap.To.Millimetres - 12 && range.To > gap.From.Millimetres + 12),
                $"{what}: there is room from {gap.From} to {gap.To}"));
            for (var i = 1; i < places.Count; i++)
            {
                Assert.True(places[i] > places[i - 1], what);
            }

            foreach (var (from, to) in Runs(places, every).Where(run => run.To > run.From))
            {
                several++;
                Assert.True(to - from + 1 <= FewestOnGrid(free, places[from], places[to], every), $"{what}: fewer would do");
            }

            for (var i = 1; i + 1 < places.Count; i++)
            {
                offMiddle += CouldBeNearerToMiddle(free, places, i, every, what);
            }
        }

        Assert.True(several > 100 && offMiddle > 20, $"{several} runs, {offMiddle} off the middle");
    }

    /// <summary>From each too long way to the next one.</summary>
    private static IEnumerable<(int From, int To)> Runs(List<double> places, double every)
    {
        var from = 0;
        for (var i = 0; i < places.Count; i++)
        {
            if (i + 1 == places.Count || places[i + 1] - places[i] > every + 1e-6)
            {
                yield return (from, i);
                from = i + 1;
            }
        }
    }

    /// <returns>1 where it stands off the middle of its straight because something keeps it there.</returns>
    private static int CouldBeNearerToMiddle(
        List<(double From, double To)> free, List<double> places, int i, double every, string what)
    {
        var on = places.ConvertAll(place => free.FindIndex(range => range.From <= place + 1e-6 && place <= range.To + 1e-6));
        var (from, to) = free[on[i]];
        var off = ((from + to) / 2) - places[i];
        if (on[i - 1] == on[i] || on[i + 1] == on[i] || Math.Abs(off) < 1e-3)
        {
            return 0;
        }

        // The way behind it becomes longer than it may be, or than it was.
        var behind = off > 0 ? places[i] - places[i - 1] : places[i + 1] - places[i];
        Assert.True(behind + 1e-3 > every, $"{what}: the clip at {places[i]} could be nearer to its middle");
        return 1;
    }

    /// <summary>By counting on from each point of a grid to all that a clip may be away: how many are needed at the least.</summary>
    private static int FewestOnGrid(List<(double From, double To)> free, double first, double last, double every)
    {
        const double Step = 0.5;
        List<double> grid = [first];
        for (var place = first + Step; place < last; place += Step)
        {
            if (free.Exists(range => range.From <= place && place <= range.To))
            {
                grid.Add(place);
            }
        }

        grid.Add(last);
        var needed = new int[grid.Count];
        needed[0] = 1;
        for (var i = 1; i < grid.Count; i++)
        {
            needed[i] = Enumerable.Range(0, i).Where(j => needed[j] > 0 && grid[i] - grid[j] <= every).Select(j => needed[j] + 1)
                .DefaultIfEmpty(0).Min();
        }

        // A grid may miss a straight just long enough for one clip: then it proves nothing.
        return needed[^1] == 0 ? int.MaxValue : needed[^1];
    }

    private static List<(double From, double To)> Free(double[] straights, double[] turns, double radius)
    {
        var free = new List<(double From, double To)>();
        var along = 0.0;
        for (var i = 0; i < straights.Length; i++)
        {
            if (straights[i] >= 2 * Beside)
            {
                free.Add((along + Beside, along + straights[i] - Beside));
            }

            along += straights[i] + (i < turns.Length ? turns[i] * Math.PI / 180 * radius : 0);
        }

        return free;
    }

    private static void Are(double[] places, ClipPlan plan)
    {
        Assert.Equal(places.Length, plan.Clips.Length);
        Assert.All(places.Zip(plan.Clips), pair => Assert.Equal(pair.First, pair.Second.AlongTube.Millimetres, 6));
    }

    private static ClipPlan Plan(LineTemplate line, double every, double fromEnds) =>
        CarPlan.Line(line with { Clips = Wish(every, fromEnds) }).Clips!;

    private static Clipping Wish(double every, double fromEnds) => new(Lines.Mm(every), Lines.NameAt, Lines.Mm(fromEnds), null);

    private static LineTemplate Straight(double length) => Lines.Of(Lines.Bender(20), [length]);

    /// <summary>Straights as they are left between the bends.</summary>
    private static LineTemplate Flat(double radius, double[] straights, params double[] turns) =>
        Lines.Of(Lines.Bender(radius), straights, [.. turns.Select(turn => (0.0, turn))]) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(radius))
        };
}
