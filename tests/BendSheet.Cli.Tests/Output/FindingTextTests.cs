using BendSheet.Cli.Output;
using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Tests.Output;

public class FindingTextTests
{
    private static readonly Rule Rule = new("some-rule", RuleSubject.File, "For the test.");

    [Theory]
    [InlineData("abc", 1, "abc", "^")]
    [InlineData("abc", 3, "abc", "  ^")]
    [InlineData("abc", 4, "abc", "   ^")]
    [InlineData("abc", 9, "abc", "   ^")]
    [InlineData("\ta: \tb", 6, "\ta: \tb", "\t   \t^")]
    [InlineData("45° × 3", 7, "45° × 3", "      ^")]
    [InlineData("\U0001D7D9x", 3, "\U0001D7D9x", " ^")]
    [InlineData("\U0001D7D9\U0001D7D9x", 3, "\U0001D7D9\U0001D7D9x", " ^")]
    [InlineData("a\u001b[31mb", 7, "a\uFFFD[31mb", "      ^")]
    public void The_caret_stands_under_the_place(string line, int column, string shown, string caret)
    {
        Assert.Equal($"f:1:{column}: error: wrong [some-rule]\n  1 | {shown}\n    | {caret}\n", Shown(line, column));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(60)]
    [InlineData(80)]
    [InlineData(200)]
    public void On_a_narrow_terminal_the_caret_still_stands_under_the_place_and_nothing_is_wider(int width)
    {
        var line = string.Concat(Enumerable.Range(1, 500).Select(c => (char)('a' + (c % 26))));
        foreach (var column in new[] { 1, 2, 17, 35, 60, 71, 72, 100, 300, 499, 500 })
        {
            var finding = Rule.Error(new SourcePosition("f", 1, column), "wrong, and so long that it takes more than one row of forty");
            var rows = FindingText.Write([finding], new SourceLines("f", line), colour: false, width).TrimEnd('\n').Split('\n');
            Assert.All(rows, row => Assert.InRange(row.Length, 1, width));
            Assert.Equal((char)('a' + (column % 26)), rows[^2][rows[^1].IndexOf('^', StringComparison.Ordinal)]);
            Assert.StartsWith(FormattableString.Invariant($"f:1:{column}: error: wrong, and so"), rows[0], StringComparison.Ordinal);
        }
    }

    /// <summary>ESC and the turns of the direction of writing are in what was typed, in the name of the file and in the sentence.</summary>
    [Fact]
    public void Nothing_of_the_file_is_obeyed_by_the_terminal()
    {
        const string Typed = "a\u001b]0;x\u0007\u202Eb\u2066\u200F\u061C\u2028c\u009b31m";
        var finding = Rule.Error(new SourcePosition(Typed, 1, 3), Typed);
        var shown = FindingText.Write([finding], new SourceLines(Typed, Typed), colour: false);
        Assert.Equal(3 * 8, shown.Count(character => character == '\uFFFD'));
        Assert.DoesNotContain(shown, character => character is '\u001b' or '\u009b' or '\u0007' or '\u202E' or '\u2066');
    }

    [Theory]
    [InlineData(1, 41)]
    [InlineData(60, 100)]
    [InlineData(71, 111)]
    [InlineData(72, 112)]
    [InlineData(300, 112)]
    [InlineData(500, 112)]
    public void Of_a_long_line_the_neighbourhood_of_the_place_is_shown(int column, int mostWidth)
    {
        // Every character tells where it stands: column c has the letter c mod 26.
        var line = string.Concat(Enumerable.Range(1, 500).Select(c => (char)('a' + (c % 26))));
        var rows = Shown(line, column).Split('\n');
        Assert.Equal((char)('a' + (column % 26)), rows[1][rows[2].IndexOf('^', StringComparison.Ordinal)]);
        Assert.InRange(rows[1].Length, 2, "  1 | ".Length + mostWidth);
        Assert.Equal(column > 71, rows[1].Contains("| …", StringComparison.Ordinal));
        Assert.Equal(column <= 460, rows[1].EndsWith('…'));
    }

    /// <summary>The one letter of a single half lies between the place and the cut before it, or behind it.</summary>
    [Theory]
    [InlineData(181)]
    [InlineData(202)]
    public void A_long_line_is_not_cut_through_a_character(int column)
    {
        var wide = string.Concat(Enumerable.Repeat("\U0001D7D9", 100));
        var rows = Shown($"{wide}a{wide}", column).Split('\n');
        Assert.DoesNotContain(rows[1].EnumerateRunes(), rune => rune.Value == 0xFFFD);
        Assert.Equal("\U0001D7D9", WholeCharacterAt(rows[1], rows[2].IndexOf('^', StringComparison.Ordinal)));
    }

    [Fact]
    public void The_line_number_moves_line_and_caret_alike()
    {
        var text = Shown(string.Concat(Enumerable.Repeat("\n", 99)) + "abc", 2, row: 100);
        Assert.EndsWith("\n  100 | abc\n      |  ^\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("   ", 2)]
    [InlineData("a\n", 2, 2)]
    [InlineData("a", 1, 7)]
    public void Where_nothing_was_typed_there_is_nothing_to_show(string text, int column, int row = 1)
    {
        Assert.Equal($"f:{row}:{column}: error: wrong [some-rule]\n", Shown(text, column, row));
    }

    [Fact]
    public void A_finding_about_the_whole_file_has_no_place()
    {
        Assert.Equal("f: error: wrong [some-rule]\n",
            FindingText.Write([Rule.Error(SourcePosition.Whole("f"), "wrong")], new SourceLines("f", "abc"), colour: false));
    }

    [Fact]
    public void Only_the_word_for_how_bad_it_is_has_a_colour_and_only_when_allowed()
    {
        Finding[] findings =
        [
            Rule.Error(SourcePosition.Whole("f"), "e"),
            Rule.Warning(SourcePosition.Whole("f"), "w"),
            Rule.Note(SourcePosition.Whole("f"), "n"),
        ];
        var nothing = new SourceLines("f", string.Empty);
        Assert.Equal(
            "f: error: e [some-rule]\nf: warning: w [some-rule]\nf: note: n [some-rule]\n",
            FindingText.Write(findings, nothing, colour: false));
        Assert.Equal(
            "f: \e[1;31merror\e[0m: e [some-rule]\nf: \e[1;33mwarning\e[0m: w [some-rule]\nf: \e[1;36mnote\e[0m: n [some-rule]\n",
            FindingText.Write(findings, nothing, colour: true));
    }

    [Fact]
    public void What_was_typed_cannot_forge_a_finding_or_colour_the_terminal()
    {
        var text = FindingText.Write(
            [Rule.Error(SourcePosition.Whole("f"), "no tube `\e[2J\nf: note: all is well`")],
            new SourceLines("f", string.Empty),
            colour: false);
        Assert.Equal("f: error: no tube `\uFFFD[2J\uFFFDf: note: all is well` [some-rule]\n", text);
    }

    private static string Shown(string text, int column, int row = 1) =>
        FindingText.Write([Rule.Error(new("f", row, column), "wrong")], new SourceLines("f", text), colour: false);

    /// <summary>Of a row as a terminal shows it, one cell for each character.</summary>
    private static string WholeCharacterAt(string row, int cell) => row.EnumerateRunes().ElementAt(cell).ToString();
}
