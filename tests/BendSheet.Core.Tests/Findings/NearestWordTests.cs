using BendSheet.Core.Findings;

namespace BendSheet.Core.Tests.Findings;

public class NearestWordTests
{
    private static readonly string[] Known = ["straight", "bend", "rotate", "included", "note", "use", "reverse", "mirror", "bender"];

    [Theory]
    [InlineData("straght", "straight")] // one letter missing
    [InlineData("straighht", "straight")] // one too many
    [InlineData("strait", "straight")] // two missing of eight
    [InlineData("STRAIGTH", "straight")] // two neighbours exchanged, upper case
    [InlineData("rotat", "rotate")]
    [InlineData("bned", "bend")]
    [InlineData("bends", "bend")] // as near to bender? no: one slip against two
    [InlineData("usr", "use")]
    [InlineData("Mirror", "mirror")] // only the case is wrong
    public void A_mistyped_word_finds_the_one_it_was_meant_to_be(string typed, string meant) =>
        Assert.Equal(meant, NearestWord.Among(typed, Known));

    [Theory]
    [InlineData("fitting")]
    [InlineData("ben-t")] // two slips in five letters is more than a third
    [InlineData("5")]
    [InlineData("")]
    [InlineData("xyzxyzxyzxyzxyzxyzxyzxyzxyzxyz")]
    public void A_word_that_is_near_to_none_finds_none(string typed) => Assert.Null(NearestWord.Among(typed, Known));

    [Fact]
    public void Of_equally_near_words_the_first_is_offered() => Assert.Equal("cat", NearestWord.Among("bat", ["cat", "hat"]));

    [Theory]
    [InlineData("", "", 0)]
    [InlineData("abc", "", 3)]
    [InlineData("abc", "ABC", 0)]
    [InlineData("abcd", "abdc", 1)]
    [InlineData("ca", "abc", 3)] // the optimal string alignment distance: an exchanged pair is not edited again
    [InlineData("kitten", "sitting", 3)]
    public void Slips_are_counted(string typed, string word, int slips)
    {
        Assert.Equal(slips, NearestWord.Slips(typed, word));
        Assert.Equal(slips, NearestWord.Slips(word, typed));
    }
}
