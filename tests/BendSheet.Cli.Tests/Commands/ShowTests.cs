namespace BendSheet.Cli.Tests.Commands;

public class ShowTests : AtTheTerminal
{
    /// <summary>
    /// 100 and 80 round a right angle on 15 mm: B is √(100² + 80²) = 128.1 from A. Bent only 80° the corner comes 15·(tan 45° − tan 40°) =
    /// 2.41 nearer, and the arc that is missing, 2.62, stays straight: 97.59 and 80.21 round 80° are 136.7 apart.
    /// </summary>
    [Fact]
    public async Task I_measured_the_finished_piece_and_am_told_how_it_differs_and_what_to_do()
    {
        var typed = CarFiles.Sound.Replace(
            "  front-left:\n    - {straight: 100, bend: 90}\n    - {straight: 80}\n",
            "  front-left:\n    checks: {bend 1: 80, A-B: 136.7}\n    rows: [{straight: 100, bend: 90}, {straight: 80}]\n",
            StringComparison.Ordinal).Replace("{miss: 1 m, askew: 90}", "{miss: 3}", StringComparison.Ordinal);
        var ran = await Run("show", Typed(typed), "--line", "front-left");
        Assert.Equal(0, ran.Code);
        Assert.Contains(
            ":7:22: warning: bend 1 is 80° on the piece, 10° less than the sheet's 90°: bend 1 turned 9.9° ± ", ran.Error,
            StringComparison.Ordinal);
        Assert.Contains(" too little explains it; end B is ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("; to put it right, close bend 1 by 9.9°, until A to B is 128.", ran.Error, StringComparison.Ordinal);
        Assert.Contains(
            "  ! Measured on the piece less the sheet's: bend 1 -10°, A-B +8.6 mm.\n", ran.Output, StringComparison.Ordinal);

        using var json = System.Text.Json.JsonDocument.Parse((await Run("show", Place("car.yaml"), "--format", "json")).Output);
        var piece = json.RootElement.GetProperty("lines")[0].GetProperty("piece");
        var check = piece.GetProperty("measurements")[1];
        Assert.Equal("A-B", check.GetProperty("name").GetString());
        Assert.Equal(136.7, check.GetProperty("measured").GetDouble());
        Assert.Equal(Math.Sqrt((100 * 100) + (80 * 80)), check.GetProperty("expected").GetDouble(), 9);
        Assert.Equal(136.7 - check.GetProperty("expected").GetDouble(), check.GetProperty("residual").GetDouble(), 9);
        Assert.Equal(-10, Assert.Single(piece.GetProperty("mistakes").EnumerateArray()).GetProperty("size").GetDouble(), 1.0);
        var step = Assert.Single(piece.GetProperty("correction").GetProperty("steps").EnumerateArray());
        Assert.Equal(("bend 1", "A-B"), (step.GetProperty("name").GetString(), step.GetProperty("until").GetString()));
        Assert.Equal(10, step.GetProperty("by").GetDouble(), 1.0);
        Assert.Equal(System.Text.Json.JsonValueKind.Null, json.RootElement.GetProperty("lines")[1].GetProperty("piece").ValueKind);
    }

    [Fact]
    public async Task How_the_piece_differs_is_in_the_unit_of_the_sheet()
    {
        const string Top = "units: in\ntube: {od: 3/16 in}\nbender: {radius: 9/16}\nlines:\n";
        var ran = await Run(
            "show", Typed(Top + "  a:\n    checks: {A-B: 4.9}\n    rows: [{straight: 4, bend: 90}, {straight: 3}]\n"));
        Assert.Contains("  ! Measured on the piece less the sheet's: A-B -0.100 in.\n", ran.Output, StringComparison.Ordinal);
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
            ["1", "85.0", "12:00", "0°", "90°", "A", "→", "90°", "65.0"],
            table[heading + 1].Split(' ', StringSplitOptions.RemoveEmptyEntries)[..9]);
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

    [Fact]
    public async Task I_can_ask_for_a_line_however_my_keyboard_composes_its_name()
    {
        var file = Typed(CarFiles.Sound.Replace("rear", "r\u00E9ar", StringComparison.Ordinal));
        var ran = await Run("show", file, "--line", "re\u0301ar");
        Assert.Equal(0, ran.Code);
        Assert.StartsWith("r\u00E9ar: cut ", ran.Output, StringComparison.Ordinal);
    }
}
