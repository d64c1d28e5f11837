namespace BendSheet.Cli.Tests;

/// <summary>
/// What a terminal of any width shows: no word is broken, nothing is lost, and a file or another program gets it as ever.
/// </summary>
[Collection(FromTheRepository.Name)]
public class TerminalWidthTests : AtTheTerminal
{
    private const string Sample = "samples/finch.yaml";

    public static TheoryData<string> Written =>
        ["show", "show --parts", "stock", "learn", "check", "--help", "help print", "help show", "", "polish", "show --lines a"];

    [Theory]
    [MemberData(nameof(Written))]
    public async Task Nothing_is_wider_than_the_terminal(string typed)
    {
        foreach (var width in new[] { 60, 80, 100, 132 })
        {
            Width = width;
            var ran = await Run(Args(typed));
            foreach (var line in (ran.Output + ran.Error).Split('\n'))
            {
                // Commands to copy stay whole; of figures side by side 60 columns are too few.
                Assert.True(line.Length <= Math.Max(width, 72), line);
                Assert.True(width < 80 || line.Length <= width, line);
            }
        }
    }

    [Theory]
    [InlineData("show --parts")]
    [InlineData("learn")]
    [InlineData("check")]
    public async Task No_word_is_lost_when_sentences_are_broken(string typed)
    {
        var whole = await Run(Args(typed));
        Width = 61;
        var narrow = await Run(Args(typed));
        Assert.Equal(string.Join(' ', Words(whole.Output)), string.Join(' ', Words(narrow.Output)));
        Assert.True(Lines(narrow) > Lines(whole));
    }

    [Fact]
    public async Task A_narrow_terminal_says_which_columns_it_left_out_and_how_to_have_them()
    {
        var file = Args("show --line front-left");
        var whole = (await Run(file)).Output;
        Width = 80;
        var narrow = (await Run(file)).Output;
        Assert.Contains("1° moves B", whole.Split('\n')[4], StringComparison.Ordinal);
        Assert.DoesNotContain("1° moves B", narrow.Split('\n')[6], StringComparison.Ordinal);
        Assert.Contains("Left out for lack of room: ", narrow, StringComparison.Ordinal);
        Assert.Contains("1° moves B; `--wide`", narrow.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Equal(whole, (await Run([.. file, "--wide"])).Output);
    }

    /// <summary>Every figure and word of the shopping list is there, in the cells' own rows.</summary>
    [Fact]
    public async Task The_words_of_a_wide_table_are_stacked_in_their_columns()
    {
        var whole = (await Run(Args("stock"))).Output;
        Width = 80;
        var narrow = (await Run(Args("stock"))).Output;
        Assert.Equal(Words(whole).Order(StringComparer.Ordinal), Words(narrow).Order(StringComparer.Ordinal));
        Assert.Equal(whole, (await Run([.. Args("stock"), "--wide"])).Output);
    }

    [Theory]
    [InlineData("json")]
    [InlineData("csv")]
    [InlineData("rows")]
    public async Task Figures_for_another_program_are_never_broken(string format)
    {
        var whole = (await Run("show", Sample, "--format", format)).Output;
        Width = 40;
        Assert.Equal(whole, (await Run("show", Sample, "--format", format)).Output);
    }

    private static int Lines(Ran ran) => (ran.Error + ran.Output).Split('\n').Length;

    private static string[] Args(string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is ["show" or "stock" or "learn" or "check", .. var more] ? [words[0], Sample, .. more] : words;
    }

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
