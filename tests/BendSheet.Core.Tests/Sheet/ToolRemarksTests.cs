using System.Collections.Immutable;
using BendSheet.Core.Workshop;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Sheet;

public class ToolRemarksTests
{
    private static readonly BenderTest Square = Piece(90, 200, 106, 105.5, MeasuredTo.Outside, 4.7625) with { Pull = Lines.Deg(93) };

    [Fact]
    public void A_tool_without_tests_says_so() => Assert.Equal(
        "Pull angles are not corrected for springback (no test bends): check each angle before the next bend. The developed length "
            + "assumes arc factor 1 (no test piece).",
        Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths))));

    [Fact]
    public void A_typed_arc_factor_is_told_from_an_assumed_one() => Assert.EndsWith(
        "The developed length has arc factor 1 as typed.",
        Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths) with { ArcFactor = 1 })), StringComparison.Ordinal);

    [Fact]
    public void One_test_says_what_it_was_and_which_bends_lie_far_from_it() => Assert.Equal(
        "Pull angles are corrected for springback by 1 test bend at 90°; bends 1, 2 lie outside them: check their angles. The developed "
            + "length has arc factor 0.973 from 1 test piece.",
        Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths) with { Tests = [Square] })));

    [Fact]
    public void Several_tests_say_how_far_they_reach()
    {
        Assert.StartsWith(
            "Pull angles are corrected for springback by 3 test bends from 45° to 90°; bend 2 lies outside them: check its angle. ",
            Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths) with { Tests = [Square, Pulled(47, 45), Pulled(62, 60)] })),
            StringComparison.Ordinal);
        Assert.StartsWith(
            "Pull angles are corrected for springback by 2 test bends from 30° to 90°. ",
            Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths) with { Tests = [Square, Pulled(31, 30)] })), StringComparison.Ordinal);
    }

    [Fact]
    public void The_pull_in_the_table_is_the_corrected_one()
    {
        var sheet = FullLine.Content(FullLine.Template.OnTool(FullLine.Hand with { Tests = [Pulled(93, 90), Pulled(47.5, 45)] }));
        var rows = sheet.Rows.OrderBy(row => row.Number).ToList();
        Assert.Equal(["47.5°", "32.3°", "93°"], rows.Select(row => row.Pull), StringComparer.Ordinal);
        Assert.Equal(["45°", "30°", "90°"], rows.Select(row => row.Bend), StringComparer.Ordinal);
    }

    [Fact]
    public void Tools_that_are_known_alike_are_spoken_of_together_and_others_by_name()
    {
        var hand = Lines.Bender(Lines.NineSixteenths) with { Tests = [Square] };
        Assert.Single(Remarks(Lines.Bender(Lines.NineSixteenths), Lines.Bender(20, "big")));
        var remarks = Remarks(hand, Lines.Bender(20, "big"));
        Assert.Equal(2, remarks.Length);
        Assert.StartsWith("hand: Pull angles are corrected", remarks[0], StringComparison.Ordinal);
        Assert.StartsWith("big: Pull angles are not corrected", remarks[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Tests_of_another_tube_say_nothing_about_this_line() => Assert.StartsWith(
        "Pull angles are not corrected",
        Assert.Single(
            Remarks(Lines.Bender(Lines.NineSixteenths) with { Tests = [Square with { Tube = Lines.Tube with { Name = "other" } }] })),
        StringComparison.Ordinal);

    private static ImmutableArray<string> Remarks(Bender bender, Bender? ofTheLast = null)
    {
        var line = FullLine.Template.OnTool(bender) with { Tolerance = null };
        return FullLine.Content(
            ofTheLast is null
                ? line
                : line.WithBends(bend => bend.Turn == Lines.Deg(90) ? bend with { Bender = ofTheLast } : bend)).ReadFirst;
    }
}
