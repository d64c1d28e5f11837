using System.Text;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Tests.Output;

/// <summary>What stands on the disk before, while and after a sheet is written.</summary>
public class OutputFileTests : AtTheTerminal
{
    private const string LeftName = "bendsheet-0123456789abcdef0123456789abcdef.part";

    [FactOnUnix]
    public async Task A_sheet_keeps_the_rights_that_I_gave_it()
    {
        const UnixFileMode Mine = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherExecute;
        await OldSheet();
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Place("car.pdf"), Mine);
            Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
            Assert.Equal(Mine, File.GetUnixFileMode(Place("car.pdf")));
        }
    }

    [Theory]
    [InlineData("print")]
    [InlineData("print", "--format", "svg")]
    public async Task What_is_read_only_stays_as_it_is(params string[] args)
    {
        var file = Typed(CarFiles.Sound);
        Assert.Equal(0, (await Run([.. args, file])).Code);
        var made = Directory.EnumerateFiles(Place("."), "car*").Where(name => !name.EndsWith(".yaml", StringComparison.Ordinal)).ToList();
        var before = made.Select(File.ReadAllText).ToList();
        made.ForEach(name => File.SetAttributes(name, FileAttributes.ReadOnly));
        Typed(CarFiles.Sound.Replace("test car", "another car", StringComparison.Ordinal));

        var ran = await Run([.. args, file]);
        Assert.Equal(3, ran.Code);
        Assert.Contains("it is read-only, and stays as it is", ran.Error, StringComparison.Ordinal);
        Assert.Equal(before, made.ConvertAll(File.ReadAllText));
        made.ForEach(name => File.SetAttributes(name, FileAttributes.Normal));
    }

    [Fact]
    public async Task A_sheet_that_another_program_has_changed_is_not_replaced()
    {
        await OldSheet();

        // What a viewer does that saves a remark: it adds to the end of the file (ISO 32000-1, 7.5.6).
        await File.AppendAllTextAsync(Place("car.pdf"), "9 0 obj\n<</Type/Annot>>\nendobj\ntrailer\n<</Prev 9>>\nstartxref\n9\n%%EOF\n");
        var changed = await File.ReadAllBytesAsync(Place("car.pdf"));
        var ran = await Run("print", Typed(CarFiles.Sound));
        Assert.Equal(3, ran.Code);
        Assert.Contains("another program has changed this sheet since it was printed", ran.Error, StringComparison.Ordinal);
        Assert.Equal(changed, await File.ReadAllBytesAsync(Place("car.pdf")));
    }

    [Fact]
    public async Task A_pdf_about_this_program_is_not_taken_for_a_sheet_of_it()
    {
        var others = $"%PDF-1.7\n1 0 obj\n<</Creator(BendSheet)/Producer(BendSheet)>>\nendobj\n{new string(' ', 500)}%%EOF\n";
        Typed(others, "car.pdf");
        Assert.Equal(3, (await Run("print", Typed(CarFiles.Sound))).Code);
        Assert.Equal(others, await File.ReadAllTextAsync(Place("car.pdf")));
    }

    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.4\n%\u00d3\u00f4\u00cc\u00e1\n% A sheet of BendSheet: printed again, it is replaced\n1 0 ob")]
    [InlineData("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- Drawn by BendSheet -->\n<svg")]
    [InlineData($"{FormatSchema.Modeline}\n# BendS")]
    public async Task What_a_killed_run_left_is_taken_away_by_the_next_print(string left)
    {
        await File.WriteAllTextAsync(Place(LeftName), left, Encoding.Latin1);
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData(LeftName, "my own notes")]
    [InlineData("bendsheet-1234.part", "")]
    [InlineData("bendsheet-.part", "")]
    [InlineData("bendsheet-0123456789abcdef0123456789abcdef.pdf", "")]
    [InlineData("bendsheet-0123456789abcdef0123456789abcdeg.part", "")]
    [InlineData("car.pdf.1.part", "")]
    public async Task What_is_not_ours_is_never_taken_away(string name, string text)
    {
        Typed(text, name);
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
        Assert.Equal(text, await File.ReadAllTextAsync(Place(name)));
    }

    /// <summary>To open a pipe for reading waits for somebody who writes.</summary>
    [FactOnUnix]
    public async Task A_pipe_by_the_name_of_a_left_over_stops_nothing()
    {
        using (var made = System.Diagnostics.Process.Start("mkfifo", Place(LeftName)))
        {
            await made.WaitForExitAsync();
        }

        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
        Assert.True(Path.Exists(Place(LeftName)));
    }

    [Fact]
    public async Task What_another_print_is_still_writing_is_left_alone()
    {
        using (var other = PartFile.Beside(Place("other.pdf"), mode: null))
        {
            other.Write("%PDF-1.4\n%....\n% A sheet of BendSheet: printed again, it is replaced\n"u8);
            Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
            other.MoveTo(Place("other.pdf"), replace: false);
        }

        Assert.Equal("car.pdf car.yaml other.pdf", InTheFolder());
    }

    [Fact]
    public void A_program_that_is_told_to_stop_leaves_nothing()
    {
        using var part = PartFile.Beside(Place("car.pdf"), mode: null);
        part.Write("half"u8);
        Assert.StartsWith("bendsheet-", InTheFolder(), StringComparison.Ordinal);
        part.Stop();
        Assert.Empty(InTheFolder());
        Assert.Throws<OperationCanceledException>(() => part.MoveTo(Place("car.pdf"), replace: true));
        Assert.Empty(InTheFolder());
    }

    [Fact]
    public void A_file_that_has_its_name_is_not_taken_away_any_more()
    {
        using (var part = PartFile.Beside(Place("car.pdf"), mode: null))
        {
            part.Write("whole"u8);
            part.MoveTo(Place("car.pdf"), replace: true);
            part.Stop();
        }

        Assert.Equal("car.pdf", InTheFolder());
    }

    [Fact]
    public void Two_that_write_beside_one_target_do_not_meet()
    {
        using var one = PartFile.Beside(Place("car.pdf"), mode: null);
        using var other = PartFile.Beside(Place("car.pdf"), mode: null);
        one.Write("one"u8);
        other.Write("other"u8);
        one.MoveTo(Place("car.pdf"), replace: false);
        Assert.Throws<IOException>(() => other.MoveTo(Place("car.pdf"), replace: false));
        Assert.Equal("one", File.ReadAllText(Place("car.pdf")));
    }

    [Fact]
    public void Of_eight_that_write_one_new_file_at_once_one_wins()
    {
        using var together = new Barrier(8);
        for (var round = 0; round < 50; round++)
        {
            var name = Place(FormattableString.Invariant($"new-{round}.yaml"));
            var said = new string?[together.ParticipantCount];
            var threads = Enumerable.Range(0, said.Length).Select(at => new Thread(() =>
            {
                together.SignalAndWait();
                said[at] = OutputFile.WriteNew(name, [(byte)('0' + at)]);
            })).ToList();
            threads.ForEach(thread => thread.Start());
            threads.ForEach(thread => thread.Join());
            var winner = Assert.Single(said.Index(), one => one.Item is null).Index;
            Assert.Equal(FormattableString.Invariant($"{winner}"), File.ReadAllText(name));
            Assert.All(said.OfType<string>(), why => Assert.StartsWith("it is there already", why, StringComparison.Ordinal));
        }

        Assert.DoesNotContain(".part", InTheFolder(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(28, "No space left on device : 'car/bendsheet-0123.part'", "the disk is full")]
    [InlineData(5, "Input/output error : 'car/bendsheet-0123.part'", "Input/output error")]
    [InlineData(5, "Input/output error \u001b[31m", "Input/output error \uFFFD[31m")]
    public void What_the_disk_says_names_no_file_that_nobody_asked_for(int code, string message, string said) =>
        Assert.Equal(said, OutputFile.Reason(new IOException(message, code)));
}
