namespace BendSheet.Cli.Tests.Commands;

public class CheckTests : AtTheTerminal
{
    [Fact]
    public async Task I_am_told_that_a_sound_file_has_no_findings()
    {
        var file = Typed(CarFiles.Sound);
        var ran = await Run("check", file);
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal($"{file}: 2 lines, cut length in all 352.5 mm (13 7/8+ in); no findings\n", ran.Output);
    }

    [Fact]
    public async Task I_am_told_which_leg_is_too_short()
    {
        var file = Typed(CarFiles.LegTooShort);
        var ran = await Run("check", file);
        Assert.Equal(1, ran.Code);
        Assert.StartsWith(
            $"{file}:11:18: error: leg 2 is 10.0 mm (0.394 in) too short for its two bends (90° and 90°)",
            ran.Error,
            StringComparison.Ordinal);
        Assert.Contains(" the largest radius that would fit is 10.0 mm", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith(
            """
             [leg-too-short]
              11 |     - {straight: 20, rotate: 90 cw, bend: 90}
                 |                  ^

            """, ran.Error, StringComparison.Ordinal);
        Assert.Equal($"{file}: 2 lines; 1 error\n", ran.Output);
    }

    [Fact]
    public async Task I_am_offered_the_word_that_I_misspelt()
    {
        var file = Typed(CarFiles.Misspelt);
        var ran = await Run("check", file);
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(
            $"{file}:7:23: error: `bendd` is not a word for a row: did you mean `bend`? [unknown-word]\n",
            ran.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_word_counts_more_than_a_line_that_cannot_be_made()
    {
        var ran = await Run("check", Typed(CarFiles.LegTooShort + "colour: red\n"));
        Assert.Equal(2, ran.Code);
        Assert.Contains("[leg-too-short]", ran.Error, StringComparison.Ordinal);
        Assert.Contains("[unknown-word]", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_with_tube_tool_or_fitting_is_said_once_for_all_lines()
    {
        var ran = await Run("check", Typed(CarFiles.WrongTube));
        Assert.Equal(0, ran.Code);
        var said = ran.Error.Split('\n').Where(line => line.Contains(": warning: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(4, said.Count);
        Assert.Contains(":2:27: warning: the tube has a wall of 0.60 mm", said[0], StringComparison.Ordinal);
        Assert.Contains(":3:18: warning: the bender bends the tube to 15.0 mm", said[1], StringComparison.Ordinal);
        Assert.Contains(":5:21: warning: fitting inverted has a 45° single flare", said[2], StringComparison.Ordinal);
        Assert.Contains(":6:18: warning: fitting other has a 45° single flare", said[3], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_warning_is_said_and_ends_with_zero()
    {
        var ran = await Run("check", Typed(CarFiles.WithWarning));
        Assert.Equal(0, ran.Code);
        Assert.Contains(":8:33: warning: ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("; 1 warning\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_stock_has_to_say_of_the_file_is_said_by_check_as_well()
    {
        var file = Typed(CarFiles.Sound + "stock: [{length: 2 m}]\nhave: {olive: 3}\n");
        var (check, stock) = (await Run("check", file), await Run("stock", file));
        Assert.Equal(0, check.Code);
        Assert.Equal(stock.Error, check.Error);
        Assert.Contains(
            ":15:8: note: `olive` in `have` is not needed: nothing is on the list [have-not-needed]",
            check.Error,
            StringComparison.Ordinal);
        Assert.EndsWith("; 1 note\n", check.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_roll_that_is_too_short_is_told_before_the_first_cut()
    {
        var file = Typed(CarFiles.Sound + "stock: [{length: 200}]\n");
        var ran = await Run("check", file);
        Assert.Equal(1, ran.Code);
        Assert.Contains(":14:9: error: the tube: ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith("; 1 error\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal((await Run("stock", file)).Code, ran.Code);
    }

    [Fact]
    public async Task Of_a_line_that_I_ask_for_alone_nothing_is_said_about_the_stock()
    {
        var ran = await Run("check", Typed(CarFiles.Sound + "stock: [{length: 200}]\nhave: {olive: 3}\n"), "--line", "rear");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
    }

    [Fact]
    public async Task A_line_that_I_did_not_ask_for_is_not_looked_at()
    {
        var ran = await Run("check", Typed(CarFiles.LegTooShort), "--line", "front-left");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Contains(": 1 line, cut length in all ", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_can_pipe_a_file_in()
    {
        Piped = CarFiles.Misspelt;
        var ran = await Run("check", "-");
        Assert.Equal(2, ran.Code);
        Assert.StartsWith("-:7:23: error: ", ran.Error, StringComparison.Ordinal);
        Assert.EndsWith(": 1 of 2 lines without a mistake; 1 error\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_told_that_there_is_no_such_file()
    {
        var ran = await Run("check", Place("nowhere.yaml"));
        Assert.Equal(2, ran.Code);
        Assert.Equal(
            $"{Place("nowhere.yaml")}: error: there is no such file: check its name, or write a new one with `bendsheet start` "
                + $"[cannot-read]\n",
            ran.Error);
    }

    [Fact]
    public async Task The_file_that_I_typed_is_never_changed()
    {
        var file = Typed(CarFiles.LegTooShort);
        foreach (var command in new[] { "check", "show", "print" })
        {
            await Run(command, file);
        }

        Assert.Equal(CarFiles.LegTooShort, await File.ReadAllTextAsync(file));
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }
}
