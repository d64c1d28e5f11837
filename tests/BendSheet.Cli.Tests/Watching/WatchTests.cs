namespace BendSheet.Cli.Tests.Watching;

/// <summary>A real process that watches a file, and what people and editors do with that.</summary>
public class WatchTests : AtTheTerminal
{
    private const string Waits = "watching for the next save, Ctrl-C ends it.";

    [FactOnUnix]
    public async Task I_see_the_findings_of_each_save_until_I_press_Ctrl_C()
    {
        var file = Typed(CarFiles.Sound);
        using var program = RunningProgram.Start("check", file, "--watch");
        await program.Sees("2 lines, cut length in all");
        await program.Sees(Waits);

        // Typed over in place.
        Typed(CarFiles.LegTooShort);
        await program.Sees("[leg-too-short]");
        await program.Sees(Waits);

        // Written beside it and renamed, as editors do.
        File.Move(Typed(CarFiles.Misspelt, "car.yaml~"), file, overwrite: true);
        await program.Sees("[unknown-word]");
        await program.Sees(Waits);

        // Gone, and there again.
        File.Delete(file);
        await program.Sees("there is no such file");
        await program.Sees(Waits);
        Typed(CarFiles.Sound);
        await program.Sees("no findings");
        await program.Sees(Waits);

        Assert.Equal(0, await program.Interrupted());
        Assert.Contains("stopped watching.", program.Written, StringComparison.Ordinal);
        Assert.Contains($"--- {file} again ---\n", program.Written, StringComparison.Ordinal);
        Assert.DoesNotContain("\e", program.Written, StringComparison.Ordinal);
    }

    [FactOnUnix]
    public async Task A_sheet_that_cannot_be_written_is_said_and_printed_at_the_next_save()
    {
        var folder = Directory.CreateDirectory(Place("sheets")).FullName;
        var file = Typed(CarFiles.Sound);
        using var program = RunningProgram.Start("print", file, "--watch", "-o", Path.Combine(folder, "car.pdf"));
        await program.Sees("2 lines on ");
        await program.Sees(Waits);

        Directory.Delete(folder, recursive: true);
        Typed(CarFiles.Sound + "paper: letter\n");
        await program.Sees("there is no such folder");
        await program.Sees("it is tried again at the next save;");

        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "car.pdf"), "something else by that name, longer than a mark\n");
        Typed(CarFiles.Sound + "paper: a4\n");
        await program.Sees("there is something else by this name");
        await program.Sees(Waits);

        File.Delete(Path.Combine(folder, "car.pdf"));
        Typed(CarFiles.Sound);
        await program.Sees("2 lines on ");
        Assert.Equal(0, await program.Interrupted());
    }

    [FactOnTerminal]
    public async Task On_a_terminal_the_screen_is_drawn_anew_with_the_findings_first()
    {
        var file = Typed(CarFiles.LegTooShort);
        using var program = RunningProgram.OnTerminal([(Waits, "\u0003")], "show", file, "--watch");
        Assert.Equal(0, await program.Ended());
        var screen = program.Written;
        Assert.StartsWith("\u001b[H\u001b[2J", screen[screen.IndexOf("\u001b[H", StringComparison.Ordinal)..], StringComparison.Ordinal);
        var figures = screen.IndexOf("front-left: cut", StringComparison.Ordinal);
        Assert.InRange(screen.IndexOf("[leg-too-short]", StringComparison.Ordinal), 0, figures);
        Assert.DoesNotContain(" again ---", screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check - --watch", "standard input is no file")]
    [InlineData("print car.yaml --watch -o -", "standard output cannot take")]
    [InlineData("print car.yaml --open -o -", "`--open` shows one PDF")]
    [InlineData("print car.yaml --open --each", "`--open` shows one PDF")]
    [InlineData("print car.yaml --open --format svg", "`--open` belongs to the pages of a PDF")]
    [InlineData("stock car.yaml --watch", "has no option `--watch`")]
    public async Task What_does_not_go_together_is_refused(string command, string words)
    {
        var ran = await Run(command.Split(' '));
        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
    }
}
