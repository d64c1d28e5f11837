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
        Assert.Contains("Ends with 0 done", examples, StringComparison.Ordinal);
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

    [Theory]
    [InlineData]
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
        Assert.Contains("'xml'", ran.Error, StringComparison.Ordinal);
        Assert.Contains("'table' 'json' 'csv'", ran.Error, StringComparison.Ordinal);
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
