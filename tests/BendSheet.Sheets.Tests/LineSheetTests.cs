using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Tests;

public class LineSheetTests
{
    /// <summary>Notes and hardware leave so little of the first page that the picture of this line would be 13 mm long there.</summary>
    private static readonly string Crowded = Printed.Head + """
          crowded:
            from: {at: front tee on the bulkhead, fitting: an3}
            to: {at: hose bracket, fitting: an3}
            rows:
              - {straight: 120, bend: 20, note: beside the tank strap}
              - {straight: 113, rotate: 180, bend: 75, note: clears the steering column}
              - {straight: 194, rotate: 30, bend: 90, note: beside the frame rail behind the tank strap}
              - {straight: 149, rotate: -135, bend: 75}
              - {straight: 61}
        """;

    /// <summary>The other one would have a picture of less than 15 mm, its bubbles around it.</summary>
    public static TheoryData<string, Paper> TooSmall =>
        new() { { Crowded, Paper.Letter }, { Printed.FewBends(5), Paper.Letter } };

    [Theory]
    [MemberData(nameof(TooSmall))]
    public void A_shape_too_small_to_read_is_drawn_large_on_the_next_page(string yaml, Paper paper)
    {
        var pages = Printed.Pages(Printed.Sheets(yaml, paper));
        Assert.Equal(2, pages.Count);
        Assert.DoesNotContain("Thefinishedshape", Printed.Text([pages[0]]), StringComparison.Ordinal);
        Assert.Contains("Thefinishedshape", Printed.Text([pages[1]]), StringComparison.Ordinal);
    }

    /// <summary>A tube of two fingers' length is drawn no larger than it is.</summary>
    [Fact]
    public void A_shape_that_is_small_itself_needs_no_page_of_its_own() => Assert.Single(Printed.Pages(Printed.Sheets(
        Printed.Head + "  small:\n    - {straight: 20, bend: 30}\n    - {straight: 20}\n")));
}
