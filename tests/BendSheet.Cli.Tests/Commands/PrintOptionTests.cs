using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BendSheet.Cli.Tests.Commands;

/// <summary>What I can ask of a print beside the file and its lines.</summary>
public class PrintOptionTests : AtTheTerminal
{
    [Fact]
    public async Task Before_several_lines_I_get_a_cover_with_all_of_them()
    {
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound))).Code);
        var cover = Pages("car.pdf")[0];
        Assert.Contains("0 of 2 lines made.", cover, StringComparison.Ordinal);
        Assert.Contains("front-left", cover, StringComparison.Ordinal);
        Assert.Contains("rear", cover, StringComparison.Ordinal);
        Assert.Contains("To buy", cover, StringComparison.Ordinal);
        Assert.Equal(["Cover", "front-left", "rear"], Outline("car.pdf"), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData()]
    [InlineData("--pages", "cover")]
    [InlineData("--each")]
    [InlineData("--line", "feed")]
    public async Task Of_rough_lines_alone_there_is_no_sheet_and_I_am_told(params string[] options)
    {
        var ran = await Run(
            [
                "print",
                Typed("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 15}\nlines: {feed: {rough: 420}, return: {rough: 500}}\n"),
                .. options,
            ]);
        Assert.Equal(1, ran.Code);
        Assert.Contains("no sheet was printed", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_measured_and_one_rough_line_have_a_cover()
    {
        var file = Typed("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 15}\nlines: {feed: {rough: 420}, rear: [{straight: 500}]}\n");
        Assert.Equal(0, (await Run("print", file, "--pages", "cover")).Code);
        Assert.Contains("feed (no template yet)", Pages("car.pdf")[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_with_one_line_has_no_cover()
    {
        var file = Typed(CarFiles.Sound);
        Assert.Equal(0, (await Run("print", file, "--line", "rear")).Code);
        Assert.Equal(["rear"], Outline("car-rear.pdf"), StringComparer.Ordinal);
        Assert.Equal(0, (await Run("print", file, "--line", "rear", "--pages", "cover", "--pages", "sheets")).Code);
        Assert.Equal(["rear"], Outline("car-rear.pdf"), StringComparer.Ordinal);

        var ran = await Run("print", file, "--line", "rear", "--pages", "cover", "-o", Place("cover.pdf"));
        Assert.Equal(2, ran.Code);
        Assert.Equal("bendsheet: there is no cover for one line alone: leave `--pages cover` out.\n", ran.Error);
        Assert.False(File.Exists(Place("cover.pdf")));
    }

    [Theory]
    [InlineData("Cover", "cover")]
    [InlineData("front-left rear", "sheets")]
    [InlineData("Cover front-left rear", "cover", "sheets")]
    [InlineData("Cover front-left rear", "sheets", "cover")]
    public async Task I_can_have_only_the_cover_or_only_the_sheets(string outline, params string[] pages)
    {
        var ran = await Run(["print", Typed(CarFiles.Sound), .. pages.SelectMany(word => new[] { "--pages", word })]);
        Assert.Equal(0, ran.Code);
        Assert.Equal(outline, string.Join(' ', Outline("car.pdf")));
    }

    [Theory]
    [InlineData("2 tags on 1 page", "Tags", "tags")]
    [InlineData("the commissioning page and 2 tags on 3 pages", "Before the first drive|Tags", "commissioning", "tags")]
    [InlineData("the commissioning page on 2 pages", "Before the first drive", "commissioning")]
    [InlineData("the picture of the car on 1 page", "Car", "car")]
    [InlineData("the cover and the commissioning page on 4 pages", "Cover|Car|Before the first drive", "cover", "commissioning")]
    [InlineData(
        "2 lines and the commissioning page on 6 pages",
        "Cover|Car|feed|front-left|Before the first drive", "cover", "sheets", "commissioning")]
    public async Task I_can_have_pages_about_the_whole_car(string told, string outline, params string[] pages)
    {
        var ran = await Run(["print", Typed(CarFiles.WithParts), .. pages.SelectMany(word => new[] { "--pages", word })]);
        Assert.Equal($"{Place("car.pdf")}: {told}. Print it at 100 %, not fitted to the page.\n", ran.Output);
        Assert.Equal(outline, string.Join('|', Outline("car.pdf")));
    }

    [Theory]
    [InlineData(
        "`--pages commissioning` is about the whole car: leave it or `--line` out.",
        CarFiles.WithParts,
        "--pages",
        "commissioning",
        "--line",
        "feed")]
    [InlineData(
        "`--pages car` is about the whole car: leave it or `--line` out.", CarFiles.WithParts, "--pages", "car", "--line", "feed")]
    [InlineData(
        "`--pages car` needs a line whose place is known, or `parts:` with their ports: add them, and mend what is wrong with the file, "
            + "or leave it out.",
        CarFiles.Sound,
        "--pages",
        "car")]
    [InlineData(
        "`--pages commissioning` needs `parts:` with their ports, so that it knows every joint: add them, and mend what is wrong with the "
            + "file, or leave it out.",
        CarFiles.Sound,
        "--pages",
        "commissioning")]
    public async Task Pages_about_the_whole_car_need_it_whole(string sentence, string file, params string[] options)
    {
        var ran = await Run(["print", Typed(file), .. options]);
        Assert.Equal(2, ran.Code);
        Assert.EndsWith($"bendsheet: {sentence}\n", ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task Of_the_cover_alone_I_am_told_that_it_is_the_cover()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--pages", "cover");
        Assert.Equal($"{Place("car.pdf")}: the cover on 1 page. Print it at 100 %, not fitted to the page.\n", ran.Output);
    }

    [Theory]
    [InlineData("mm", "in", "CUT LENGTH 6 27/32− in", "from the cut end of A")]
    [InlineData("in", "mm", "CUT LENGTH 4408.5 mm", "from the cut end of A")]
    public async Task I_can_have_the_other_unit_and_it_is_the_same_sheet(string unit, string wanted, string cut, string datum)
    {
        var file = Typed(CarFiles.Sound.Replace("units: mm", $"units: {unit}", StringComparison.Ordinal));
        await Run("print", file, "--line", "front-left", "-o", Place("own.pdf"));
        var ran = await Run("print", file, "--line", "front-left", "--units", wanted, "-o", Place("other.pdf"));
        Assert.Equal(0, ran.Code);
        var text = string.Concat(Pages("other.pdf"));
        Assert.Contains(Joined(cut), Joined(text), StringComparison.Ordinal);
        Assert.Contains(Joined($"marks in {(wanted is "in" ? "inches" : "millimetres")} {datum}"), Joined(text), StringComparison.Ordinal);
        Assert.Equal(SheetOf("own.pdf"), SheetOf("other.pdf"));
        Assert.Equal(PageWidth("own.pdf"), PageWidth("other.pdf"));
    }

    [Fact]
    public async Task I_can_have_a_file_for_each_line_beside_the_typed_one()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--each");
        Assert.Equal(0, ran.Code);
        Assert.Equal("car-front-left.pdf car-rear.pdf car.yaml", InTheFolder());
        Assert.Equal(["front-left"], Outline("car-front-left.pdf"), StringComparer.Ordinal);
        Assert.Equal(["rear"], Outline("car-rear.pdf"), StringComparer.Ordinal);
        Assert.Equal(2, ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        using var sheet = PdfDocument.Open(Place("car-rear.pdf"));
        Assert.Equal("test car: rear", sheet.Information.Title);
    }

    [Theory]
    [InlineData("bench.pdf", "bench-rear.pdf")]
    [InlineData("bench", "bench-rear.pdf")]
    [InlineData("sheets.of.it.PDF", "sheets.of.it-rear.pdf")]
    public async Task The_name_that_I_give_is_the_beginning_of_each_files_name(string named, string expected)
    {
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound), "--each", "--line", "rear", "-o", Place(named))).Code);
        Assert.Equal($"{expected} car.yaml".Split(' ').Order(StringComparer.Ordinal), InTheFolder().Split(' '), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("sheets", "")]
    [InlineData("sheets/", "")]
    [InlineData("sheets.pdf", "")]
    [InlineData("sheets", "-")]
    public async Task In_a_folder_that_I_name_the_files_have_the_typed_ones_name(string folder, string piped)
    {
        Directory.CreateDirectory(Place(folder));
        Piped = CarFiles.Sound;
        var file = piped.Length > 0 ? piped : Typed(CarFiles.Sound);
        Assert.Equal(0, (await Run("print", file, "--each", "--line", "rear", "-o", Place(folder))).Code);
        Assert.Equal(0, (await Run("print", file, "--format", "svg", "--line", "rear", "-o", Place(folder))).Code);
        var stem = piped.Length > 0 ? "rear" : "car-rear";
        Assert.Equal(
            [$"{stem}-end.svg", $"{stem}-pictorial.svg", $"{stem}-side.svg", $"{stem}-strip.svg", $"{stem}-top.svg", $"{stem}.pdf"],
            Directory.EnumerateFiles(Place(folder)).Select(Path.GetFileName).Order(StringComparer.Ordinal), StringComparer.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_not_a_name_to_begin_with()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--each", "-o", Place("nowhere/"));
        Assert.Equal(
            (3, $"bendsheet: {Place("nowhere/car-front-left.pdf")} was not written: there is no such folder\n"), (ran.Code, ran.Error));
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task Something_else_by_the_name_of_one_line_stays_and_what_is_written_already_stays_too()
    {
        var file = Typed(CarFiles.Sound);
        Typed("my notes", "car-rear.pdf");
        var ran = await Run("print", file, "--each");
        Assert.Equal(3, ran.Code);
        Assert.Equal(
            $"bendsheet: {Place("car-rear.pdf")} was not written: there is something else by this name, not a printed sheet: choose "
                + $"another name with -o\n", ran.Error);
        Assert.Equal("my notes", await File.ReadAllTextAsync(Place("car-rear.pdf")));
        Assert.Equal(["front-left"], Outline("car-front-left.pdf"), StringComparer.Ordinal);
    }

    [Theory]
    [InlineData(
        "`--each` writes a file for each line, and these pages belong to the car: leave `--each` or `--pages cover` out.",
        "--each",
        "--pages",
        "cover")]
    [InlineData(
        "`--each` writes a file for each line, and these pages belong to the car: leave `--each` or `--pages commissioning` out.",
        "--each",
        "--pages",
        "sheets",
        "--pages",
        "commissioning")]
    [InlineData(
        "`--each` writes a file for each line, which standard output cannot take: name a PDF with -o, or leave `--each` out.",
        "--each",
        "-o",
        "-")]
    [InlineData("`--pages` does not know `covr`: did you mean `cover`?", "--each", "--pages", "covr")]
    [InlineData("`--units` does not know `cm`: did you mean `mm`?", "--units", "cm")]
    public async Task What_does_not_go_together_is_told_in_one_sentence(string sentence, params string[] options)
    {
        var ran = await Run(["print", Typed(CarFiles.Sound), .. options]);
        Assert.Equal(2, ran.Code);
        Assert.Equal($"bendsheet: {sentence}\n`bendsheet print --help` shows what can be typed, with an example.\n", ran.Error);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task Two_lines_that_differ_only_in_capitals_do_not_write_over_each_other()
    {
        var file = Typed(CarFiles.Sound.Replace("front-left", "REAR", StringComparison.Ordinal));
        var ran = await Run("print", file, "--each");
        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "bendsheet: the lines `REAR` and `rear` would be one file on many disks: give them names that differ in more than capitals, "
                + "or leave `--each` out.\n", ran.Error);
        Assert.Equal("car.yaml", InTheFolder());
        Assert.Equal(0, (await Run("print", file)).Code);
    }

    [Fact]
    public async Task A_print_for_the_board_is_mirrored_and_says_so()
    {
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound), "--mirror")).Code);
        using var sheet = PdfDocument.Open(Place("car.pdf"));
        Assert.All(sheet.GetPages(), page =>
        {
            var letters = page.Letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value)).ToList();
            Assert.Equal(
                "Mirrored:copyitfacedown",
                string.Concat(letters.Where(letter => letter.EndBaseLine.X > letter.StartBaseLine.X).Select(letter => letter.Value)));
        });
    }

    [Fact]
    public async Task A_made_line_is_ticked_on_the_cover_and_counted()
    {
        var file = Typed(CarFiles.Sound.Replace("rear:\n", "rear:\n    made: true\n    rows:\n", StringComparison.Ordinal));
        Assert.Equal(0, (await Run("print", file, "--pages", "cover")).Code);
        var cover = Pages("car.pdf")[0];
        Assert.Contains("1 of 2 lines made.", cover, StringComparison.Ordinal);
        Assert.Contains("✓", cover, StringComparison.Ordinal);
    }

    private static string Joined(string text) => string.Concat(text.Where(character => !char.IsWhiteSpace(character)));

    private List<string> Pages(string name)
    {
        using var sheet = PdfDocument.Open(Place(name));
        return [.. sheet.GetPages().Select(page => ContentOrderTextExtractor.GetText(page))];
    }

    private List<string> Outline(string name)
    {
        using var sheet = PdfDocument.Open(Place(name));
        Assert.True(sheet.TryGetBookmarks(out var outline));
        return [.. outline.GetNodes().Select(node => node.Title)];
    }

    /// <summary>The six characters behind "sheet" in the foot.</summary>
    private string SheetOf(string name)
    {
        var text = Pages(name)[0];
        return text.Substring(text.LastIndexOf("sheet ", StringComparison.Ordinal) + "sheet ".Length, 6);
    }

    private double PageWidth(string name)
    {
        using var sheet = PdfDocument.Open(Place(name));
        return sheet.GetPage(1).Width;
    }
}
