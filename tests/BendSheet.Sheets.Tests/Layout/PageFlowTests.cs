using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Layout;

namespace BendSheet.Sheets.Tests.Layout;

public class PageFlowTests
{
    [Fact]
    public void Blocks_follow_each_other_and_none_is_lost()
    {
        var blocks = Enumerable.Range(0, 50).Select(_ => Of(30)).ToList();
        var pages = PageFlow.Spread(blocks, _ => 100);
        Assert.Equal(17, pages.Count);
        Assert.Equal(blocks, pages.SelectMany(page => page.Select(placed => placed.Block)));
        Assert.All(pages, page => Assert.Equal(page.Select((_, i) => 30.0 * i), page.Select(placed => placed.Top)));
    }

    [Fact]
    public void A_heading_goes_to_the_next_page_with_what_it_is_the_heading_of()
    {
        var heading = Of(10) with { KeepWithNext = true };
        var pages = PageFlow.Spread([Of(85), heading, Of(20)], _ => 100);
        Assert.Equal(2, pages.Count);
        Assert.Same(heading, pages[1][0].Block);
    }

    [Fact]
    public void A_repeated_heading_stands_above_the_first_row_of_each_further_page()
    {
        var heading = Of(10);
        var row = Of(30) with { Repeated = heading };
        var pages = PageFlow.Spread([heading, row, row, row, row, row, row], _ => 100);
        Assert.Equal(2, pages.Count);
        Assert.Same(heading, pages[0][0].Block);
        Assert.Same(heading.Draw, pages[1][0].Block.Draw);
        Assert.Equal(Role.Decoration, pages[1][0].Block.Role); // read out once
        Assert.All(pages, page => Assert.Equal([0, 10, 40, 70], page.Select(placed => placed.Top)));
    }

    [Fact]
    public void A_first_page_may_be_of_another_height_than_the_others()
    {
        var pages = PageFlow.Spread([.. Enumerable.Range(0, 10).Select(_ => Of(10))], page => page == 0 ? 50 : 20);
        Assert.Equal([5, 2, 2, 1], pages.Select(page => page.Count));
    }

    [Fact]
    public void White_space_begins_no_page()
    {
        var pages = PageFlow.Spread([Of(95), Block.Space(10), Of(20), Block.Space(85)], _ => 100);
        Assert.Equal([[95], [20]], pages.Select(page => page.Select(placed => placed.Block.Height)));
        Assert.Equal([0, 0], pages.Select(page => page[0].Top));
    }

    private static Block Of(double height) => new(height, static (_, _) => { });
}
