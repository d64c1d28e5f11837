using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace BendSheet.Cli.Tests.Commands;

/// <summary>A file is useful while it is being typed: a mistake takes nothing from what it does not concern.</summary>
public class HalfTypedTests : AtTheTerminal
{
    private const string ElevenSlips = """
        project: Dray pick-up, brake lines
        units: mm

        tube: {od: 4.75, wall: 0,7, material: copper-nickel}

        bender:
          radius 15
          mark: start

        fittings:
          m10:
            flare: bubbel
            takes: 3
            slide-on: nut 16
            straight: 35mm

        lines:
          front left:
            from: master front
            to: {at: hose bracket, fitting: m10 }
            measured: on the outside
            rows:
              - straight: 110, bend: 45
              - {straight: 62,5, rotate: 90, bend: 30}
              - {straight 200, rotate: 45 left, bend: 90}
             - {straight: 80}

        """;

    /// <summary>Each of these once stopped the reading by itself. The tab is in front of the second row.</summary>
    private const string UnreadableSlips = """
        project: "Finch two-seater
        units: mm
        tube: {od: 4.75, wall: 0.7,, material: copper-nickel}
        bender: {radius: 15 mark: start grip: 12}
        lines:
          rear:
            from: {at: "tee, fitting: none}
            rows:
              - {straight: "2' 3-1/2"", bend: 45},
        \t  - {straight: 95, bendd: 60}
              - {straight: 38}
          front:
            made: yes
            rows: [{straight: 30}, {straigt: 20, bend: 40}]

        """;

    private const string HalfTyped = """
        units: mm
        tubes:
          thin: {od: 4.75}
          thick: {od: 6.35, wal: x}
        benders:
          small: {radius: 15}
          large: {radius: 25, mark: strat}
        templates:
          t: [{straight: 60, bend: 90}]
          u: [{use: t}, {straight: 60, bend: 4x}]
        lines:
          good: {tube: thin, bender: small, rows: [{straight: 100, bend: 45}, {straight: 100}]}
          bad: {tube: thin, bender: small, rows: [{straight: 100, bend: 45x}, {straight: 100}]}
          fat: {tube: thick, bender: small, rows: [{straight: 100, bend: 45}, {straight: 100}]}
          big: {tube: thin, bender: large, rows: [{straight: 100, bend: 45}, {straight: 100}]}
          by-u: {tube: thin, bender: small, rows: [{use: u}, {straight: 100}]}
          by-t: {tube: thin, bender: small, rows: [{use: t}, {straight: 100}]}
          like-good: {mirror: good}
          like-bad: {mirror: bad}
        wanted: {miss: 1 m, askew: 90}

        """;

    [Fact]
    public async Task All_eleven_slips_are_said_in_one_go()
    {
        var ran = await Run("check", Typed(ElevenSlips));
        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "4:24 7:3 12:12 14:15 21:5 21:15 23:28 24:20 25:10 25:32 26:6",
            string.Join(' ', ran.Error.Split('\n').Where(line => line.Contains(": error: ", StringComparison.Ordinal)).Select(PlaceOf)));
        Assert.EndsWith(": 0 of 1 line without a mistake; 11 errors\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tabs_quotes_and_commas_hide_nothing_behind_them()
    {
        var ran = await Run("check", Typed(UnreadableSlips.Replace("\\t", "\t", StringComparison.Ordinal)));
        Assert.Equal(2, ran.Code);
        Assert.Equal(
            "1:10 3:28 4:21 4:33 7:16 7:31 9:30 9:42 10:1 10:21 13:11 14:29 14:48",
            string.Join(' ', ran.Error.Split('\n').Where(line => line.Contains(": error: ", StringComparison.Ordinal)).Select(PlaceOf)));

        var printed = await Run("print", Typed(UnreadableSlips.Replace("\\t", "\t", StringComparison.Ordinal)));
        Assert.Equal(2, printed.Code);
        Assert.Contains("no sheet was printed", printed.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("good")]
    [InlineData("by-t")]
    [InlineData("like-good")]
    public async Task A_mistake_elsewhere_does_not_stop_the_line_that_I_ask_for(string line)
    {
        var file = Typed(HalfTyped);
        var ran = await Run("show", file, "--line", line);
        Assert.Equal(0, ran.Code);
        Assert.Equal(
            $"{file}: note: 5 mistakes elsewhere in the file: `check` without `--line` says them all [wrong-elsewhere]\n", ran.Error);
        Assert.StartsWith($"{line}: cut ", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("front", "benders: {hand: {radius: 14 inn}, other: {radius: 14}}", "bender: hand")]
    [InlineData("like-front", "benders: {hand: {radius: 14 inn}, other: {radius: 14}}", "bender: hand")]
    [InlineData("front", "benders: {hand: {radius: 14, grip: x}, other: {radius: 14}}", "bender: hand")]
    public async Task A_line_whose_tool_or_fitting_cannot_be_read_is_not_shown_and_says_why(string line, string tools, string words)
    {
        var file = Typed(
            $$"""
              units: mm
              tube: {od: 4.75}
              {{tools}}
              lines:
                front:
                  {{words}}
                  rows: [{straight: 100, bend: 30}, {straight: 50}]
                like-front: {mirror: front}
                rear: {bender: other, rows: [{straight: 100, bend: 30}, {straight: 50}]}

              """);
        var ran = await Run("show", file, "--line", line);
        Assert.Equal(2, ran.Code);
        Assert.DoesNotContain("elsewhere", ran.Error, StringComparison.Ordinal);
        Assert.Contains("error: ", ran.Error, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("show", file, "--line", "rear")).Code);
    }

    [Theory]
    [InlineData("bad")]
    [InlineData("fat")]
    [InlineData("big")]
    [InlineData("by-u")]
    [InlineData("like-bad")]
    public async Task A_mistake_in_what_a_line_is_made_of_stops_it(string line)
    {
        var ran = await Run("show", Typed(HalfTyped), "--line", line);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public async Task Without_a_name_every_line_that_can_be_is_printed()
    {
        var ran = await Run("print", Typed(HalfTyped));
        Assert.Equal(2, ran.Code);
        Assert.Contains("car.pdf: 3 lines on ", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith(
            "\nbendsheet: no sheet of bad, fat, big, by-u, like-bad: see above what is wrong with them.\n",
            ran.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Paper_says_which_lines_are_not_on_it()
    {
        Assert.Equal(2, (await Run("print", Typed(HalfTyped))).Code);
        using var sheet = PdfDocument.Open(Place("car.pdf"));
        var cover = ContentOrderTextExtractor.GetText(sheet.GetPage(1)).ReplaceLineEndings("\n");
        Assert.Contains("Not on these sheets\n", cover, StringComparison.Ordinal);
        Assert.Contains("bad: mistyped, 1 error, on line 13 of the file\n", cover, StringComparison.Ordinal);
        Assert.Contains("fat: mistyped, 2 errors, the first on line 4 of the file\n", cover, StringComparison.Ordinal);
        Assert.Contains("by-u: mistyped, 1 error, on line 10 of the file\n", cover, StringComparison.Ordinal);
        Assert.DoesNotContain("good: mistyped", cover, StringComparison.Ordinal);
        Assert.DoesNotContain('`', cover);
    }

    [Fact]
    public async Task One_line_that_can_be_made_gets_a_cover_that_names_those_that_cannot()
    {
        const string One = "units: mm\ntube: {od: 4.75}\nbender: {radius: 15}\nlines:\n  good: [{straight: 100}]\n"
            + "  tight: [{straight: 20, bend: 90}, {straight: 10, bend: 90}, {straight: 20}]\n";
        Assert.Equal(1, (await Run("print", Typed(One))).Code);
        using var sheet = PdfDocument.Open(Place("car.pdf"));
        var cover = ContentOrderTextExtractor.GetText(sheet.GetPage(1)).ReplaceLineEndings("\n");
        Assert.Contains("1 line, not made yet.", cover, StringComparison.Ordinal);
        Assert.Contains("tight: cannot be made as typed, ", cover, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_tool_can_be_learned_before_any_line_is_typed()
    {
        var ran = await Run("learn", Typed("units: mm\ntube: {od: 4.75}\nbender: {radius: 15, tests: [{pull: 93, got: 90}]}\n"));
        Assert.Equal((0, string.Empty), (ran.Code, ran.Error));
        Assert.NotEmpty(ran.Output);
    }

    [Fact]
    public async Task A_mistake_of_the_program_is_called_one_and_has_its_own_exit_code()
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.RunAsync(
            ["check", "-"],
            new(output, error, () => throw new InvalidOperationException("a defect"), () => Stream.Null, Colour: false));
        Assert.Equal(4, code);
        Assert.StartsWith("bendsheet: this is a mistake in bendsheet itself, not in your file", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("a defect", error.ToString(), StringComparison.Ordinal);
    }

    private static string PlaceOf(string line) =>
        string.Join(':', line[..line.IndexOf(": error: ", StringComparison.Ordinal)].Split(':')[^2..]);
}
