using System.Xml.Linq;

namespace BendSheet.Cli.Tests.Commands;

public class PrintDrawingsTests : AtTheTerminal
{
    [Fact]
    public async Task I_get_each_drawing_of_each_line_beside_the_file()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--format", "svg");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal(
            "car-front-left-end.svg car-front-left-pictorial.svg car-front-left-side.svg car-front-left-strip.svg car-front-left-top.svg "
            + "car-rear-end.svg car-rear-pictorial.svg car-rear-side.svg car-rear-strip.svg car-rear-top.svg car.yaml",
            InTheFolder());
        Assert.Equal(10, ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.StartsWith($"{Place("car-front-left-strip.svg")}\n", ran.Output, StringComparison.Ordinal);
        Assert.Equal("svg", XDocument.Load(Place("car-rear-pictorial.svg")).Root!.Name.LocalName);
    }

    [Fact]
    public async Task A_line_by_the_name_of_the_picture_of_the_car_loses_no_drawing()
    {
        const string Car = """
            tube: {od: 3/16 in, wall: 0.028 in}
            bender: {radius: 15}
            units: mm
            wanted: {miss: 1 m, askew: 90}
            lines:
              car:
                start: {at: {forward: 0, left: 0, up: 0}, heading: forward, towards: left}
                rows: [{straight: 200, bend: 90}, {straight: 80}]
              CAR: {rows: [{straight: 200, bend: 90}, {straight: 80}]}

            """;
        var ran = await Run("print", Typed(Car), "--format", "svg");
        Assert.Equal(
            "car-CAR-2-end.svg car-CAR-2-pictorial.svg car-CAR-2-side.svg car-CAR-2-strip.svg car-CAR-2-top.svg car-car-end.svg "
            + "car-car-pictorial.svg car-car-side.svg car-car-strip.svg car-car-top.svg car-car.svg car.yaml",
            InTheFolder());
        Assert.Equal(11, ran.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        var drawn = XDocument.Load(Place("car-car.svg")).Root!;
        Assert.Contains("from the left", drawn.Value, StringComparison.Ordinal);
        Assert.Contains("CAR (", drawn.Value, StringComparison.Ordinal);

        // Of one line alone there is no picture of the car.
        File.Delete(Place("car-car.svg"));
        await Run("print", Place("car.yaml"), "--format", "svg", "--line", "car");
        Assert.False(File.Exists(Place("car-car.svg")));
    }

    [Theory]
    [InlineData("drawings", "drawings/car-rear-strip.svg")]
    [InlineData("bench", "bench-rear-strip.svg")]
    [InlineData("bench.svg", "bench-rear-strip.svg")]
    public async Task I_can_name_a_folder_or_what_the_names_begin_with(string name, string expected)
    {
        Directory.CreateDirectory(Place("drawings"));
        var ran = await Run("print", Typed(CarFiles.Sound), "--format", "svg", "--line", "rear", "-o", Place(name));
        Assert.Equal(0, ran.Code);
        Assert.True(File.Exists(Place(expected)));
    }

    [Fact]
    public async Task A_new_drawing_takes_the_place_of_the_old_one_and_of_nothing_else()
    {
        var file = Typed(CarFiles.Sound);
        await Run("print", file, "--format", "svg", "--line", "rear");
        var drawn = await File.ReadAllTextAsync(Place("car-rear-strip.svg"));
        Assert.Equal(0, (await Run("print", file, "--format", "svg", "--line", "rear")).Code);
        Assert.Equal(drawn, await File.ReadAllTextAsync(Place("car-rear-strip.svg")));

        // Another program has written it again: it begins in another way, whatever else is still in it.
        var edited = drawn.Replace("<!-- Drawn by BendSheet -->\n", string.Empty, StringComparison.Ordinal) + "<!-- Drawn by BendSheet -->";
        Typed(edited, "car-rear-strip.svg");
        var ran = await Run("print", file, "--format", "svg", "--line", "rear");
        Assert.Equal(3, ran.Code);
        Assert.Equal(
            $"bendsheet: {Place("car-rear-strip.svg")} was not written: there is something else by this name, not a drawing of this "
                + $"program: choose another name with -o\n",
            ran.Error);
        Assert.Equal(edited, await File.ReadAllTextAsync(Place("car-rear-strip.svg")));
    }

    [Fact]
    public async Task There_are_too_many_for_standard_output()
    {
        Piped = CarFiles.Sound;
        const string Why = "bendsheet: name a folder for the drawings with -o, because there are several.\n";
        Assert.Equal((2, Why), Ended(await Run("print", "-", "--format", "svg")));
        Assert.Equal((2, Why), Ended(await Run("print", Typed(CarFiles.Sound), "--format", "svg", "-o", "-")));
        Assert.Equal(0, (await Run("print", "-", "--format", "svg", "-o", Place("piped"))).Code);
        Assert.True(File.Exists(Place("piped-rear-end.svg")));
    }

    [Fact]
    public async Task I_am_told_when_the_folder_is_not_there()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--format", "svg", "-o", Place("nowhere/"));
        Assert.Equal(3, ran.Code);
        Assert.Equal(
            $"bendsheet: no drawing was written: there is no folder {Place("nowhere")}: make it first, or name one that is there with -o\n",
            ran.Error);
        Assert.Equal(3, (await Run("print", Typed(CarFiles.Sound), "--format", "svg", "-o", Place("nowhere/bench"))).Code);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_file_that_is_there_is_no_place_for_several_drawings()
    {
        var file = Typed(CarFiles.Sound);
        var ran = await Run("print", file, "--format", "svg", "-o", file);
        Assert.Equal(
            (2, $"bendsheet: {file} is a file, and there are several drawings: name a folder with -o, or what their names are to begin "
                + $"with, such as `-o drawing` for drawing-front-left-strip.svg\n"),
            Ended(ran));
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("out.pdf", "bendsheet: out.pdf is the name of a PDF, and there are several drawings: ")]
    [InlineData("", "bendsheet: there is no name after -o, and there are several drawings: ")]
    public async Task A_name_that_no_drawing_can_begin_with_is_said(string name, string begins)
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "--format", "svg", "-o", name);
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(begins, ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_drawings_name_for_a_PDF_is_asked_about()
    {
        var ran = await Run("print", Typed(CarFiles.Sound), "-o", Place("strip.svg"));
        Assert.Equal(
            (2, $"bendsheet: {Place("strip.svg")} is the name of a drawing: say `--format svg` for drawings, or name a PDF\n"), Ended(ran));
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Theory]
    [InlineData("--pages cover")]
    [InlineData("--paper a4")]
    [InlineData("--each")]
    [InlineData("--mirror")]
    [InlineData("--full-size all")]
    public async Task What_belongs_to_pages_is_not_left_out_in_silence(string option)
    {
        var ran = await Run(["print", Typed(CarFiles.Sound), "--format", "svg", .. option.Split(' ')]);
        Assert.Equal(2, ran.Code);
        Assert.StartsWith(
            $"bendsheet: `{option.Split(' ')[0]}` belongs to the pages of a PDF, and drawings have none: leave it or `--format svg` out.\n",
            ran.Error, StringComparison.Ordinal);
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task A_mistake_in_the_plumbing_asks_for_the_same_end_as_with_a_pdf()
    {
        var file =
            Typed($"{CarFiles.Sound}parts: {{wheel: {{kind: wheel-cylinder}}, pedal: {{kind: master-cylinder, ports: {{out: {{circuit: "
                + $"main}}}}}}}}\n");
        var (pdf, svg) = (await Run("print", file), await Run("print", file, "--format", "svg"));
        Assert.Equal(1, svg.Code);
        Assert.Equal(Ended(pdf), Ended(svg));
        Assert.Contains("[wheel-not-reached]", svg.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(Place("car-rear-strip.svg")));
        Assert.Equal(0, (await Run("print", file, "--format", "svg", "--line", "rear")).Code);
    }

    [Fact]
    public async Task Where_only_rough_lines_are_there_is_nothing_to_draw()
    {
        var file = Typed("units: mm\ntube: {od: 3/16 in}\nlines: {rear: {rough: 2.4 m}}\n");
        var (pdf, svg) = (await Run("print", file), await Run("print", file, "--format", "svg"));
        Assert.Equal(1, svg.Code);
        Assert.Equal(Ended(pdf), Ended(svg));
        Assert.Equal("car.yaml", InTheFolder());
    }

    [Fact]
    public async Task Drawings_are_in_the_unit_that_I_ask_for()
    {
        Assert.Equal(
            0, (await Run(
                "print", Typed(CarFiles.Sound), "--format", "svg", "--line", "rear", "--units", "in", "-o", Place("inches"))).Code);
        Assert.Equal(0, (await Run("print", Typed(CarFiles.Sound), "--format", "svg", "--line", "rear", "-o", Place("metric"))).Code);
        var (inches, metric) = (await File.ReadAllTextAsync(Place("inches-rear-strip.svg")), await File.ReadAllTextAsync(
            Place("metric-rear-strip.svg")));
        Assert.NotEqual(inches, metric, StringComparer.Ordinal);
    }

    private static (int Code, string Error) Ended(Ran ran) => (ran.Code, ran.Error);
}
