using BendSheet.Files.Yaml;

namespace BendSheet.Files.Tests.Yaml;

/// <summary>The words of the messages that people will meet most.</summary>
public class YamlMessageTests
{
    [Theory]
    [InlineData("- {straight: 120, bend: 45\n- {straight: 3}",
        "this { was never closed: put a } after the last of its values, at the latest at the end of this line")]
    [InlineData("a: {\n  b: 1\n\nc: 2\n", "this { was never closed: put a } after the last of its values, at the latest at the end of "
        + "line 2")]
    [InlineData("{a: 1]", "this ] stands where the { of line 1, column 1 wants its }")]
    [InlineData("- {straight: 1,5}", "a decimal comma ends the number here: write `1.5` with a point")]
    [InlineData("- {rotate: 22,5 cw}", "a decimal comma ends the number here: write `22.5 cw` with a point")]
    [InlineData("- {straight:120}", "put a space after the colon: write `straight: 120`")]
    [InlineData("- {straight 120}", "a colon is missing: write `straight: 120`")]
    [InlineData("units mm\ntube: 1", "this line has no colon between a word and its value: write `units: mm`")]
    [InlineData("units: mm\ntube: 1\nunits: in", "`units` was already given on line 1: delete one of the two")]
    [InlineData("{a: 1, a: 2}", "`a` was already given earlier on this line: delete one of the two")]
    [InlineData("l:\n\ta: 1\n\tb: 2\n\tc: 2", "this line is indented with a tab, and 2 lines more: use spaces, two for each step in")]
    [InlineData("a: \u0007", "an invisible character (U+0007) stands here: delete it and type the line again")]
    [InlineData("name: 'Joe's line'", "the quotes end before `s line'`: put the whole text between \" and \" instead")]
    [InlineData("a: \"2' 3\"\"", "the quotes end before `\"`: leave out the quotes around the whole (2' 3-1/2\" needs none)")]
    [InlineData("l:\n    - a\n   - b", "this line begins after 3 spaces, line 2 after 4 spaces: line it up with those it belongs to")]
    [InlineData("# nothing", "nothing is typed in this file yet: `bendsheet start` writes one to fill in")]
    public void A_message_says_what_is_wrong_and_what_makes_it_right(string typed, string message) =>
        Assert.Equal(message, Assert.Single(YamlTexts.Read(typed).Findings).Message);

    [Fact]
    public void What_was_typed_is_shown_short_and_harmless()
    {
        var message = Assert.Single(YamlTexts.Read($"{{{new string('a', 500)}:1}}").Findings).Message;
        Assert.InRange(message.Length, 40, 120);
        Assert.Contains("aaa…`", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Rules_have_different_names_in_words_and_say_why()
    {
        Assert.Equal(YamlRules.All.Count, YamlRules.All.Select(r => r.Name).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(typeof(YamlRules).GetProperties().Length - 1, YamlRules.All.Count);
        Assert.All(YamlRules.All, r => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", r.Name));
        Assert.All(YamlRules.All, r => Assert.EndsWith(".", r.Why, StringComparison.Ordinal));
    }
}
