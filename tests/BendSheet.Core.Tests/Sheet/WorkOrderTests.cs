using System.Collections.Immutable;
using BendSheet.Core.Fittings;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Sheet;

public class WorkOrderTests
{
    // To cut: 411.932 of straight, 1.01 times 41.145 of arc, 2.5 for the flares and 25 to trim: 480.989 mm, 18.937 in.
    [Fact]
    public void From_the_roll_to_the_finished_line_in_this_order() => Assert.Equal(
        [
            "Straighten the tube. Cut it square to 481.0 mm (18 15/16 in). Deburr inside and out, at most half the wall. Blow out (eye "
                + "protection). Letter the ends A and B.",
            "End A: slide on nut (17 mm), then sleeve (9 mm), threaded end, coned end towards A; make the 37° "
                + "single flare (uses up 0.5 mm) "
                + "by the tool's own stop; practise until it is 7.42 to 7.67 mm across (MS33584, from memory: check "
                + "your fitting's standard).",
            "Mark every bend from the flare face of A. Pen a straight line along the whole tube: at the first bend it faces the former. "
                + "Tape the hardware back to its flare.",
            "Make bends 3 to 1 in that order: hold the A side, sweep the B side (240 mm clear). Mark at the tool's start-of-bend line, "
                + "whose offset the marks allow for already.",
            "Hold it against the wire. Make sure it is not the mirror image: measurements will not show that. Then check it with a "
                + "stretched tape: a number is the back (outermost point) of that bend.",
            "Offer the line up on the car; trim end B (25.0 mm (31/32+ in) was left on), leaving 2 mm for the "
                + "flare. Cut square, deburr, "
                + "blow out.",
            "End B: slide on tube nut (20 mm), threaded end towards B; make the 45° double flare (uses up 2 mm) "
                + "by the tool's gauge, on a "
                + "practice piece first: 6.7 to 7.1 mm across (SAE J533, second-hand: check your fitting's standard).",
            "Measure A to finished B. Blow the line through, look at both seats, and cap the ends until it is fitted.",
        ],
        FullLine.Content(FullLine.Template).Order,
        StringComparer.Ordinal);

    [Theory]
    [InlineData(Flare.Single37, "37° single flare")]
    [InlineData(Flare.Single45, "45° single flare")]
    [InlineData(Flare.Double45, "45° double flare")]
    [InlineData(Flare.Bubble, "bubble flare")]
    public void Hardware_is_slid_on_before_its_flare_is_made_at_either_end(Flare flare, string words)
    {
        var template = FullLine.Template;
        var fitting = FullLine.An3 with { Flare = flare };
        var order = FullLine.Content(template with
        {
            From = template.From with { Fitting = fitting },
            To = template.To with { Fitting = fitting },
        }).Order;
        foreach (var end in new[] { "A", "B" })
        {
            // The sizes stand at the end that is finished first.
            var pieces = end is "A" ? "nut (17 mm), then sleeve (9 mm)" : "nut, then sleeve";
            var step = order[Only(order, $"End {end}: slide on {pieces}, threaded end, coned end towards {end}")];
            Assert.True(step.IndexOf("slide on", StringComparison.Ordinal) < step.IndexOf($"make the {words}", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void End_A_is_flared_before_the_marks_that_count_from_its_face_and_end_B_is_left_for_last()
    {
        var order = FullLine.Content(FullLine.Template).Order;
        Assert.True(Only(order, "End A: slide on") < Only(order, "Mark every bend from the flare face of A"));
        Assert.True(Only(order, "Make bends") < Only(order, "Offer the line up"));
        Assert.True(Only(order, "Offer the line up") < Only(order, "End B: slide on"));
    }

    [Fact]
    public void Plain_ends_and_no_trim_leave_out_their_steps()
    {
        var order = FullLine.Content(FullLine.Template with { From = LineEnd.Unknown, To = LineEnd.Unknown }).Order;
        Assert.DoesNotContain(order, step => step.Contains("slide on", StringComparison.Ordinal));
        Assert.DoesNotContain(order, step => step.Contains("make the", StringComparison.Ordinal));
        Assert.DoesNotContain(order, step => step.Contains("trim", StringComparison.Ordinal));
        Assert.Equal(5, order.Length);
    }

    [Fact]
    public void Hardware_on_a_plain_end_waits_for_no_flare()
    {
        var template = FullLine.Template;
        var order = FullLine.Content(
            template with { From = template.From with { Fitting = FullLine.An3 with { Flare = Flare.None } } }).Order;
        Assert.EndsWith("coned end towards A.", order[Only(order, "End A:")], StringComparison.Ordinal);
    }

    [Fact]
    public void A_straight_tube_is_not_bent()
    {
        var order = FullLine.Content(Lines.Of(Lines.Bender(10), [321])).Order;
        Assert.Equal(2, order.Length);
        Assert.StartsWith("Straighten the tube. Cut it square to 321.0 mm", order[0], StringComparison.Ordinal);
        Assert.StartsWith("Measure A to finished B.", order[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_bend_is_not_numbered() => Assert.Contains(
        FullLine.Content(Lines.Of(Lines.Bender(10), [50, 50], (0, 90))).Order,
        step => step.StartsWith(
            "Make the bend: hold the A side, sweep the B side (60 mm clear). Mark at the tool's start-of-bend line.",
            StringComparison.Ordinal));

    [Fact]
    public void Each_tool_has_its_own_line()
    {
        var big = Lines.Bender(20, "big") with { Mark = MarkPlace.Middle };
        var template = FullLine.Template.WithBends(bend => bend.Turn == Lines.Deg(90) ? bend with { Bender = big } : bend);
        var step = Assert.Single(FullLine.Content(template).Order, step => step.StartsWith("Make bends", StringComparison.Ordinal));
        Assert.Contains(
            "Mark at the tool's own line (big: middle-of-bend line; hand: start-of-bend line, whose offset the marks allow for already)",
            step,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_turn_round_is_a_step_of_its_own_between_the_bends()
    {
        var tool = Lines.Bender(10) with { Grip = Lines.Mm(20), Follow = Lines.Mm(5) };
        var order = FullLine.Content(Lines.Of(tool, [16, 300, 16], (0, 90), (90, 90))).Order;
        var turn = Only(
            order, "Flip the tube end for end: the side at the former stays at the former. Hold the A side; the dial still reads right.");
        Assert.StartsWith("Make bend 1: hold the B side", order[turn - 1], StringComparison.Ordinal);
        Assert.StartsWith("Make bend 2: hold the A side", order[turn + 1], StringComparison.Ordinal);
    }

    [Fact]
    public void Bends_from_the_middle_outwards_are_named_one_by_one()
    {
        var tight = Lines.Bender(10, "tight") with { Grip = Lines.Mm(12), Follow = Lines.Mm(12) };
        var line = Lines.Of(Lines.Bender(10), [200, 28, 28, 200], (0, 90), (90, 90), (90, 90));
        var route = Core.Templates.Route.Of(line.Route.Legs, line.Route.Bends.SetItem(1, line.Route.Bends[1] with { Bender = tight }));
        var order = FullLine.Content(line with { Route = route }).Order;
        Assert.Contains(order, step => step.StartsWith("Make bends 2, 3 and 1 in that order", StringComparison.Ordinal));
    }

    [Fact]
    public void Marks_count_from_the_cut_end_where_A_is_flared_last()
    {
        var tool = FullLine.Hand with { Grip = Lines.Mm(100), Follow = Lines.Mm(100), Offset = Lines.Mm(0) };
        var line = FullLine.Template.OnTool(tool);
        var order = FullLine.Content(Lines.Of(tool, [120, 200], (0, 90)) with { From = line.From }).Order;
        Assert.True(
            Only(order, "Mark every bend from the cut end of A. Pen a straight line along the whole tube") < Only(
                order, "End A: slide on"));
    }

    private static int Only(ImmutableArray<string> order, string start) =>
        order.IndexOf(Assert.Single(order, step => step.StartsWith(start, StringComparison.Ordinal)));

    [Fact]
    public void A_mirrored_line_is_held_against_the_wire_of_the_other_as_its_mirror_image()
    {
        var mirrored = FullLine.Template.Mirrored() with { WireOf = "front-left", MirrorsWire = true };
        Assert.Contains(
            FullLine.Content(mirrored).Order,
            step => step.StartsWith(
                "Hold it against the wire of front-left: it must be the mirror image of it. Then check it", StringComparison.Ordinal));
        Assert.Contains(
            FullLine.Content(FullLine.Template with { WireOf = "front-left" }).Order,
            step => step.StartsWith(
                "Hold it against the wire of front-left. Make sure it is not the mirror image: measurements will not show that.",
                StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_without_a_wire_is_checked_on_the_car() => Assert.Contains(
        FullLine.Content(FullLine.Template with { HasWire = false, WireOf = "front-left", MirrorsWire = true }).Order,
        step => step.StartsWith(
            "Check on the car that it is not the mirror image: measurements will not show that. Then check it", StringComparison.Ordinal));

    [Fact]
    public void A_line_on_the_tool_is_called_by_its_name()
    {
        var step = Assert.Single(
            FullLine.Content(FullLine.Template.OnTool(FullLine.Hand with { Line = "L" })).Order,
            step => step.StartsWith("Make bends", StringComparison.Ordinal));
        Assert.Contains("Mark at the tool's line L, whose offset the marks allow for already", step, StringComparison.Ordinal);
    }
}
