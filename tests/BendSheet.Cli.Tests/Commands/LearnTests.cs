namespace BendSheet.Cli.Tests.Commands;

public class LearnTests : AtTheTerminal
{
    private const string Tests = """
            tests:
              - {pull: 93, got: 90, length: 200, legs: [106, 105.5], measured: outside}
              - {pull: 47.5, got: 45}
              - {pull: 32, got: 30}
        """;

    [Fact]
    public async Task I_am_told_how_far_to_pull_and_how_sure_that_is()
    {
        var ran = await Run("learn", Typed(File(Tests)), "--bender", "hand");
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.StartsWith(
            "bender hand, radius 9/16 in\n  Springback, from 3 test bends:\n     bend  pull to       ±\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Contains("      60°    62.6°    2.9°\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "     180°   184.4°    7.6°  outside the tested bends; the tool stops at 180°\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "test 2 (line 8): pulled to 47.5°, came to 45°; by the line 47.3° (0.2° off, the worst)\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Contains(
            "One more test near 90°, as good as these, would bring ± there from 3.5° to about 1°.\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_told_how_much_tube_a_bend_takes_up()
    {
        var ran = await Run("learn", Typed(File(Tests)));
        Assert.Contains("a 90° bend gains 6.7 mm against its corner; by the radius alone 6.1 mm\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("arc factor 0.973: a bend uses up 2.7 % less than its arc by the radius\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("effective radius 15.7 mm: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("One piece: nothing shows how far to trust it.", ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "  Used on your sheets: pull angles by the line through the tests; arc factor 0.973 (from the test pieces).\n",
            ran.Output,
            StringComparison.Ordinal);
    }

    /// <summary>
    /// The first leg is 106 over the outside, 103.62 to the corner and 89.33 to the start of the bend: a mark at 91 lies 1.67 beyond it.
    /// Two readings of half a millimetre leave 0.71 open.
    /// </summary>
    [Fact]
    public async Task I_am_told_where_the_tools_line_stands()
    {
        var typed = File(Tests.Replace("measured: outside}", "measured: outside, mark: 91}", StringComparison.Ordinal));
        var ran = await Run("learn", Typed(typed), "--bender", "hand");
        Assert.Empty(ran.Error);
        Assert.Contains(
            "  The tool's line, from 1 test piece with a mark:\n    offset 1.7 mm ± 0.7 mm: the mark lies 1.7 mm from the start of the "
                + "bend, towards the side that is swept\n    test 1 (line 7): offset 1.7 mm\n    ±: what two readings to about 0.5 mm "
                + "leave open; three pieces show how well your hands repeat it.\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Contains(
            "; arc factor 0.973 (from the test pieces); offset 1.7 mm (from the test pieces).\n", ran.Output, StringComparison.Ordinal);
        ran = await Run("learn", Typed(typed.Replace("tests:", "offset: 0\n    tests:", StringComparison.Ordinal)), "--bender", "hand");
        Assert.Contains("offset 0.0 mm (as typed, which counts more", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_shown_how_to_test_a_tool_that_was_not()
    {
        var ran = await Run("learn", Typed(CarFiles.Sound));
        Assert.Equal(0, ran.Code);
        Assert.StartsWith(
            "bender, radius 15 mm\n  No tests yet: pull angles are not corrected, and the developed length assumes arc factor 1.000 (no "
                + "test piece).\n",
            ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "    1. Cut a straight piece of the tube square at both ends, about 200 mm long. Measure it: `length`.\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Equal(7, ran.Output.Split('\n').Count(row => row.Length > 6 && char.IsAsciiDigit(row[4]) && row[5] == '.'));
    }

    [Fact]
    public async Task The_steps_stand_there_once()
    {
        var ran = await Run("learn", Typed(File("    mark: start").Replace("10 mm", "30 mm", StringComparison.Ordinal)));
        Assert.Equal(2, ran.Output.Split("How to test it").Length);
        Assert.EndsWith(
            "bender small, radius 30 mm\n  No tests yet: pull angles are not corrected, and the developed length assumes arc factor "
            + "1.000 (no test piece).\n"
            + "  Test it as above, with a piece about 400 mm long.\n",
            ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task In_a_file_in_inches_I_am_told_inches()
    {
        var ran = await Run(
            "learn",
            Typed(File("    tests: [{got: 90, length: 8, legs: [4 3/16, 4 1/8], measured: outside}]")
                .Replace("units: mm", "units: in", StringComparison.Ordinal)
            .Replace("10 mm", "3/8", StringComparison.Ordinal)));
        Assert.Equal(0, ran.Code);
        // Corners 8.3125 − 0.1875 = 8.125, gain 0.125; by the radius 0.5625 · 0.4292.
        Assert.Contains(
            "a 90° bend gains 0.125 in against its corner; by the radius alone 0.241 in\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("about 8 in long", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{pull: 93, got: 90}", "One test: pull and bend are taken in proportion, which is rough far from 90°. Bend one more, "
        + "near 30°: two give a line.")]
    [InlineData("{pull: 31, got: 30}", "One test: pull and bend are taken in proportion, which is rough far from 30°. Bend one more, "
        + "near 90°: two give a line.")]
    [InlineData("{pull: 93, got: 90}, {pull: 94, got: 91}", "All tests are of about one bend: ")]
    [InlineData("{pull: 93, got: 90}, {pull: 47.5, got: 45}", "Two tests: the line goes through both, so nothing shows how far to trust "
        + "it. Bend one more, near 70°.")]
    [InlineData("{pull: 93, got: 90}, {pull: 47, got: 45}, {pull: 70, got: 67.5}", "The tests lie on the line as well as a protractor "
        + "can show it: count on half a degree, not on less.")]
    [InlineData("{got: 90, length: 200, legs: [103, 103.5]}", "At the next test, read the tool's scale before you let go (`pull`), and "
        + "the bend after (`got`).")]
    [InlineData("{pull: 93, got: 90}", "At the next test, measure the straight tube before (`length`) and both legs after (`legs`, "
        + "`measured: outside`).")]
    [InlineData("{got: 90, length: 200, legs: [103, 103.5]}, {got: 90, length: 200, legs: [103, 104]}", "One more piece of 90°, as good "
        + "as these, would bring the standard error to about 0.009.")]
    [InlineData("{got: 90, length: 200, legs: [100.5, 100], measured: along}", "effective radius unknown: no radius gains as these "
        + "pieces did, or all of them were measured `along`, which says nothing about it")]
    public async Task I_am_told_what_one_test_more_would_bring(string tests, string told) =>
        Assert.Contains(told, (await Run("learn", Typed(File($"    tests: [{tests}]")))).Output, StringComparison.Ordinal);

    [Fact]
    public async Task A_typed_arc_factor_is_in_force_and_I_am_told_why()
    {
        var ran = await Run("learn", Typed(File("    arc-factor: 1.01\n" + Tests)));
        Assert.Contains(
            "; arc factor 1.010 (as typed, which counts more than the test pieces: take `arc-factor` out to use theirs).\n",
            ran.Output,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_tube_that_a_test_names_is_spoken_of_by_itself()
    {
        var text = File("    tests: [{pull: 93, got: 90}, {pull: 97, got: 90, tube: fuel}]")
            .Replace("tube: {od: 3/16 in}", "tubes: {brake: {od: 3/16 in}, fuel: {od: 8}}", StringComparison.Ordinal)
            .Replace("    rows:", "    tube: brake\n    rows:", StringComparison.Ordinal);
        var ran = await Run("learn", Typed(text), "--bender", "hand");
        Assert.Equal(0, ran.Code);
        var parts = ran.Output.Split("\n\n");
        Assert.Equal(2, parts.Length);
        Assert.StartsWith(
            "bender hand, radius 9/16 in, on tube fuel\n  Springback, from 2 test bends:\n", parts[0], StringComparison.Ordinal);
        Assert.Contains("  90°      95°\n", parts[0], StringComparison.Ordinal);
        Assert.StartsWith(
            "bender hand, radius 9/16 in, on any other tube\n  Springback, from 1 test bend:\n", parts[1], StringComparison.Ordinal);
        Assert.Contains("  90°      93°\n", parts[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_see_the_benders_that_I_name_in_the_order_of_the_file()
    {
        Assert.Equal("hand small", Names(await Run("learn", Typed(File(Tests)))));
        Assert.Equal("hand small", Names(await Run("learn", Typed(File(Tests)), "--bender", "small", "--bender", "hand")));
        Assert.Equal("small", Names(await Run("learn", Typed(File(Tests)), "--bender", "small")));
    }

    [Theory]
    [InlineData("hnad", "there is no bender `hnad`: did you mean `hand`?")]
    [InlineData("press", "there is no bender `press`: the file has `hand`, `small`")]
    public async Task I_am_told_that_there_is_no_such_bender(string bender, string told)
    {
        var file = Typed(File(Tests));
        var ran = await Run("learn", file, "--bender", bender);
        Assert.Equal(2, ran.Code);
        Assert.Equal($"{file}: error: {told} [unknown-bender]\n", ran.Error);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public async Task The_only_bender_of_a_short_file_has_no_name_to_ask_for()
    {
        var ran = await Run("learn", Typed(CarFiles.Sound), "--bender", "hand");
        Assert.Equal(2, ran.Code);
        Assert.Contains("the file's only bender has no name; leave `--bender` out", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_wrong_file_I_see_what_is_wrong_and_no_figure()
    {
        var file = Typed(File("    tests: [{pull: 90, got: 93}]"));
        var ran = await Run("learn", file);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
        Assert.StartsWith($"{file}:6:20: error: pulled to 90° a bend cannot come out at 93°", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_cannot_be_made_is_said_and_the_tool_is_shown_all_the_same()
    {
        var ran = await Run("learn", Typed(CarFiles.LegTooShort));
        Assert.Equal(1, ran.Code);
        Assert.Contains("[leg-too-short]", ran.Error, StringComparison.Ordinal);
        Assert.StartsWith("bender, radius 15 mm\n", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_learned_is_in_the_table_and_in_the_figures()
    {
        var file = Typed(File(Tests));
        var table = (await Run("show", file)).Output;
        Assert.Contains("cut 200.0 mm ", table, StringComparison.Ordinal);
        Assert.Contains(
            "! Pull angles are corrected for springback by 3 test bends from 30° to 90°. The developed length has arc factor 0.973 from "
                + "1 test piece.\n",
            table, StringComparison.Ordinal);
        Assert.Contains("\"pull\": 93.03846", (await Run("show", file, "--format", "json")).Output, StringComparison.Ordinal);
        Assert.Contains(",90,93.03846", (await Run("show", file, "--format", "csv")).Output, StringComparison.Ordinal);
    }

    /// <summary>Two benders, the first of them with more lines; a line like the test piece.</summary>
    private static string File(string words) =>
        "units: mm\ntube: {od: 3/16 in}\nbenders:\n  hand: \n    radius: 9/16 in\n" + words
            + "\n    largest-bend: 180\n  small: {radius: 10 mm}\n"
        + "lines:\n  fl:\n    bender: hand\n    rows:\n      - {straight: 103.61875 mm, bend: 90}\n      - {straight: 103.11875 mm}\n";

    private static string Names(Ran ran) => string.Join(' ', ran.Output.Split('\n')
        .Where(row => row.StartsWith("bender ", StringComparison.Ordinal))
        .Select(row => row.Split(' ', ',')[1]));
}
