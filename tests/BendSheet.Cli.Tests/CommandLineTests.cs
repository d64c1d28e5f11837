using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests;

public class CommandLineTests : AtTheTerminal
{
    public static TheoryData<string> Commands => ["check", "show", "print", "start"];

    [Fact]
    public async Task I_see_every_command_with_examples_in_the_help()
    {
        var ran = await Run("--help");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        foreach (var command in Commands)
        {
            Assert.Contains($"\n  bendsheet {command}", ran.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task I_see_an_example_in_the_help_of_each_command(string command)
    {
        var ran = await Run(command, "--help");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        var examples = ran.Output[ran.Output.IndexOf("\nExamples:", StringComparison.Ordinal)..];
        Assert.Contains($"\n  bendsheet {command}", examples, StringComparison.Ordinal);
        Assert.Contains("Exit codes: 0 done", examples, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_told_the_version_as_a_bare_number()
    {
        var ran = await Run("--version");
        Assert.Equal(0, ran.Code);
        Assert.Matches(@"^\d+\.\d+\.\d+\n$", ran.Output);
    }

    [Fact]
    public async Task I_am_offered_the_command_that_I_misspelt()
    {
        var ran = await Run("chek", "car.yaml");
        AssertIsUsage(ran);
        Assert.StartsWith("bendsheet: there is no command `chek`: did you mean `check`?\n", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_type_nothing_and_get_a_line_to_try_for_each_command()
    {
        var ran = await Run();
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        foreach (var command in Commands)
        {
            Assert.Contains($"\n  bendsheet {command}", ran.Output, StringComparison.Ordinal);
        }

        Assert.True(ran.Output.Split('\n').Length < 18, ran.Output);
    }

    [Fact]
    public async Task I_can_ask_for_help_in_words()
    {
        Assert.Equal((await Run("print", "--help")).Output, (await Run("help", "print")).Output);
        Assert.Equal((await Run("--help")).Output, (await Run("help")).Output);
        AssertIsUsage(await Run("help", "polish"));
    }

    [Theory]
    [InlineData("`finch.yaml` is a file, and a command has to stand before it: did you mean `bendsheet show finch.yaml`?", "finch.yaml")]
    [InlineData("`a.yml` is a file, and a command has to stand before it: did you mean `bendsheet show a.yml`?", "a.yml", "--line", "b")]
    [InlineData("`--line` goes after a command and its file: `bendsheet check FILE --line`.", "--line", "rear", "a.yaml")]
    [InlineData("there is no option `--hlep`: did you mean `--help`?", "--hlep")]
    [InlineData("`show` has no option `--lines`: did you mean `--line`?", "show", "a.yaml", "--lines", "rear")]
    [InlineData("`show` has no option `--lines`: did you mean `--line`?", "show", "--lines", "rear", "a.yaml")]
    [InlineData("`show` has no option `--formt`: did you mean `--format`?", "show", "a.yaml", "--formt=json")]
    [InlineData("`check` has no option `-x`.", "check", "-x", "a.yaml")]
    [InlineData("`check` needs a file: type its name after it, such as `bendsheet check finch.yaml`.", "check")]
    [InlineData("`b` is one word too many: `learn` takes one file, and a name with spaces in it goes in quotes.", "learn", "a", "b")]
    [InlineData("`--line` has nothing after it: type `--line NAME`.", "check", "a.yaml", "--line")]
    [InlineData("`-o` is there more than once, and counts once: leave all but one out.", "print", "a", "-o", "b", "-o", "c")]
    [InlineData("`--format` does not know `jsn`: did you mean `json`?", "show", "a.yaml", "--format", "jsn")]
    [InlineData("`--format` does not know `JSON`: did you mean `json`?", "show", "a.yaml", "--format", "JSON")]
    [InlineData("`--units` does not know `furlongs`: it takes `mm` or `in`.", "print", "a.yaml", "--units", "furlongs")]
    public async Task I_am_told_what_would_make_the_command_line_right(string sentence, params string[] args)
    {
        var ran = await Run(args);
        AssertIsUsage(ran);
        Assert.StartsWith($"bendsheet: {sentence}\n", ran.Error, StringComparison.Ordinal);
    }

    /// <summary>ESC begins what a terminal obeys (ECMA-48), and U+202E turns the direction of writing (Unicode Standard Annex 9).</summary>
    [Theory]
    [InlineData("che\u001b[31mck")]
    [InlineData("check", "a", "b\u001b]0;title\u0007")]
    [InlineData("check", "--li\u001b[2Jne", "a")]
    [InlineData("show", "a", "--format", "\u202Enosj\u001b[1m")]
    [InlineData("check", "\u001b[31m\u202Eyek.yaml")]
    [InlineData("\u001b[31m.yaml")]
    [InlineData("print", "car.yaml", "-o", "\u001b[31m\u2066/a.pdf")]
    [InlineData("print", "car.yaml", "--format", "svg", "-o", "\u001b[31m\u2066/a")]
    [InlineData("check", "car.yaml", "--line", "\u001b[31m\u2067")]
    [InlineData("learn", "car.yaml", "--bender", "\u001b[31m\u200F")]
    [InlineData("start", "nowhere/\u001b[31m\u202D")]
    public async Task Nothing_in_an_argument_is_obeyed_by_the_terminal(params string[] args)
    {
        Typed(CarFiles.Sound);
        Width = 80;
        var ran = await Run([.. args.Select(arg => string.Equals(arg, "car.yaml", StringComparison.Ordinal) ? Place(arg) : arg)]);
        Assert.NotEqual(0, ran.Code);
        var shown = ran.Output + ran.Error;
        Assert.Contains('\uFFFD', shown);
        Assert.DoesNotContain(
            shown, character => character != '\n' && (char.IsControl(character) || character is (>= '\u202A' and <= '\u202E')
                or (>= '\u2066' and <= '\u2069') or '\u200E' or '\u200F' or '\u061C'));
    }

    [Theory]
    [InlineData("polish")]
    [InlineData("check")]
    [InlineData("check", "a.yaml", "b.yaml")]
    [InlineData("check", "a.yaml", "--loud")]
    [InlineData("check", "a.yaml", "--line")]
    [InlineData("show", "a.yaml", "--format", "xml")]
    [InlineData("show", "a.yaml", "--format", "JSON")]
    [InlineData("show", "a.yaml", "--format", "csv", "--format", "json")]
    [InlineData("print", "a.yaml", "--paper", "a5")]
    [InlineData("print", "a.yaml", "-o", "a.pdf", "-o", "b.pdf")]
    [InlineData("start", "a.yaml", "b.yaml")]
    [InlineData("[diagram]", "check", "a.yaml")]
    public async Task I_am_told_in_two_lines_that_I_typed_the_command_wrongly(params string[] args)
    {
        var ran = await Run(args);
        AssertIsUsage(ran);
        Assert.Equal(2, ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task I_am_told_which_words_an_option_takes()
    {
        var ran = await Run("show", "a.yaml", "--format", "xml");
        Assert.Contains("`xml`: it takes `table`, `json`, `csv` or `rows`.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_with_an_at_sign_is_a_name_and_no_list_of_arguments()
    {
        Typed("check\n", "@args");
        var ran = await Run("check", Place("@args"));
        Assert.Equal(2, ran.Code);
        Assert.StartsWith($"{Place("@args")}:1:1: error: ", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Output_that_cannot_be_written_ends_with_three_and_a_sentence()
    {
        var error = new StringWriter();
        var code = await CommandLine.RunAsync(["show", Typed(CarFiles.Sound)], Around(new FullWriter(), error));
        Assert.Equal(3, code);
        Assert.Equal("bendsheet: the result could not be written: the disk is full", error.ToString().Trim());
    }

    [Theory]
    [InlineData("show", "car.yaml")]
    [InlineData("polish")]
    public async Task With_both_outputs_full_there_is_still_an_exit_code(params string[] args)
    {
        Assert.Equal(3, await CommandLine.RunAsync(args, Around(new FullWriter(), new FullWriter())));
    }

    [Fact]
    public async Task I_can_stop_a_command()
    {
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var code = await CommandLine.RunAsync(["show", Typed(CarFiles.Sound)], Around(new StringWriter(), new StringWriter()), stop.Token);
        Assert.Equal(130, code);
    }

    private static void AssertIsUsage(Ran ran)
    {
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
        Assert.StartsWith("bendsheet: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("--help` shows what can be typed, with an example.\n", ran.Error, StringComparison.Ordinal);
    }

    private static Surroundings Around(TextWriter output, TextWriter error) =>
        new(output, error, () => Stream.Null, () => Stream.Null, Colour: false);

    /// <summary>A disk without room.</summary>
    private sealed class FullWriter : StringWriter
    {
        public override void Write(char value) => throw new IOException("the disk is full");

        public override void Write(char[] buffer, int index, int count) => throw new IOException("the disk is full");

        public override void Write(string? value) => throw new IOException("the disk is full");

        public override void WriteLine(string? value) => throw new IOException("the disk is full");
    }
}
