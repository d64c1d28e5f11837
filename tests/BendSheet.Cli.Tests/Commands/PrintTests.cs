using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BendSheet.Cli.Tests.Commands;

public class PrintTests : AtTheTerminal
{
    [Fact]
    public async Task I_get_a_sheet_of_every_line_beside_the_file()
    {
        var ran = await Run("print", Typed(CarFiles.Sound));
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
        var text = Text("car.pdf");
        Assert.Contains("front-left", text, StringComparison.Ordinal);
        Assert.Contains("rear", text, StringComparison.Ordinal);
        Assert.StartsWith($"{Place("car.pdf")}: 2 lines on ", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith(". Print it at 100 %, not fitted to the page.\n", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("car-rear.pdf", "rear")]
    [InlineData("car-rear-front-left.pdf", "rear", "front-left")]
    [InlineData("car-rear.pdf", "rear", "rear")]
    public async Task The_lines_that_I_name_are_in_the_name_of_the_sheet(string name, params string[] lines)
    {
        var ran = await Run(["print", Typed(CarFiles.Sound), .. lines.SelectMany(line => new[] { "--line", line })]);
        Assert.Equal(0, ran.Code);
        Assert.Equal($"{name} car.yaml", InTheFolder());
        Assert.Equal(lines.Contains("front-left", StringComparer.Ordinal), Text(name).Contains("front-left", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("my.car.yaml", "my.car.pdf")]
    [InlineData("car", "car.pdf")]
    public async Task Only_the_ending_of_the_name_is_replaced(string file, string sheet)
    {
        await Run("print", Typed(CarFiles.Sound, file));
        Assert.Contains(sheet, InTheFolder(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Full-size strip", "strips")]
    [InlineData("Full-size angle gauges", "gauges")]
    [InlineData("Full-size rotation dial", "dial")]
    [InlineData("", "clips")]
    [InlineData("Full-size strip, Full-size rotation dial", "strips", "dial", "strips")]
    [InlineData("Full-size strip, Full-size angle gauges, Full-size rotation dial", "all")]
    public async Task I_get_the_full_size_pages_that_I_ask_for(string parts, params string[] words)
    {
        var ran = await Run(
            [
                "print", Typed(CarFiles.Sound), "--line", "front-left", "-o", Place("bench.pdf"),
                .. words.SelectMany(word => new[] { "--full-size", word }),
            ]);
        Assert.Equal(0, ran.Code);
        using var sheet = PdfDocument.Open(Place("bench.pdf"));
        Assert.True(sheet.TryGetBookmarks(out var outline));
        Assert.Equal(parts, string.Join(", ", Assert.Single(outline.Roots).Children.Select(part => part.Title)));
    }

    [Fact]
    public async Task I_get_a_panel_for_each_thing_done_when_I_ask_for_the_steps()
    {
        var file = Typed(CarFiles.Sound);
        Assert.Equal(0, (await Run("print", file, "-o", Place("plain.pdf"))).Code);
        Assert.DoesNotContain("Steps – rear", Text("plain.pdf"), StringComparison.Ordinal);
        Assert.Equal(0, (await Run("print", file, "--steps", "-o", Place("steps.pdf"))).Code);
        using var printed = PdfDocument.Open(Place("steps.pdf"));
        var panels = string.Join('\n', printed.GetPages().Select(page => ContentOrderTextExtractor.GetText(page))
            .Where(page => page.Contains("Steps – rear", StringComparison.Ordinal)));
        Assert.All(["Cut", "Mark", "Bend 1", "Bend 2", "Finish"], heading => Assert.Contains(heading, panels, StringComparison.Ordinal));
        Assert.DoesNotContain("Bend 3", panels, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_told_which_full_size_pages_there_are()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--full-size", "posters");
        Assert.Equal(2, ran.Code);
        Assert.Contains("strips", ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task I_can_name_the_sheet()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "-o", Place("bench.pdf"));
        Assert.Equal(0, ran.Code);
        Assert.Equal("bench.pdf car.yaml", InTheFolder());
        Assert.Contains("front-left", Text("bench.pdf"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_can_have_the_sheet_on_standard_output_and_nothing_else_there()
    {
        var file = Typed(CarFiles.Sound);
        var ran = await Run("print", file, "-o", "-");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Equal("car.yaml", InTheFolder());
        await Run("print", file);
        Assert.Equal(await File.ReadAllBytesAsync(Place("car.pdf")), ran.Bytes);
    }

    [Fact]
    public async Task For_measurements_from_standard_input_I_have_to_name_the_sheet()
    {
        Piped = CarFiles.Sound;
        var ran = await Run("print", "-");
        Assert.Equal(2, ran.Code);
        Assert.Equal("bendsheet: name the PDF to write with -o, because the measurements come from standard input.\n", ran.Error);
        Assert.Equal(0, (await Run("print", "-", "-o", Place("piped.pdf"))).Code);
        Assert.Equal("piped.pdf", InTheFolder());
    }

    [Theory]
    [InlineData("mm", null, null, "a4")]
    [InlineData("in", null, null, "letter")]
    [InlineData("mm", "letter", null, "letter")]
    [InlineData("in", "a4", null, "a4")]
    [InlineData("mm", "letter", "a4", "a4")]
    [InlineData("mm", null, "letter", "letter")]
    public async Task The_paper_is_mine_or_else_the_files_or_else_that_of_its_unit(
        string unit, string? ofFile, string? asked, string expected)
    {
        var text = CarFiles.Sound.Replace("units: mm", $"units: {unit}", StringComparison.Ordinal);
        var file = Typed(ofFile is null ? text : $"paper: {ofFile}\n{text}");
        var ran = await Run(asked is null ? ["print", file] : ["print", file, "--paper", asked]);
        Assert.Equal(0, ran.Code);
        using var sheet = PdfDocument.Open(Place("car.pdf"));
        var (width, height) = string.Equals(expected, "a4", StringComparison.Ordinal) ? (210 / 25.4 * 72, 297 / 25.4 * 72) : (612, 792);
        Assert.All(sheet.GetPages(), page =>
        {
            Assert.Equal(width, page.Width, 2);
            Assert.Equal(height, page.Height, 2);
        });
    }

    [Theory]
    [InlineData(CarFiles.LegTooShort, "rear", 1)]
    [InlineData(CarFiles.Misspelt, "front-left", 2)]
    public async Task A_line_with_an_error_is_not_printed_and_the_old_sheet_of_it_stays(string text, string line, int code)
    {
        var old = await OldSheet();
        var ran = await Run("print", Typed(text), "--line", line, "-o", Place("car.pdf"));
        Assert.Equal(code, ran.Code);
        Assert.EndsWith("\nbendsheet: no sheet was printed.\n", ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Output);
        Assert.Equal(old, await File.ReadAllBytesAsync(Place("car.pdf")));
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData(CarFiles.LegTooShort, "rear", 1)]
    [InlineData(CarFiles.Misspelt, "front-left", 2)]
    public async Task One_bad_line_hides_no_good_one_and_I_am_told_which_is_missing(string text, string missing, int code)
    {
        var ran = await Run("print", Typed(text));
        Assert.Equal(code, ran.Code);
        Assert.EndsWith($"\nbendsheet: no sheet of {missing}: see above what is wrong with it.\n", ran.Error, StringComparison.Ordinal);
        Assert.Contains("car.pdf: 1 line on 2 pages", ran.Output, StringComparison.Ordinal);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_line_that_can_be_made_is_printed_beside_one_that_cannot_when_I_ask_for_it_alone()
    {
        var ran = await Run("print", Typed(CarFiles.LegTooShort), "--line", "front-left");
        Assert.Equal(0, ran.Code);
        Assert.Equal("car-front-left.pdf car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("lines: {}")]
    [InlineData("lines: {}", "--line", "rear")]
    public async Task Without_a_line_there_is_no_sheet(string lines, params string[] more)
    {
        var ran = await Run(["print", Typed($"units: mm\ntube: {{od: 5}}\nbender: {{radius: 15}}\n{lines}\n"), .. more]);
        Assert.Equal(2, ran.Code);
        Assert.Contains("error: `lines` has a name for each line", ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_new_sheet_takes_the_place_of_the_old_one()
    {
        var file = Typed(CarFiles.Sound);
        await OldSheet();
        Assert.DoesNotContain("front-left", Text("car.pdf"), StringComparison.Ordinal);
        Assert.Equal(0, (await Run("print", file)).Code);
        Assert.Contains("front-left", Text("car.pdf"), StringComparison.Ordinal);
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("notes.txt", "there is something else by this name, not a printed sheet: choose another name with -o")]
    [InlineData("somebody-elses.pdf", "there is something else by this name, not a printed sheet: choose another name with -o")]
    [InlineData("empty", "there is something else by this name, not a printed sheet: choose another name with -o")]
    [InlineData("car.yaml", "there is something else by this name, not a printed sheet: choose another name with -o")]
    [InlineData("folder", "this is a folder: name a file in it")]
    [InlineData("nowhere/car.pdf", "there is no such folder")]
    [InlineData("notes.txt/car.pdf", "there is no such folder")]
    public async Task I_am_told_why_a_place_does_not_do_and_nothing_there_changes(string name, string why)
    {
        var file = Typed(CarFiles.Sound);
        Typed("my notes", "notes.txt");
        Typed(string.Empty, "empty");
        Typed("%PDF-1.4 an invoice for a copy of BendSheet", "somebody-elses.pdf");
        Directory.CreateDirectory(Place("folder"));
        var before = InTheFolder();

        var ran = await Run("print", file, "-o", Place(name));
        Assert.Equal(3, ran.Code);
        Assert.Equal($"bendsheet: {Place(name)} was not written: {why}\n", ran.Error);
        Assert.Empty(ran.Output);
        Assert.Equal(before, InTheFolder());
        Assert.Equal(CarFiles.Sound, await File.ReadAllTextAsync(file));
        Assert.Equal("my notes", await File.ReadAllTextAsync(Place("notes.txt")));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Place("folder")));
    }

    [FactOnUnix]
    public async Task I_am_told_that_a_device_is_no_sheet()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "-o", "/dev/full");
        Assert.Equal(3, ran.Code);
        Assert.Equal(
            "bendsheet: /dev/full was not written: there is something else by this name, not a printed sheet: "
                + "choose another name with -o\n",
            ran.Error);
    }

    [Fact]
    public async Task An_empty_name_is_no_name()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "-o", "");
        Assert.Equal(3, ran.Code);
        Assert.Equal("bendsheet:  was not written: this is no name for a file\n", ran.Error);
    }

    [Fact]
    public async Task The_measurements_are_not_overwritten_through_a_link_to_them()
    {
        var file = Typed(CarFiles.Sound);
        File.CreateSymbolicLink(Place("link.pdf"), file);
        Assert.Equal(3, (await Run("print", file, "-o", Place("link.pdf"))).Code);
        Assert.Equal(CarFiles.Sound, await File.ReadAllTextAsync(file));
    }

    [Fact]
    public async Task A_link_to_a_sheet_stays_a_link()
    {
        Directory.CreateDirectory(Place("sheets"));
        await OldSheet("sheets/real.pdf");
        File.CreateSymbolicLink(Place("link.pdf"), Place("sheets/real.pdf"));
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound), "-o", Place("link.pdf"))).Code);
        Assert.Equal(Place("sheets/real.pdf"), new FileInfo(Place("link.pdf")).LinkTarget);
        Assert.Contains("front-left", Text("sheets/real.pdf"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_as_long_as_a_disk_takes_will_do()
    {
        var name = new string('x', 251) + ".pdf";
        await OldSheet(name);
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound), "-o", Place(name))).Code);
        Assert.Contains("front-left", Text(name), StringComparison.Ordinal);
        Assert.Equal($"car.yaml {name}", InTheFolder());
    }

    [Fact]
    public async Task A_pdf_on_a_terminal_is_refused()
    {
        Width = 80;
        var ran = await Run("print", Typed(CarFiles.Sound), "-o", "-");
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Bytes);
        Assert.Contains("a PDF cannot be read on a terminal", ran.Error, StringComparison.Ordinal);

        Width = null;
        ran = await Run("print", Place("car.yaml"), "-o", "-");
        Assert.Equal("%PDF-"u8, ran.Bytes.AsSpan(0, 5));
    }

    [Fact]
    public async Task I_am_told_which_sign_the_font_does_not_have()
    {
        var ran = await Run("print", Typed(CarFiles.Sound.Replace("test car", "test \U0001F697", StringComparison.Ordinal)));
        Assert.Equal(0, ran.Code);
        Assert.Matches("^bendsheet: the font has no sign for .+; □ stands in its place.\n$", ran.Error);
    }

    [Theory]
    [InlineData("管", "箱", "□")]
    [InlineData("left管", "left箱", "left□")]
    [InlineData("rear", "re\u00adar", "rear")]
    public async Task I_am_told_when_two_names_come_out_alike(string one, string other, string printed)
    {
        var file =
            Typed($"units: mm\ntube: {{od: 3/16 in}}\nbender: {{radius: 9/16 in}}\nlines:\n  {one}: [{{straight: 300}}]\n  third: "
                + $"[{{straight: 300}}]\n  {other}: {{rough: 900}}\n");
        var warning = $"bendsheet: the lines `{one}` and `{other}` both print as `{printed}`, and nobody can tell them apart on paper: "
            + "give them names that differ in letters, figures or signs that print.\n";
        foreach (var options in new[] { "--pages cover", "--each", "--format svg" })
        {
            var ran = await Run(["print", file, .. options.Split(' ')]);
            Assert.Equal(0, ran.Code);
            Assert.Contains(warning, ran.Error, StringComparison.Ordinal);
        }

        Assert.DoesNotContain(
            "tell them apart", (await Run("print", file, "--line", one, "--line", "third")).Error, StringComparison.Ordinal);
    }

    private string Text(string name)
    {
        using var sheet = PdfDocument.Open(Place(name));
        return string.Concat(sheet.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)));
    }
}
