namespace BendSheet.Cli.Tests.Commands;

public class ShowTests : AtTheTerminal
{
    /// <summary>100 and 80 round a right angle: B is √(100² + 80²) = 128.1 from A.</summary>
    [Fact]
    public async Task I_measured_the_finished_piece_and_am_told_how_it_differs()
    {
        var typed = CarFiles.Sound.Replace(
            "  front-left:\n    - {straight: 100, bend: 90}\n    - {straight: 80}\n",
            "  front-left:\n    checks: [{from: A, to: 1, distance: 100.5}, {from: A, to: B, distance: 136}]\n    rows: [{straight: 100, "
                + "bend: 90}, {straight: 80}]\n",
            StringComparison.Ordinal);
        var ran = await Run("show", Typed(typed), "--line", "front-left");
        Assert.Equal(0, ran.Code);
        Assert.Contains(
            ":7:76: warning: A to B is 136.0 mm (5.354 in) on the finished piece, 7.9 mm (0.313 in) more than the sheet's 128.1 mm "
                + "(5.042 in): bend 1 turned about ",
            ran.Error,
            StringComparison.Ordinal);
        Assert.Contains("° too little, if its mark was right [finished-differs]", ran.Error, StringComparison.Ordinal);
        Assert.Contains(
            "  ! Measured on the finished piece less the sheet's: A to corner 1 +0.5 mm, A to B +7.9 mm.\n",
            ran.Output,
            StringComparison.Ordinal);

        using var json = System.Text.Json.JsonDocument.Parse((await Run("show", Place("car.yaml"), "--format", "json")).Output);
        var check = json.RootElement.GetProperty("lines")[0].GetProperty("checks")[1];
        Assert.Equal("A to B", check.GetProperty("between").GetString());
        Assert.Equal(136, check.GetProperty("measured").GetDouble());
        Assert.Equal(Math.Sqrt((100 * 100) + (80 * 80)), check.GetProperty("expected").GetDouble(), 9);
        Assert.Equal(136 - check.GetProperty("expected").GetDouble(), check.GetProperty("residual").GetDouble(), 9);
        Assert.Empty(json.RootElement.GetProperty("lines")[1].GetProperty("checks").EnumerateArray());
    }

    [Fact]
    public async Task How_the_finished_piece_differs_is_in_the_unit_of_the_sheet()
    {
        const string Top = "units: in\ntube: {od: 3/16 in}\nbender: {radius: 9/16}\nlines:\n";
        var ran = await Run(
            "show",
            Typed(Top
                + "  a:\n    checks: [{from: A, to: 1, distance: 4.02}, {from: 1, to: B, distance: 3}, {from: A, to: B, distance: 4.9}]\n"
                + "    rows: [{straight: 4, bend: 90}, {straight: 3}]\n"));
        Assert.Contains(
            "  ! Measured on the finished piece less the sheet's: A to corner 1 +0.020 in, corner 1 to B 0.000 in, A to B -0.100 in.\n",
            ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mm", "30", "8", "30 mm")]
    [InlineData("in", "1.25", "3/8", "1 1/4 in")]
    [InlineData("in", "30 mm", "8 mm", "30 mm")]
    public async Task A_coils_former_is_called_by_the_radius_that_I_typed(string units, string radius, string pitch, string named)
    {
        var file =
            Typed($"units: {units}\ntube: {{od: 3/16 in}}\nbender: {{radius: 9/16 in}}\nlines:\n  a: [{{straight: 120 mm, coil: 1, "
                + $"radius: {radius}, pitch: {pitch}}}, {{straight: 200 mm, coil: 1, radius: {radius}, pitch: 0}}, "
                + $"{{straight: 120 mm}}]\n");
        var name = $"coil former of radius {named}";
        Assert.Contains($"; bender {name}; developed", (await Run("show", file)).Output, StringComparison.Ordinal);
        using var json = System.Text.Json.JsonDocument.Parse((await Run("show", file, "--format", "json")).Output);
        var bend = json.RootElement.GetProperty("lines")[0].GetProperty("bends")[0];
        Assert.Equal(name, bend.GetProperty("bender").GetString());
        Assert.Contains($",{name},", (await Run("show", file, "--format", "csv")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_see_where_the_pen_goes()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--line", "front-left");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.StartsWith("front-left: cut 173.5 mm (6 27/32− in)\n", ran.Output, StringComparison.Ordinal);
        var table = ran.Output.Split('\n');
        var heading = Array.FindIndex(table, row => row.Contains("mark mm", StringComparison.Ordinal));
        Assert.Equal(
            ["1", "85.0", "A", "–", "0°", "90°", "90°", "65.0"], table[heading + 1].Split(' ', StringSplitOptions.RemoveEmptyEntries)[..8]);
    }

    [Fact]
    public async Task I_see_how_many_clips_and_where()
    {
        var ran = await Run(
            "show",
            Typed("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 15}\nlines:\n  a: {clips: {every: 300, from-ends: 60}, rows: "
                + "[{straight: 420}]}\n"));
        Assert.Contains(
            "\n  2 clips, at most 300.0 mm apart. Middles from the cut end of A, to be marked before it is fitted: 60.0, 360.0 mm.\n",
            ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_see_every_line_when_I_name_none()
    {
        var ran = await Run("show", Typed(CarFiles.Sound));
        Assert.Equal("front-left rear", Names(ran));
    }

    [Fact]
    public async Task I_see_the_lines_that_I_name_in_the_order_of_the_file()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--line", "rear", "--line", "front-left");
        Assert.Equal("front-left rear", Names(ran));
        ran = await Run("show", Typed(CarFiles.Sound), "--line", "rear");
        Assert.Equal("rear", Names(ran));
    }

    [Fact]
    public async Task I_am_offered_the_nearest_line_to_one_that_is_not_there()
    {
        var file = Typed(CarFiles.Sound);
        var ran = await Run("show", file, "--line", "front-lft");
        Assert.Equal(2, ran.Code);
        Assert.Equal($"{file}: error: there is no line `front-lft`: did you mean `front-left`? [unknown-line]\n", ran.Error);
        Assert.Empty(ran.Output);
    }

    [Theory]
    [InlineData("clutch")]
    [InlineData("")]
    [InlineData("../rear")]
    public async Task I_see_which_lines_there_are_when_none_is_near(string line)
    {
        var file = Typed(CarFiles.Sound);
        var ran = await Run("show", file, "--line", line);
        Assert.Equal(2, ran.Code);
        Assert.Equal($"{file}: error: there is no line `{line}`: the file has `front-left`, `rear` [unknown-line]\n", ran.Error);
    }

    [Fact]
    public async Task With_an_unknown_line_among_them_none_is_shown()
    {
        var ran = await Run("show", Typed(CarFiles.Sound), "--line", "clutch", "--line", "rear");
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
    }

    [Theory]
    [InlineData("table")]
    [InlineData("csv")]
    public async Task Of_a_wrong_file_no_figure_is_shown_that_might_be_made_of_a_default(string format)
    {
        var ran = await Run(
            "show", Typed(CarFiles.Sound.Replace("radius:", "offset: mid, radius:", StringComparison.Ordinal)), "--format", format);
        Assert.Equal(2, ran.Code);
        Assert.Contains("[unreadable-length]", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("front-left", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_could_not_be_read_is_not_called_unknown()
    {
        var ran = await Run("show", Typed(CarFiles.Misspelt), "--line", "front-left");
        Assert.Equal(2, ran.Code);
        Assert.Contains("[unknown-word]", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("[unknown-line]", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_cannot_be_made_is_left_out_of_the_table_and_the_others_stay()
    {
        var ran = await Run("show", Typed(CarFiles.LegTooShort));
        Assert.Equal(1, ran.Code);
        Assert.Equal("front-left", Names(ran));
    }

    [Fact]
    public async Task No_row_of_the_table_ends_in_blanks()
    {
        var ran = await Run("show", Typed(CarFiles.Sound.Replace("bend: 45", "bend: 45, note: behind the tank", StringComparison.Ordinal)));
        Assert.Contains("behind the tank\n", ran.Output, StringComparison.Ordinal);
        Assert.All(ran.Output.Split('\n'), row => Assert.Equal(row.TrimEnd(), row));
    }

    [Fact]
    public async Task The_figures_are_those_of_the_same_file_piped_in()
    {
        Piped = CarFiles.Sound;
        var piped = await Run("show", "-");
        Assert.Equal(0, piped.Code);
        Assert.Equal((await Run("show", Typed(CarFiles.Sound))).Output, piped.Output);
    }

    /// <summary>Of the lines in the table, with blanks between them.</summary>
    private static string Names(Ran ran) => string.Join(' ', ran.Output.Split('\n')
        .Where(row => row.Contains(": cut ", StringComparison.Ordinal))
        .Select(row => row[..row.IndexOf(':', StringComparison.Ordinal)]));
}
