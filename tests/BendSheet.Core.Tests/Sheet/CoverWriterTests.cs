using System.Collections.Immutable;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

public class CoverWriterTests
{
    [Fact]
    public void Every_line_stands_on_the_cover_with_the_figures_of_its_sheet()
    {
        var sheet = FullLine.Content(FullLine.Template);
        var line = Assert.Single(Cover(FullLine.Template).Lines);
        Assert.Equal((sheet.Line, sheet.Ends, sheet.Fingerprint), (line.NameOnPage, line.EndsOnPage, line.Fingerprint));
        Assert.Equal((sheet.Tube, sheet.CutLength, LineState.ToMake), (line.Tube, line.CutLength, line.State));
    }

    [Theory]
    [InlineData("3 lines, none of them made yet.", false, false, false)]
    [InlineData("3 lines: 1 made, 2 to make.", false, true, false)]
    [InlineData("2 lines, all of them made.", true, true)]
    [InlineData("1 line, not made yet.", false)]
    [InlineData("1 line, made.", true)]
    public void It_says_how_many_are_made(string summary, params bool[] made) =>
        Assert.Equal(summary, Cover([.. made.Select(one => FullLine.Template with { Made = one })]).Summary);

    [Fact]
    public void Tube_is_added_up_by_size_exactly_and_rounded_once()
    {
        // Cut to 100.2 mm each: rounded first, three of them would be 300.0 mm.
        var straight = Straight(100.2);
        var cover = Cover(
            straight, straight, straight, Straight(50) with { Tube = FullLine.Template.Tube with { OutsideDiameter = Lines.Mm(6) } });
        var rows = Assert.Single(cover.Sections).Rows;
        Assert.Equal(2, rows.Length);
        Assert.Equal(("3/16 in × 0.028 in, copper-nickel: 3 lines", "300.5 mm"), (rows[0].What, rows[0].HowMuch));
        Assert.Equal(("6 mm × 0.028 in, copper-nickel: 1 line", "50.0 mm", "1 31/32 in"), (rows[1].What, rows[1].HowMuch, rows[1].Other));
    }

    [Fact]
    public void What_is_still_to_make_of_a_tube_is_added_up_beside_the_whole()
    {
        var cover = Cover(Straight(100), Straight(200) with { Made = true });
        Assert.Equal(["300.0 mm", "100.0 mm"], cover.Sections.First().Rows.Select(row => row.HowMuch), StringComparer.Ordinal);
        Assert.EndsWith("of these, 1 line still to make", cover.Sections.First().Rows[1].What, StringComparison.Ordinal);
    }

    private static LineTemplate Straight(double length) => FullLine.Template with
    {
        Route = Route.OfRows([new Row(Lines.Mm(length), Lines.StraightAt(0), null)]).Route!,
        From = new(null, null, Length.Zero),
        To = new(null, null, Length.Zero),
    };

    private static CoverContent Cover(params ImmutableArray<LineTemplate> templates) =>
        CoverWriter.OfSome("Finch", [.. templates.Select(CarPlan.Line)], FullLine.Metric);
}
