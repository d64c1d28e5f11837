using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>The words of an offset or a saddle are what a person can change, and what the finding names does fit.</summary>
public class InnerLegTooShortTests
{
    [Fact]
    public void The_slope_of_an_offset_is_made_longer_by_its_height_or_its_bend()
    {
        OneFinding.Is(
            OffsetBy(8, 45),
            Severity.Error,
            LegTooShort.Rule,
            Lines.TurnAt(0),
            "the slope of this offset (leg 2) is 1.2 mm (0.044 in) too short for its two bends (45° and 45°): they need 12.5 mm (0.490 "
            + "in) and the leg is 11.3 mm (0.445 in) corner to corner; "
            + "type `offset` 8.8 mm (0.346 in) or more, or `bend` 42.8° or less, or use a bender of at most 13.6 mm (0.537 in) radius");
        OneFinding.None(OffsetBy(8.8, 45));
        OneFinding.None(OffsetBy(8, 42.8));
        Assert.Single(CarPlan.Line(OffsetBy(8, 42.9)).Findings);
    }

    [Fact]
    public void An_offset_by_its_run_is_made_longer_by_the_run()
    {
        var message = OneFinding.Of(OffsetOver(8, 6)).Message;
        var run = OneFinding.MmAfter("type `run`", message);
        Assert.DoesNotContain("`bend`", message, StringComparison.Ordinal);
        OneFinding.None(OffsetOver(8, run));
        Assert.Single(CarPlan.Line(OffsetOver(8, run - 0.1)).Findings);
    }

    [Fact]
    public void The_two_slopes_of_a_saddle_are_one_finding()
    {
        var message = OneFinding.Of(ThreeBends(8, 45)).Message;
        Assert.StartsWith("a slope of this saddle (leg 2) is ", message, StringComparison.Ordinal);
        OneFinding.None(ThreeBends(OneFinding.MmAfter("type `saddle`", message), 45));
    }

    [Fact]
    public void A_saddle_of_three_bends_by_its_width_is_made_wider()
    {
        var line = ThreeBendsOver(8, 20);
        var width = OneFinding.MmAfter("type `width`", OneFinding.Of(line).Message);
        OneFinding.None(ThreeBendsOver(8, width));
        Assert.Single(CarPlan.Line(ThreeBendsOver(8, width - 0.1)).Findings);
    }

    [Fact]
    public void The_flat_top_of_a_saddle_is_made_wider()
    {
        var message = OneFinding.Of(FourBends(30, 5, 45)).Message;
        Assert.StartsWith("the flat top of this saddle (leg 3) is ", message, StringComparison.Ordinal);
        OneFinding.None(FourBends(30, OneFinding.MmAfter("type `width`", message), 45));
        Assert.Contains(", or `bend` 18.9° or less", message, StringComparison.Ordinal);
        OneFinding.None(FourBends(30, 5, 18.9));
    }

    [Fact]
    public void A_template_that_is_used_backwards_keeps_its_words()
    {
        var line = OffsetBy(8, 45);
        Assert.StartsWith(
            "the slope of this offset",
            OneFinding.Of(line with { Route = line.Route.Reversed().Mirrored() }).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_tool_needs_room_between_the_bends_the_words_are_named_as_well()
    {
        var line = OffsetBy(9, 45, Lines.Bender(15) with { Grip = Lines.Mm(10), Follow = Lines.Mm(10) });
        Assert.Contains(
            " further apart (a larger `offset` or a smaller `bend` does that), or use",
            OneFinding.Of(line).Message,
            StringComparison.Ordinal);
    }

    private static LineTemplate OffsetBy(double height, double bend, Core.Workshop.Bender? bender = null) => Line(
        bender, straight => Offset.Rows(Lines.Mm(height), First(Lines.Deg(bend), bender), straight, Lines.TurnAt(0)));

    private static LineTemplate OffsetOver(double height, double run) => Line(
        null,
        straight => Offset.Rows(
            Lines.Mm(height), First(Offset.BendOver(Lines.Mm(height), Lines.Mm(run))), straight, Lines.TurnAt(0), fromRun: true));

    private static LineTemplate ThreeBends(double height, double bend) => Line(
        null, straight => Saddle.ThreeBends(Lines.Mm(height), First(Lines.Deg(bend)), straight, Lines.TurnAt(0)));

    private static LineTemplate ThreeBendsOver(double height, double width) => Line(
        null,
        straight => Saddle.ThreeBends(
            Lines.Mm(height), First(Offset.BendOver(Lines.Mm(height), Lines.Mm(width / 2))), straight, Lines.TurnAt(0), fromWidth: true));

    private static LineTemplate FourBends(double height, double top, double bend) => Line(
        null, straight => Saddle.FourBends(Lines.Mm(height), Lines.Mm(top), First(Lines.Deg(bend)), straight, Lines.TurnAt(0)));

    private static Bend First(Angle turn, Core.Workshop.Bender? bender = null) =>
        new(turn, Angle.Zero, bender ?? Lines.Bender(15), null, Lines.TurnAt(0));

    private static LineTemplate Line(Core.Workshop.Bender? bender, Func<Row, IEnumerable<Row>> rows) => Lines.OfRows(
        bender ?? Lines.Bender(15),
        [.. rows(new(Lines.Mm(100), Lines.StraightAt(0), null)), new(Lines.Mm(100), Lines.StraightAt(1), null)]);
}
