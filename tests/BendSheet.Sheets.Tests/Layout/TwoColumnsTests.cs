using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Tests.Layout;

public class TwoColumnsTests
{
    private const double Width = 190;

    [Fact]
    public void On_one_page_the_longer_column_is_as_short_as_can_be()
    {
        var columns = Of(Lines(9, 10));
        Assert.Equal(50, columns.Height);
        Assert.Equal(50, Assert.Single(columns.Blocks(left: 50, page: 200)).Height);
    }

    [Fact]
    public void A_heading_is_not_parted_from_its_text_nor_a_paragraph_from_its_first_line()
    {
        var heading = Line(10) with { KeepWithNext = true };
        var more = Line(10) with { Continues = true };
        Assert.Equal(30, Of([.. Lines(1, 10), heading, .. Lines(2, 10)]).Height);
        Assert.Equal(30, Of([.. Lines(1, 10), Line(10), more, .. Lines(1, 10)]).Height);
    }

    [Fact]
    public void What_does_not_fit_fills_the_rest_of_its_page_and_flows_on_to_the_next()
    {
        var pages = Of(Lines(30, 10)).Blocks(left: 40, page: 100).ToList();
        Assert.Equal([40, 100, 10], pages.Select(page => page.Height)); // 8, 20 and 2 lines
    }

    [Fact]
    public void The_second_column_begins_with_a_heading_where_it_is_hardly_longer_so()
    {
        var heading = Line(10) with { KeepWithNext = true, Role = Role.Heading };
        Assert.Equal((70, 60), Heights(Of([.. Lines(7, 10), heading, .. Lines(4, 10)])));
        Assert.Equal((30, 30), Heights(Of([.. Lines(1, 10), heading, .. Lines(4, 10)])));

        static (double, double) Heights(TwoColumns columns) => (columns.Height, columns.LeastHeight);
    }

    [Fact]
    public void A_long_paragraph_is_cut_where_a_column_ends_and_nothing_is_longer_than_the_page()
    {
        List<Block> paragraph = [.. Lines(30, 10).Select((line, i) => line with { Continues = i > 0 })];
        Assert.Equal([100, 100], Of([.. Lines(5, 10), .. paragraph]).Blocks(left: 100, page: 100).Select(page => page.Height));
        Assert.Equal(
            [100, 100], Of([.. Lines(2, 10), .. paragraph, .. Lines(1, 10)]).Blocks(left: 20, page: 100).Select(page => page.Height));
    }

    [Fact]
    public void With_hardly_any_room_left_the_columns_begin_the_next_page() =>
        Assert.Equal([100, 50], Of(Lines(30, 10)).Blocks(left: 20, page: 100).Select(page => page.Height));

    [Fact]
    public void A_section_is_as_wide_as_a_column_and_two_columns_are_less_than_the_page()
    {
        var asked = new List<double>();
        _ = new TwoColumns([width => Asked(width), width => Asked(width)], Width);
        Assert.Equal(2, asked.Count);
        Assert.All(asked, width => Assert.InRange(width, (Width / 2) - 5, (Width / 2) - 1));

        IEnumerable<Block> Asked(double width)
        {
            asked.Add(width);
            return Lines(1, 10);
        }
    }

    private static TwoColumns Of(IReadOnlyList<Block> blocks) => new([_ => blocks], Width);

    private static List<Block> Lines(int count, double height) => [.. Enumerable.Range(0, count).Select(_ => Line(height))];

    private static Block Line(double height) => new(height, static (_, _) => { });
}
