using System.Text.Json;

namespace BendSheet.Cli.Tests.Output;

public class SolvedJsonTests : AtTheTerminal
{
    [Fact]
    public async Task The_names_are_those_of_the_file_format_page_in_its_order()
    {
        var (_, json) = await Show(CarFiles.LegTooShort);
        Assert.Equal("project lines findings", Names(json));
        var line = json.GetProperty("lines")[0];
        Assert.Equal(
            "name tube made legs straights corners centrelineLength developedLength cutLength bends flaredFirst clips survey piece "
                + "findings",
            Names(line));
        Assert.Equal(
            "number bend rotate dial lineAt pull radius bender setback arc gain start middle end mark step held swing lever",
            Names(line.GetProperty("bends")[0]));
        Assert.Equal("severity rule message file line column", Names(json.GetProperty("findings")[0]));
        Assert.Equal("severity rule message file line column", Names(json.GetProperty("lines")[1].GetProperty("findings")[0]));
    }

    [Fact]
    public async Task Figures_are_millimetres_and_degrees_unrounded()
    {
        var (ran, json) = await Show(CarFiles.Sound);
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Equal("test car", json.GetProperty("project").GetString());
        Assert.Equal(0, json.GetProperty("findings").GetArrayLength());

        var line = json.GetProperty("lines")[0];
        var arc = Math.PI / 2 * 15;
        Assert.Equal("front-left", line.GetProperty("name").GetString());
        Assert.Equal([100, 80], Figures(line.GetProperty("legs")));
        AssertFigures([85, 65], line.GetProperty("straights"));
        AssertFigures([0, 0, 0], line.GetProperty("corners")[0]);
        AssertFigures([100, 0, 0], line.GetProperty("corners")[1]);
        Assert.Equal(3, line.GetProperty("corners").GetArrayLength());
        foreach (var length in new[] { "centrelineLength", "developedLength", "cutLength" })
        {
            Assert.Equal(150 + arc, line.GetProperty(length).GetDouble(), 9);
        }

        var bend = line.GetProperty("bends")[0];
        AssertFigures([1, 90, 0, 0, 0, 90, 15], bend, "number", "bend", "rotate", "dial", "lineAt", "pull", "radius");
        AssertFigures(
            [15, arc, 30 - arc, 85, 85 + (arc / 2), 85 + arc, 85], bend, "setback", "arc", "gain", "start", "middle", "end", "mark");

        // The rest of the tube turns about the end of the bend.
        Assert.Equal(65 * Math.PI / 180, bend.GetProperty("lever").GetDouble(), 9);
    }

    [Fact]
    public async Task Clips_are_places_on_the_straight_tube_from_the_cut_end_of_A()
    {
        var (_, json) = await Show("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 15}\nclips: {every: 300, from-ends: 60}\nlines:\n  "
            + "a: [{straight: 420}]\n  b: {mirror: a, clips: none}\n");
        Assert.Equal([60, 360], Figures(json.GetProperty("lines")[0].GetProperty("clips")));
        Assert.Empty(json.GetProperty("lines")[1].GetProperty("clips").EnumerateArray());
    }

    [Fact]
    public async Task A_finding_about_a_line_stands_with_the_line_and_with_the_file()
    {
        var (ran, json) = await Show(CarFiles.LegTooShort);
        Assert.Equal(1, ran.Code);
        Assert.Equal(0, json.GetProperty("lines")[0].GetProperty("findings").GetArrayLength());
        var ofLine = json.GetProperty("lines")[1].GetProperty("findings");
        var ofFile = json.GetProperty("findings");
        Assert.Equal(
            ofFile.GetRawText().Replace(" ", string.Empty, StringComparison.Ordinal), ofLine.GetRawText()
                .Replace(" ", string.Empty, StringComparison.Ordinal));
        Assert.Equal(1, ofFile.GetArrayLength());
        Assert.Equal("error", ofFile[0].GetProperty("severity").GetString());
        Assert.Equal("leg-too-short", ofFile[0].GetProperty("rule").GetString());
        Assert.Equal(Place("car.yaml"), ofFile[0].GetProperty("file").GetString());
        Assert.Equal(11, ofFile[0].GetProperty("line").GetInt32());
        Assert.Equal(18, ofFile[0].GetProperty("column").GetInt32());
        Assert.StartsWith(
            "leg 2 is 10.0 mm (0.394 in) too short for its two bends (90° and 90°)", ofFile[0].GetProperty("message")
                .GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_line_that_cannot_be_made_I_get_what_is_known()
    {
        var (_, json) = await Show(CarFiles.LegTooShort);
        var line = json.GetProperty("lines")[1];
        Assert.Equal([60, 20, 50], Figures(line.GetProperty("legs")));
        AssertFigures([45, -10, 35], line.GetProperty("straights"));
        Assert.Equal(JsonValueKind.Null, line.GetProperty("cutLength").ValueKind);
        Assert.Equal(JsonValueKind.Null, line.GetProperty("developedLength").ValueKind);
        Assert.Equal(JsonValueKind.Null, line.GetProperty("centrelineLength").ValueKind);
        Assert.Equal(0, line.GetProperty("corners").GetArrayLength());
        Assert.Equal(0, line.GetProperty("bends").GetArrayLength());
    }

    [Fact]
    public async Task A_u_bend_has_no_corner_no_setback_and_no_gain()
    {
        var (ran, json) = await Show(CarFiles.WithWarning);
        Assert.Equal(0, ran.Code);
        var line = json.GetProperty("lines")[0];
        Assert.All(line.GetProperty("legs").EnumerateArray(), leg => Assert.Equal(JsonValueKind.Null, leg.ValueKind));
        AssertFigures([60, 70], line.GetProperty("straights"));
        Assert.Equal(3, line.GetProperty("corners").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, line.GetProperty("corners")[1].ValueKind);
        Assert.Equal(JsonValueKind.Null, line.GetProperty("bends")[0].GetProperty("setback").ValueKind);
        Assert.Equal(JsonValueKind.Null, line.GetProperty("bends")[0].GetProperty("gain").ValueKind);
        Assert.Equal("warning", json.GetProperty("findings")[0].GetProperty("severity").GetString());
    }

    [Theory]
    [InlineData("nowhere.yaml", "cannot-read", 0, 0)]
    [InlineData("car.yaml", "bracket-not-closed", 1, 8)]
    public async Task Also_of_a_file_that_cannot_be_read_I_get_json(string name, string rule, int row, int column)
    {
        Typed("lines: [");
        var ran = await Run("show", Place(name), "--format", "json");
        Assert.Equal(2, ran.Code);
        Assert.NotEmpty(ran.Error);
        using var json = JsonDocument.Parse(ran.Output);
        Assert.Equal("project lines findings", Names(json.RootElement));
        Assert.Equal(0, json.RootElement.GetProperty("lines").GetArrayLength());
        var finding = json.RootElement.GetProperty("findings")[0];
        Assert.Equal(rule, finding.GetProperty("rule").GetString());
        Assert.Equal(Place(name), finding.GetProperty("file").GetString());
        Assert.Equal(row, finding.GetProperty("line").GetInt32());
        Assert.Equal(column, finding.GetProperty("column").GetInt32());
    }

    [Fact]
    public async Task Signs_stay_as_they_were_typed()
    {
        var (ran, json) = await Show(CarFiles.Sound.Replace("test car", "'2 × 45° \"short\" \\ Ärmel'", StringComparison.Ordinal));
        Assert.Contains("2 × 45°", ran.Output, StringComparison.Ordinal);
        Assert.Equal("2 × 45° \"short\" \\ Ärmel", json.GetProperty("project").GetString());
        Assert.EndsWith("}\n", ran.Output, StringComparison.Ordinal);
    }

    private async Task<(Ran Ran, JsonElement Json)> Show(string text)
    {
        var ran = await Run("show", Typed(text), "--format", "json");
        using var json = JsonDocument.Parse(ran.Output);
        return (ran, json.RootElement.Clone());
    }

    private static string Names(JsonElement element) => string.Join(' ', element.EnumerateObject().Select(property => property.Name));

    private static double[] Figures(JsonElement array) => [.. array.EnumerateArray().Select(figure => figure.GetDouble())];

    private static void AssertFigures(double[] expected, JsonElement array) => AssertClose(expected, Figures(array));

    private static void AssertFigures(double[] expected, JsonElement element, params string[] names) =>
        AssertClose(expected, [.. names.Select(name => element.GetProperty(name).GetDouble())]);

    private static void AssertClose(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, 9));
    }
}
