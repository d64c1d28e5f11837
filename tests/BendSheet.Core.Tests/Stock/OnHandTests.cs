using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;

namespace BendSheet.Core.Tests.Stock;

public class OnHandTests
{
    private static readonly ImmutableArray<ShoppingItem> List =
    [
        new("nut", string.Empty, "an3, 17 mm", 8, ["a"]),
        new("nut", string.Empty, "inverted, 20 mm", 4, ["b"]),
        new("sleeve", string.Empty, "an3, 9 mm", 8, ["a"]),
        new("brake tee", string.Empty, "3/8-24 inverted", 1, ["c"]),
    ];

    /// <summary>As the plumbing of a car is listed.</summary>
    private static readonly ImmutableArray<ShoppingItem> Parts =
    [
        new("master-cylinder", "2 × 3/8-24 flare 37", string.Empty, 1, ["a"]),
        new("tee", "3 × 3/8-24 flare 37", string.Empty, 2, ["b"]),
        new("bulkhead", "2 × 3/8-24 flare 37", string.Empty, 3, ["c"]),
        new("bulkhead", "3/8-24 inverted 45, 3/8-24 flare 37", string.Empty, 1, ["d"]),
        new("hose", "350.0 mm, 3/8-24 flare 37 to M10x1 banjo", string.Empty, 2, ["e"]),
        new("hose", "400.0 mm, 3/8-24 flare 37 to M10x1 banjo", string.Empty, 2, ["f"]),
        new("sealing washer for banjo M10x1", string.Empty, string.Empty, 8, ["g"]),
        new("clip", string.Empty, "for 3/16 in tube, hole 5.5 mm", 3, ["h"]),
        new("clip", string.Empty, "for 6 mm tube, hole 5.5 mm", 3, ["i"]),
    ];

    [Theory]
    [InlineData("tee", 1)]
    [InlineData("tees", 1)]
    [InlineData("flare tee", 1)]
    [InlineData("Master cylinder", 0)]
    [InlineData("master-cylinder", 0)]
    [InlineData("inverted bulkhead", 3)]
    [InlineData("bulkhead 2 x 3/8-24 flare 37", 2)]
    [InlineData("bulkhead, 3/8-24 inverted 45, 3/8-24 flare 37", 3)]
    [InlineData("hose 400.0", 5)]
    [InlineData("washers", 6)]
    [InlineData("sealing washer", 6)]
    public void A_short_name_that_fits_one_thing_means_it(string typed, int item)
    {
        var list = OnHand.Subtract(Parts, [], [new(typed, 1, Stocked.At)]);
        Assert.Empty(list.Findings);
        Assert.Equal(item, Assert.Single(Enumerable.Range(0, Parts.Length), i => list.Items[i].Have == 1));
    }

    [Theory]
    [InlineData("bulkhead", "`bulkhead` in `have` may be several things on the list, so none is taken off: write `bulkhead 2 x 3/8-24 "
        + "flare 37` or `bulkhead inverted`")]
    [InlineData("hoses", "`hoses` in `have` may be several things on the list, so none is taken off: write `hose 350.0 mm` or `hose "
        + "400.0 mm`")]
    [InlineData("clips", "`clips` in `have` may be several things on the list, so none is taken off: write `clip 3/16 in` or `clip 6 mm`")]
    [InlineData("inverted", "`inverted` in `have` does not say what sort of thing it is, so none is taken off: write `bulkhead inverted`")]
    public void What_to_type_instead_is_said_and_does_mean_one_thing(string typed, string message)
    {
        var finding = Assert.Single(OnHand.Subtract(Parts, [], [new(typed, 1, Stocked.At)]).Findings);
        Assert.Equal((OnHand.Unclear, Severity.Warning, message), (finding.Rule, finding.Severity, finding.Message));
        Assert.All(finding.Message.Split(": write ")[1].Split(" or ").Select(choice => choice.Trim('`')), choice => Assert.Single(
            OnHand.Subtract(Parts, [], [new(choice, 1, Stocked.At)]).Items, item => item.Have == 1));
    }

    [Fact]
    public void Of_many_choices_a_few_are_named()
    {
        ImmutableArray<ShoppingItem> many =
        [
            .. Enumerable.Range(1, 9)
            .Select(i => new ShoppingItem("nut", string.Empty, FormattableString.Invariant($"kind{i}, 17 mm"), 2, ["a"])),
        ];
        Assert.EndsWith(
            "write `nut kind1` or `nut kind2` or `nut kind3` or `nut kind4`, or the name of one of 5 more as the list prints it",
            Assert.Single(OnHand.Subtract(many, [], [new("nut", 1, Stocked.At)]).Findings).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_on_the_list_is_told_what_is_in_short() => Assert.Equal(
        "`olive` in `have` is not on the list, which has `master-cylinder`, `tee`, `bulkhead`, `hose`, `sealing washer for banjo M10x1`, "
            + "`clip`",
        Assert.Single(OnHand.Subtract(Parts, [], [new("olive", 1, Stocked.At)]).Findings).Message);

    [Theory]
    [InlineData("3/8-24 nut", "`3/8-24 nut` in `have` is not on the list in these words: write `nut an3` or `nut inverted` if it is what "
        + "is meant")]
    [InlineData("M10 tee", "`M10 tee` in `have` is not on the list in these words: write `brake tee` if it is what is meant")]
    [InlineData("nut invert", "`nut invert` in `have` is not on the list in these words: write `nut inverted` or `nut an3` if it is what "
        + "is meant")]
    public void What_has_another_detail_on_the_list_is_told_how_it_is_written_there(string typed, string message)
    {
        var list = Subtract(typed);
        Assert.All(list.Items, item => Assert.Equal(0, item.Have));
        var finding = Assert.Single(list.Findings);
        Assert.Equal((OnHand.NotNeeded, Severity.Note, message), (finding.Rule, finding.Severity, finding.Message));
    }

    [Fact]
    public void A_metric_thread_without_its_pitch_is_told_the_whole_thread() => Assert.Equal(
        "`m10 tee` in `have` is not on the list in these words: write `tee M10x1` or `tee 3/8-24` if it is what is meant",
        Assert.Single(
            OnHand.Subtract(
                [Parts[1], new("tee", "3 × M10x1 bubble", string.Empty, 1, ["z"])],
                [],
                [new("m10 tee", 1, Stocked.At)]).Findings).Message);

    [Theory]
    [InlineData("tube")]
    [InlineData("tubes")]
    [InlineData("6 mm tube")]
    public void Tube_belongs_in_the_stock(string typed)
    {
        var finding = Assert.Single(OnHand.Subtract(Parts, [], [new(typed, 3, Stocked.At)]).Findings);
        Assert.Equal((OnHand.NotNeeded, Severity.Note), (finding.Rule, finding.Severity));
        Assert.Equal(
            $"`{typed}` in `have` takes nothing off: type tube that is there in `stock`, such as `stock: [{{length: 25 ft, left: 5 m}}]`",
            finding.Message);
    }

    [Fact]
    public void What_is_written_exactly_as_on_the_list_goes_before_what_is_written_nearly_so()
    {
        ImmutableArray<ShoppingItem> list =
        [
            new("nut", string.Empty, "an-3, 17 mm", 8, ["a"]),
            new("nut", string.Empty, "an3, 17 mm", 8, ["b"]),
        ];
        Assert.Equal([0, 3], OnHand.Subtract(list, [], [new("nut an3", 3, Stocked.At)]).Items.Select(item => item.Have));
        Assert.Same(OnHand.Unclear, Assert.Single(OnHand.Subtract(list, [], [new("a-n3 nut", 3, Stocked.At)]).Findings).Rule);
    }

    [Theory]
    [InlineData("an-3 nut", "3 0 0 0")]
    [InlineData("nuts an3 17mm", "3 0 0 0")]
    [InlineData("nut 20MM", "0 3 0 0")]
    [InlineData("sleeve", "0 0 3 0")]
    [InlineData("sleeves", "0 0 3 0")]
    [InlineData("Sleeve", "0 0 3 0")]
    [InlineData("an3 nut", "3 0 0 0")]
    [InlineData("inverted nuts", "0 3 0 0")]
    [InlineData("nut 20 mm", "0 3 0 0")]
    [InlineData("brake tee", "0 0 0 1")]
    [InlineData("tee", "0 0 0 1")]
    public void Is_taken_off_the_thing_that_has_all_its_words(string typed, string have)
    {
        var list = Subtract(typed);
        Assert.Equal(have, string.Join(' ', list.Items.Select(item => item.Have)));
        Assert.Empty(list.Findings);
    }

    [Fact]
    public void A_name_that_two_things_answer_to_is_taken_off_neither()
    {
        var list = Subtract("nut");
        Assert.All(list.Items, item => Assert.Equal(0, item.Have));
        var finding = Assert.Single(list.Findings);
        Assert.Equal((OnHand.Unclear, Severity.Warning, Stocked.At), (finding.Rule, finding.Severity, finding.Position));
        Assert.EndsWith("write `nut an3` or `nut inverted`", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_without_a_sort_of_thing_is_taken_off_nothing()
    {
        var list = Subtract("an3");
        Assert.All(list.Items, item => Assert.Equal(0, item.Have));
        Assert.EndsWith(
            "does not say what sort of thing it is, so none is taken off: write `nut an3` or `sleeve`",
            Assert.Single(list.Findings).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_nothing_answers_to_is_a_note()
    {
        var finding = Assert.Single(Subtract("washer").Findings);
        Assert.Equal((OnHand.NotNeeded, Severity.Note, Stocked.At), (finding.Rule, finding.Severity, finding.Position));
    }

    private static ShoppingList Subtract(string typed) => OnHand.Subtract(List, [], [new(typed, 3, Stocked.At)]);
}
