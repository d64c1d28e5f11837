using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Units;

public class UnpartedWordsTests
{
    [Theory]
    [InlineData("leaving 2 mm for the flare", "leaving|2 mm|for|the|flare")]
    [InlineData("square to 2280.0 mm (89 49/64+ in). Deburr", "square|to|2280.0 mm|(89 49/64+ in).|Deburr")]
    [InlineData("17 7/8 in", "17 7/8 in")]
    [InlineData("1 ft 9 1/2 in", "1 ft|9 1/2 in")]
    [InlineData("16 3/16− in left", "16 3/16− in|left")]
    [InlineData("rotation 2: 90° cw, then", "rotation|2:|90° cw,|then")]
    [InlineData("bends 3, 4 and 5", "bends|3,|4|and|5")]
    [InlineData("turn 90° in the tool", "turn|90°|in|the|tool")]
    [InlineData("bend 3 a/b", "bend|3|a/b")]
    [InlineData("3 1/", "3|1/")]
    [InlineData("+ in", "+|in")]
    [InlineData("two  spaces ", "two||spaces|")]
    [InlineData("", "")]
    public void A_figure_stays_with_its_unit(string text, string parts) =>
        Assert.Equal(parts.Split('|'), UnpartedWords.Of(text).Select(part => text[part]), StringComparer.Ordinal);
}
