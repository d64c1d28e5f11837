using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench.Rules;

public class NoPlaceForClipTests
{
    private static readonly SourcePosition EveryAt = new("test.yaml", 9, 20);

    [Fact]
    public void A_way_without_a_straight_that_is_longer_than_every_is_told_with_its_place() => OneFinding.Is(
        Line(300, 400, [500, 500]),
        Severity.Warning,
        NoPlaceForClip.Rule,
        EveryAt,
        // The quarter of a circle of 400, and half a clip's width of 12 and the tube's diameter at each end of it.
        "line front-left goes 649.9 mm (25.585 in) without a clip, from 489.2 mm (19.261 in) to 1139.1 mm (44.846 in) along the tube "
        + "from A, where `every` allows 300.0 mm (11.811 in): "
        + "leave a straight of at least 21.6 mm (0.848 in) there, or hold it in another way");

    [Fact]
    public void Where_no_straight_is_long_enough_for_one_that_is_told_once() => OneFinding.Is(
        Line(300, 400, [9, 9]),
        Severity.Warning,
        NoPlaceForClip.Rule,
        EveryAt,
        "line front-left has no place for a clip: leave a straight of at least 21.6 mm (0.848 in) between bends, ends and hardware, or "
            + "say `clips: none` in this line");

    [Fact]
    public void A_bend_at_the_end_that_leaves_it_hanging_is_told_too()
    {
        var finding = OneFinding.Of(Line(300, 400, [9, 500]));
        Assert.StartsWith(
            "line front-left goes 648.1 mm (25.516 in) without a clip, from 0.0 mm", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_clips_than_anybody_fits_are_a_slip()
    {
        var finding = OneFinding.Of(Line(20, 20, [10_000, 11_000]));
        Assert.Same(NoPlaceForClip.Rule, finding.Rule);
        Assert.Contains("more than 1000 clips", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_with_room_enough_is_silent() => OneFinding.None(Line(300, 20, [500, 500]));

    private static LineTemplate Line(double every, double radius, double[] straights) =>
        Lines.Of(Lines.Bender(radius), straights, (0, 90)) with
        {
            Habit = MeasuredTo.Straight,
            Wire = new(null, Lines.Mm(radius)),
            Clips = new(Lines.Mm(every), EveryAt, Lines.Mm(every / 2), null),
        };
}
