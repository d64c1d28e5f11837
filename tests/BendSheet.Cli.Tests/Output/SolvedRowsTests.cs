using System.Text.Json;

namespace BendSheet.Cli.Tests.Output;

/// <summary>Rows written back are the same route: pasted into a file they give the same tube.</summary>
public class SolvedRowsTests : AtTheTerminal
{
    private const string Top =
        "units: in\ntube: {od: 5 mm}\nbenders:\n  hand: {radius: 15 mm}\n  small: {radius: 10 mm}\n  coil former: {radius: "
            + "25.064845557531 mm}\nwire: {radius: 4 mm, diameter: 2 mm}\n";

    [Theory]
    [InlineData("bender: hand\n    corners: [[0, 0, 0], [5, 0, 0], [7, 3, 0], [7, 3, 4.25], [2, 1, 9]]")]
    [InlineData("bender: hand\n    legs: [{forward: 5}, {up: 3, left: 2}, {back: 4}, {down: 6, right: 1}]")]
    [InlineData("bender: hand\n    measured: outside\n    rows: [{straight: 5, bend: 33.3}, {straight: 4 3/16, rotate: 77 ccw, bend: 90, "
        + "bender: small, note: \"a \\\"tight\\\" corner: mind\"}, {straight: 6}]")]
    [InlineData("bender: hand\n    rows: [{straight: 5, offset: 1, bend: 30}, {saddle: 1, bends: 3, bend: 22.5, straight: 4}, {saddle: "
        + "2, bends: 4, bend: 45, width: 3, straight: 4}, {straight: 5}]")]
    [InlineData("bender: hand\n    rows: [{straight: 3, coil: 2, radius: 25 mm, pitch: 8 mm, winds: ccw}, {straight: 3, bend: 20}, "
        + "{straight: 4}]")]
    [InlineData("bender: hand\n    measured: straight\n    rows: [{straight: 2, bend: 200}, {straight: 2, rotate: 20 cw, bend: 60}, "
        + "{straight: 2, bend: 40}, {straight: 2}]")]
    public async Task Pasted_into_a_file_they_are_the_same_tube(string route)
    {
        var first = Typed($"{Top}lines:\n  a:\n    {route}\n");
        var rows = await Run("show", first, "--format", "rows");
        Assert.Equal(0, rows.Code);
        var second = Typed(Top + rows.Output, "pasted.yaml");

        var (wanted, pasted) = (await Bends(first), await Bends(second));
        Assert.Equal(wanted.Length, pasted.Length, 9);
        Assert.Equal(wanted.Figures.Count, pasted.Figures.Count);
        Assert.All(wanted.Figures.Zip(pasted.Figures), pair => Assert.Equal(pair.First, pair.Second, 8));
    }

    private const string TwoCoils = """
        lines:
          a:
            rows: [{straight: 60, bend: 45}, {straight: 120, coil: 2, radius: 30, pitch: 8}, {straight: 90}]
          b:
            rows: [{straight: 120, coil: 1, radius: 20, pitch: 8}, {straight: 90, coil: 1, radius: 30, pitch: 8}, {straight: 90}]

        """;

    /// <summary>What the remark says is done by hand here, as somebody would who has a single bender without a name.</summary>
    [Fact]
    public async Task Beside_a_bender_without_a_name_I_am_told_how_to_write_both_tools()
    {
        var first = Typed("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 15, grip: 1}\n" + TwoCoils);
        var rows = await Run("show", first, "--format", "rows");
        Assert.Equal(0, rows.Code);
        const string Remark =
            "# at the top of the file, in place of `bender: {…}`: `benders: {hand: {…}, coil former 1: {radius: 30.054037964609 mm}, "
                + "coil former 2: {radius: 20.081056946914 mm}}`, with what stood after `bender` between the braces of `hand`\n";
        Assert.Contains(Remark, rows.Output, StringComparison.Ordinal);
        Assert.Equal(2, rows.Output.Split("    bender: hand\n").Length - 1);
        var tools = Remark.Split('`')[3].Replace("{…}", "{radius: 15, grip: 1}", StringComparison.Ordinal);
        var second = Typed($"units: mm\ntube: {{od: 3/16 in}}\n{tools}\n{rows.Output}", "pasted.yaml");
        var (wanted, pasted) = (await Bends(first), await Bends(second));
        Assert.Equal(wanted.Length, pasted.Length, 9);
        Assert.All(wanted.Figures.Zip(pasted.Figures, (one, other) => (one, other)), pair => Assert.Equal(pair.one, pair.other, 8));
    }

    [Fact]
    public async Task Two_formers_of_one_file_have_two_names_and_none_is_said_twice()
    {
        var lines = TwoCoils.Replace("    rows:", "    bender: coil former\n    rows:", StringComparison.Ordinal);
        var ran = await Run(
            "show",
            Typed("units: mm\ntube: {od: 3/16 in}\nbenders: {coil former: {radius: 15}, other: {radius: 10}}\n" + lines),
            "--format", "rows");
        Assert.Equal(0, ran.Code);
        Assert.Contains(
            "# with `coil former 1: {radius: 30.054037964609 mm}, coil former 2: {radius: 20.081056946914 mm}` in `benders:`\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Contains("bender: coil former 1}", ran.Output, StringComparison.Ordinal);
        Assert.Contains("bender: coil former 2}", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_sample_line_is_written_back()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--format", "rows");
        Assert.Equal(0, ran.Code);
        Assert.Contains("  front-left:\n    measured: corner\n    rows:\n      - {straight: ", ran.Output, StringComparison.Ordinal);
    }

    private async Task<(double Length, List<double> Figures)> Bends(string file)
    {
        var ran = await Run("show", file, "--format", "json");
        Assert.Equal(0, ran.Code);
        using var json = JsonDocument.Parse(ran.Output);
        var line = json.RootElement.GetProperty("lines")[0];
        var figures = line.GetProperty("bends").EnumerateArray()
            .SelectMany(
                bend => new[] { "bend", "rotate", "radius", "start", "end", "lever" }.Select(name => bend.GetProperty(name).GetDouble()));
        return (line.GetProperty("developedLength").GetDouble(), [.. figures]);
    }
}
