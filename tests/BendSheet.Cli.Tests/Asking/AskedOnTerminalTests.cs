namespace BendSheet.Cli.Tests.Asking;

/// <summary>A file that is asked for on a terminal.</summary>
public class AskedOnTerminalTests : AtTheTerminal
{
    private static readonly (string Wait, string Type)[] Bench =
    [
        ("ft) [mm]: ", "\n"), ("outside diameter: ", "3/16 in\n"), ("wall", "\n"), ("material", "\n"), ("centreline: ", "9/16 in\n"),
        ("[start]: ", "\n"), ("where it holds", "\n"), ("where it sweeps", "\n"), ("pulled to", "\n"), ("[corner]: ", "\n"),
    ];

    [FactOnTerminal]
    public async Task I_answer_on_a_terminal_and_have_the_file()
    {
        using var program = RunningProgram.OnTerminal(
            [
                .. Bench, ("[line-1]: ", "front\n"), ("Leg 1", "100\n"), ("Bend 1", "90\n"), ("Leg 2", "3'-2 1/2\"\n"), ("Bend 2", "\n"),
                ("Taped", "B ahead: 98\n"), ("Taped as well", "\n"),
                ("End A leads", "\n"), ("end A [", "\n"), ("End B leads", "\n"), ("end B [", "\n"), ("leave on", "15\n"),
                ("Another line? [no]: ", "\n"),
            ],
            "start",
            Place("car.yaml"),
            "--ask",
            "--schema");
        Assert.Equal(0, await program.Ended());
        Assert.Equal("bendsheet.schema.json car.yaml", InTheFolder());
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.StartsWith("# yaml-language-server: $schema=bendsheet.schema.json\n", text, StringComparison.Ordinal);
        Assert.Contains("to: {trim: 15}\n", text, StringComparison.Ordinal);
        Assert.Contains("- {straight: 100, bend: 90}\n      - {straight: 3'-2 1/2\"}\n", text, StringComparison.Ordinal);
        Assert.Contains("taped: {B ahead: 98}\n", text, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("check", Place("car.yaml"))).Code);
    }

    [FactOnTerminal]
    public async Task Ctrl_C_in_a_reading_keeps_those_before_it()
    {
        using var program = RunningProgram.OnTerminal(
            [
                .. Bench, ("[line-1]: ", "front\n"), ("Leg 1", "100\n"), ("Bend 1", "90\n"), ("Leg 2", "960\n"), ("Bend 2", "\n"),
                ("Taped", "B ahead: 98\n"), ("Taped as well", "A-B: 9\u0003"),
            ],
            "start",
            Place("car.yaml"),
            "--ask");
        Assert.Equal(130, await program.Ended());
        var text = await File.ReadAllTextAsync(Place("car.yaml"));
        Assert.Contains("taped: {B ahead: 98}\n", text, StringComparison.Ordinal);
        Assert.Contains("the next question was \"Taped as well\"", text, StringComparison.Ordinal);
    }

    [FactOnTerminal]
    public async Task Ctrl_C_keeps_what_I_said()
    {
        using var program = RunningProgram.OnTerminal([.. Bench, ("[line-1]: ", "\u0003")], "start", Place("car.yaml"), "--ask");
        Assert.Equal(130, await program.Ended());
        Assert.Contains("Not finished: what you said is in", program.Written.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("radius: 9/16 in", await File.ReadAllTextAsync(Place("car.yaml")), StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }
}
