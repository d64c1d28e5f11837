using System.Globalization;

namespace BendSheet.Cli.Tests.Output;

/// <summary>
/// What a spreadsheet would take for a formula: the signs of MITRE's CWE-1236 (=, +, - and @) and of OWASP's page on CSV injection (tab and
/// carriage return as well), with the apostrophe in front that both advise.
/// </summary>
public class CsvTests : AtTheTerminal
{
    private const string Car = """
        units: mm
        tube: {od: 4.75}
        benders: {'=1+1': {radius: 15}}
        stock: [{name: '@roll', length: 5000}]
        fittings: {none: {flare: none, slide-on: [{'-nut': 17}]}}
        lines:
          '+49':
            from: {fitting: none}
            to: {fitting: none}
            rows:
            - {straight: 100, bend: 30, note: '-heat, then bend'}
            - {straight: 100, rotate: 90 ccw, bend: 30, note: 'heat - then bend'}
            - {straight: 100}

        """;

    [Fact]
    public async Task Words_that_begin_as_a_formula_are_guarded_and_figures_stay_figures()
    {
        var ran = await Run("show", Typed(Car), "--format", "csv");
        Assert.Equal(0, ran.Code);
        var rows = ran.Output.Split('\n');
        Assert.StartsWith("'+49,", rows[1], StringComparison.Ordinal);
        Assert.Contains(",'=1+1,", rows[1], StringComparison.Ordinal);
        Assert.EndsWith(",\"'-heat, then bend\"", rows[1], StringComparison.Ordinal);
        Assert.Contains(",-90,", rows[2], StringComparison.Ordinal);
        Assert.EndsWith(",heat - then bend", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task So_are_those_of_the_cutting_plan_and_the_shopping_list()
    {
        var ran = await Run("stock", Typed(Car), "--format", "csv");
        Assert.Equal(0, ran.Code);
        Assert.Contains(",'@roll,", ran.Output, StringComparison.Ordinal);
        Assert.Contains(",'+49,", ran.Output, StringComparison.Ordinal);
        Assert.Contains(",'-nut,", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_cell_of_words_begins_as_a_formula()
    {
        var rows = (await Run("stock", Typed(Car), "--format", "csv")).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.All(rows.SelectMany(row => row.Split(',')), cell =>
            Assert.True(cell.Length == 0 || !"=+-@".Contains(cell[0]) || double.TryParse(cell, CultureInfo.InvariantCulture, out _), cell));
    }
}
