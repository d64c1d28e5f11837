namespace BendSheet.Cli.Tests.Asking;

/// <summary>What is measured across the wire, asked for when the last leg is said.</summary>
public class AskedToTapeTests : AtTheTerminal
{
    /// <summary>
    /// Two bends of 45° at right angles to each other, legs 120, 100 and 300: from A along the first leg the second goes
    /// (cos 45°, sin 45°, 0), the third (cos² 45°, cos 45° sin 45°, sin 45°) = (½, ½, √½), so that B lies 120 + 70.7 + 150 = 340.7 ahead
    /// and √((70.7 + 150)² + 212.1²) = 306.1 aside. Worked out by hand.
    /// </summary>
    private const string Line = "mm\n3/16 in\n\n\n9/16 in\n\n\n\n\ncorner\nfront\n120\n45\n100\n45\n90 cw\n300\n\n";

    private const string Ends = "\n\n\n\n\nno\n";

    private const string Question = "\nTaped across the wire, such as `B ahead: ...` [Enter: no more]: \n";

    [Fact]
    public async Task I_am_told_what_to_measure_in_the_words_of_check()
    {
        Piped = Line + "\n" + Ends;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(0, ran.Code);
        var check = (await Run("check", Place("car.yaml"))).Error;
        var from = check.IndexOf("note: e", StringComparison.Ordinal) + "note: e".Length;
        var words = check[from..check.IndexOf(" [", StringComparison.Ordinal)];
        Assert.Contains(
            "measure on the wire B ahead (about 340.7 mm (13.414 in)), B aside (about 306.1 mm", words, StringComparison.Ordinal);
        Assert.Contains($"\n  E{words}.{Question}End A leads to", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("taped:", await File.ReadAllTextAsync(Place("car.yaml")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_I_read_is_written_as_I_typed_it_and_what_is_left_is_said_after_each()
    {
        Piped = Line + "B ahead: 13 7/16 in\nB aside: {distance: 305, within: 3}\n1-B:378\n\n" + Ends;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(0, ran.Code);
        Assert.Contains(
            "\n    taped: {B ahead: 13 7/16 in, B aside: {distance: 305, within: 3}, 1-B: 378}\n    rows:\n",
            await File.ReadAllTextAsync(Place("car.yaml")),
            StringComparison.Ordinal);
        var said = ran.Output.Split("End B may miss its port by ")[1..];
        Assert.Equal(4, said.Length);
        Assert.DoesNotContain("on the wire B ahead", said[1], StringComparison.Ordinal);
        Assert.Equal(3, ran.Output.Split("Taped as well [Enter: no more]: ").Length - 1);
        var check = await Run("check", Place("car.yaml"));
        Assert.Equal(0, check.Code);
        Assert.DoesNotContain("error", check.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_need_not_tape_what_is_sure_already()
    {
        Piped = "mm\n3/16 in\n\n\n9/16 in\n\n\n\n\ncorner\nfront\n120\n\n" + Ends;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain("Taped", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("B ahead: 340,7", "[decimal-comma]")]
    [InlineData("B ahaed: 340", "[unknown-word]")]
    [InlineData("A-9: 340", "is no place on this line")]
    [InlineData("A-B: {distance: 458, wihtin: 3}", "did you mean `within`?")]
    [InlineData("A-B: {distance: 458", "[unreadable-length]")]
    [InlineData("A-B: {forward: 3}", "say how the line lies with `start`")]
    [InlineData("340", "Type what was measured, a colon and the reading")]
    public async Task What_the_file_would_not_take_is_said_at_once(string reading, string words)
    {
        Piped = $"{Line}{reading}\n{reading}\n\n{Ends}";
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(0, ran.Code);
        Assert.Equal(3, ran.Output.Split(words).Length);
        Assert.DoesNotContain("taped:", await File.ReadAllTextAsync(Place("car.yaml")), StringComparison.Ordinal);
    }

    /// <summary>A reading 90 mm short of what the rows come to, where 340.7 was meant.</summary>
    [Fact]
    public async Task A_reading_that_cannot_be_is_said_at_once_and_kept_where_I_say_it_twice()
    {
        Piped = Line + "B ahead: 250\nB ahead: 250\n\n" + Ends;
        var ran = await Run("start", Place("car.yaml"), "--ask");
        var said = ran.Output.Split("[measured-apart]")[1];
        Assert.Contains("or type the same again to keep it as it is.\nTaped across the wire", said, StringComparison.Ordinal);
        Assert.Contains("taped: {B ahead: 250}\n", await File.ReadAllTextAsync(Place("car.yaml")), StringComparison.Ordinal);
        Assert.Equal(1, (await Run("check", Place("car.yaml"))).Code);
    }

    [Fact]
    public async Task I_go_back_from_a_reading_to_the_last_leg_and_stop_there_with_all_I_said()
    {
        Piped = Line + "B ahead: 341\nB aside: 306\nback\nback\nback\nback\n310\n\nB ahead: 345\n";
        var ran = await Run("start", Place("car.yaml"), "--ask");
        Assert.Equal(2, ran.Code);
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.Contains("# Not finished: the next question was \"Taped as well\".\n", text, StringComparison.Ordinal);
        Assert.Contains("\n    taped: {B ahead: 345}\n", text, StringComparison.Ordinal);
        Assert.EndsWith("- {straight: 310}\n", text, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("check", Place("car.yaml"))).Code);
    }
}
