using System.Text.Json;

namespace BendSheet.Cli.Tests.Commands;

public class StockTests : AtTheTerminal
{
    /// <summary>A line of 1000 and a rough one of 2400: with two cuts 3402 of tube.</summary>
    private const string Car = """
        project: test car
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        fittings: {an3: {flare: single 37, slide-on: [{nut: 17}]}}
        STOCK
        have: {nut: 1}
        lines:
          front: {MADE, from: {at: tee, fitting: an3}, to: {at: hose, fitting: an3}, rows: [{straight: 1000}]}
          rear: {rough: 2.4 m}

        """;

    [Fact]
    public async Task I_am_told_that_the_roll_will_do_and_where_to_cut_it()
    {
        var ran = await Run("stock", Typed(With("stock: [{name: old roll, length: 25 ft, left: 4000}]")));
        Assert.Equal(0, ran.Code);
        Assert.StartsWith("0 of 2 lines made.\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains(
            "  old roll: 4000.0 mm (157 15/32+ in), from its free end\n    cut at mm  length  then left  piece\n       1000.0  1000.0     "
                + "2999.0  front\n    then planned, do not cut: no template yet\n      rear  about 2400.0 mm\n    left: 598.0 mm "
                + "(23 17/32+ in)\n",
            ran.Output,
            StringComparison.Ordinal);
        Assert.Contains("  Fits what is there.\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  needed in all              3402.0 mm  (133 15/16 in)\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("    1  nut   an3, 17 mm       2     1  front (2)\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains(":10:17: note: line rear has only a rough length", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task I_am_told_by_how_much_it_is_short_what_to_buy_and_what_that_costs()
    {
        var ran = await Run("stock", Typed(With("stock: [{length: 25 ft, left: 3000, price: 49.50}]")));
        Assert.Equal(1, ran.Code);
        Assert.Contains(
            ":6:9: error: the tube: 3402.0 mm (133.938 in) needed, 3000.0 mm (118.110 in) left: it is 402.0 mm (15.827 in) short; buy 1 "
                + "roll of 7620.0 mm", ran.Error, StringComparison.Ordinal);
        Assert.Contains(
            "  What is measured fits what is there, and lines without a template do not: buy 1 roll of 7620 mm, cost 49.50. Fewer cannot "
                + "do.\n",
            ran.Output, StringComparison.Ordinal);
        Assert.Contains("  Cost of the tube to buy: 49.50.\n", ran.Output, StringComparison.Ordinal);
    }

    /// <summary>The same roll after the first line: one word and one figure are typed, and one command is run.</summary>
    [Fact]
    public async Task With_a_line_made_the_rest_is_held_against_the_rest_of_the_roll()
    {
        var enough = await Run("stock", Typed(With("stock: [{length: 25 ft, left: 2400}]", made: true)));
        Assert.Equal(0, enough.Code);
        Assert.StartsWith("1 of 2 lines made.\n", enough.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("nut", enough.Output, StringComparison.Ordinal);
        Assert.Equal(1, (await Run("stock", Typed(With("stock: [{length: 25 ft, left: 2399}]", made: true)))).Code);
    }

    [Fact]
    public async Task Without_any_stock_I_am_told_the_total()
    {
        var ran = await Run("stock", Typed(With("spare: 10 %")));
        Assert.Equal(0, ran.Code);
        Assert.Contains("  needed in all              3742.0 mm", ran.Output, StringComparison.Ordinal);
        Assert.Contains("The file lists no roll of this tube, so there is no cutting plan.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("    1  tube  3/16 in, 3742.0 mm in all", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_only_the_spare_missing_I_am_warned()
    {
        var ran = await Run("stock", Typed(With("stock: [{length: 25 ft, left: 3500}]\nspare: 10 %")));
        Assert.Equal(0, ran.Code);
        Assert.Contains(":6:9: warning: the tube: 3742.0 mm", ran.Error, StringComparison.Ordinal);
        Assert.Contains("  The lines fit what is there, and the spare does not: buy 1 roll", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_wrong_file_no_figure_is_shown()
    {
        var ran = await Run("stock", Typed(With("stock: [{length: 25 fft}]")));
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public async Task Another_program_gets_the_figures_unrounded()
    {
        var ran = await Run("stock", Typed(With("stock: [{name: old roll, length: 25 ft, left: 4000}]")), "--format", "json");
        Assert.Equal(0, ran.Code);
        using var json = JsonDocument.Parse(ran.Output);
        var tube = json.RootElement.GetProperty("tubes")[0];
        Assert.Equal(3402, tube.GetProperty("needed").GetDouble());
        Assert.True(tube.GetProperty("fits").GetBoolean());
        Assert.Equal(
            [1000, 3401], tube.GetProperty("rolls")[0].GetProperty("cuts").EnumerateArray()
                .Select(cut => cut.GetProperty("to").GetDouble()));
        Assert.Equal("front (2)", json.RootElement.GetProperty("shopping")[0].GetProperty("usedAt")[0].GetString());
        Assert.Contains(
            json.RootElement.GetProperty("findings").EnumerateArray(),
            finding => string.Equals(finding.GetProperty("rule").GetString(), "rough-line", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_spreadsheet_gets_cuts_offcuts_and_what_to_buy()
    {
        var ran = await Run("stock", Typed(With("stock: [{name: old roll, length: 25 ft, left: 4000}]")), "--format", "csv");
        Assert.Equal(
            """
            list,tube,roll,from,to,length,name,specification,needed,have,buy,usedAt
            cut,3/16 in,old roll,0,1000,1000,front,,,,,
            do not cut: no template yet,3/16 in,old roll,1001,3401,2400,rear,,,,,
            left,3/16 in,old roll,3402,4000,598,,,,,,
            buy,,,,,,nut,"an3, 17 mm",2,1,1,front (2)

            """,
            ran.Output);
    }

    [Fact]
    public async Task A_rough_line_counts_in_the_total_of_check_and_can_be_asked_for()
    {
        var ran = await Run("check", Typed(With("spare: 10 %")));
        Assert.Equal(0, ran.Code);
        Assert.Contains("2 lines, cut length in all 3400.0 mm", ran.Output, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("show", Typed(With("spare: 10 %")), "--line", "rear")).Code);
    }

    private static string With(string stock, bool made = false) =>
        Car.Replace("STOCK", stock, StringComparison.Ordinal)
            .Replace("MADE", made ? "made: true" : "made: false", StringComparison.Ordinal);

    [Theory]
    [InlineData("stock: [{length: 3000, left: 100}]", "for front", "front")]
    [InlineData("stock: [{length: 3000, left: 1100}]", "for practice pieces", "practice pieces")]
    public async Task Practice_pieces_are_no_lines_where_tube_is_bought(string stock, string waiting, string usedAt)
    {
        var file = Typed(
            $"units: mm\ntube: {{od: 3/16 in}}\nbender: {{radius: 15}}\n{stock}\npractice: {{flares: 1, bends: 1}}\n"
                + "lines: {front: [{straight: 1000}]}\n");
        var ran = await Run("stock", file);
        Assert.Contains($"buy 1 roll of 3000.0 mm (118.110 in) {waiting} [stock-too-small]", ran.Error, StringComparison.Ordinal);
        Assert.Contains($"     1     0  {usedAt}\n", ran.Output, StringComparison.Ordinal);

        using var json = JsonDocument.Parse((await Run("stock", file, "--format", "json")).Output);
        var lines = json.RootElement.GetProperty("tubes")[0].GetProperty("rolls").EnumerateArray()
            .SelectMany(roll => roll.GetProperty("cuts").EnumerateArray())
            .Where(cut => cut.GetProperty("line").GetBoolean()).Select(cut => cut.GetProperty("piece").GetString());
        Assert.Equal(["front"], lines, StringComparer.Ordinal);
    }
}
