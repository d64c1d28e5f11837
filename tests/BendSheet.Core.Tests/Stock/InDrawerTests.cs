using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;

namespace BendSheet.Core.Tests.Stock;

public class InDrawerTests
{
    private static readonly ImmutableArray<ShoppingItem> List =
    [
        new("nut", "an3, 17 mm", 8, ["a"]),
        new("nut", "inverted, 20 mm", 4, ["b"]),
        new("sleeve", "an3, 9 mm", 8, ["a"]),
        new("brake tee", "3/8-24 inverted", 1, ["c"]),
    ];

    [Theory]
    [InlineData("sleeve", "0 0 3 0")]
    [InlineData("sleeves", "0 0 3 0")]
    [InlineData("Sleeve", "0 0 3 0")]
    [InlineData("an3 nut", "3 0 0 0")]
    [InlineData("inverted nuts", "0 3 0 0")]
    [InlineData("nut 20 mm", "0 3 0 0")]
    [InlineData("brake tee", "0 0 0 1")]
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
        Assert.Equal((InDrawer.Unclear, Severity.Warning, Stocked.At), (finding.Rule, finding.Severity, finding.Position));
        Assert.EndsWith("write `nut an3` or `nut inverted`", finding.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tee")]
    [InlineData("washer")]
    [InlineData("an3")]
    public void A_name_that_nothing_answers_to_is_a_note(string typed)
    {
        var finding = Assert.Single(Subtract(typed).Findings);
        Assert.Equal((InDrawer.NotNeeded, Severity.Note, Stocked.At), (finding.Rule, finding.Severity, finding.Position));
    }

    private static ShoppingList Subtract(string typed) => InDrawer.Subtract(List, [new(typed, 3, Stocked.At)]);
}
