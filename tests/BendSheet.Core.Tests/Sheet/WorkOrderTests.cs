using System.Collections.Immutable;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Sheet;

public class WorkOrderTests
{
    // To cut: 411.932 of straight, 1.01 times 41.145 of arc, 2.5 for the flares and 25 to trim: 480.989 mm, 18.937 in.
    [Fact]
    public void From_the_roll_to_the_finished_line_in_this_order() => Assert.Equal(
        [
            "Cut square to 481.0 mm (18 15/16 in); deburr inside and out; blow out (eye protection); letter the ends A and B.",
            "Before flaring, mark every bend from the cut end of A; draw a line along the tube as the dial's zero.",
            "End A: slide on nut (17 mm), then sleeve (9 mm), seat sides towards A; make the 37° single flare (takes 0.5 mm), 2.4 mm standing out of the bar, 7.42 to 7.67 mm across (MS33584, from memory: check against your fitting's standard).",
            "Make bends 1 to 3 in that order, from A: A side held, B side swept, mark at the tool's start-of-bend line, its offset being in the marks already; tick the table.",
            "Lay it beside the wire: the same hand, not its mirror image, which no distance shows. Then measure to the corners.",
            "Offer the line up on the car; trim end B (25.0 mm (31/32+ in) was left on), leaving 2 mm for the flare. Cut square, deburr, blow out.",
            "End B: slide on tube nut (20 mm), seat side towards B; make the 45° double flare (takes 2 mm) by the tool's gauge, on a practice piece first: 6.7 to 7.1 mm across (SAE J533, second-hand: check against your fitting's standard).",
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
            var step = order[Only(order, $"End {end}: slide on nut (17 mm), then sleeve (9 mm)")];
            Assert.True(step.IndexOf("slide on", StringComparison.Ordinal) < step.IndexOf($"make the {words}", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Everything_is_marked_before_the_first_flare_and_end_B_is_left_for_last()
    {
        var order = FullLine.Content(FullLine.Template).Order;
        Assert.True(Only(order, "Before flaring, mark every bend") < Only(order, "End A: slide on"));
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
        var order = FullLine.Content(template with { From = template.From with { Fitting = FullLine.An3 with { Flare = Flare.None } } }).Order;
        Assert.EndsWith("seat sides towards A.", order[Only(order, "End A:")], StringComparison.Ordinal);
    }

    [Fact]
    public void A_straight_tube_is_not_bent()
    {
        var order = FullLine.Content(Lines.Of(Lines.Bender(10), [321])).Order;
        Assert.Equal(2, order.Length);
        Assert.StartsWith("Cut square to 321.0 mm", order[0], StringComparison.Ordinal);
        Assert.StartsWith("Measure A to finished B.", order[1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_single_bend_is_not_numbered() => Assert.Contains(
        FullLine.Content(Lines.Of(Lines.Bender(10), [50, 50], (0, 90))).Order,
        step => step.StartsWith(
            "Make the bend: A side held, B side swept, mark at the tool's start-of-bend line; tick the table.",
            StringComparison.Ordinal));

    [Fact]
    public void Each_tool_has_its_own_line()
    {
        var big = Lines.Bender(20, "big") with { Mark = MarkPlace.Middle };
        var template = FullLine.Template.WithBends(bend => bend.Turn == Lines.Deg(90) ? bend with { Bender = big } : bend);
        var step = Assert.Single(FullLine.Content(template).Order, step => step.StartsWith("Make bends", StringComparison.Ordinal));
        Assert.Contains(
            "mark at the tool's own line (hand: start-of-bend line, its offset being in the marks already; big: middle-of-bend line)",
            step,
            StringComparison.Ordinal);
    }

    private static int Only(ImmutableArray<string> order, string start) =>
        order.IndexOf(Assert.Single(order, step => step.StartsWith(start, StringComparison.Ordinal)));
}
