using BendSheet.Sheets.FullSize;

namespace BendSheet.Sheets.Tests.FullSize;

public class LabelRowsTests
{
    [Fact]
    public void No_leader_passes_under_another_label()
    {
        // At the end of the tube: a nut, a sleeve, and a long name that has to lie to the left of where it belongs.
        var rows = LabelRows.Place([(80, 10), (92, 12), (100, 40)], 100, 4);
        Assert.Equal([0, 0, 1], Enumerable.Range(0, 3).Select(rows.Row));
        Assert.Equal(80, rows.X(2));

        var longFirst = LabelRows.Place([(100, 40), (92, 12)], 100, 4);
        Assert.Equal([0, 1], Enumerable.Range(0, 2).Select(longFirst.Row)); // there is no row nearer to the tube: better so than left out
    }

    [Fact]
    public void A_label_goes_where_no_leader_of_a_further_row_passes()
    {
        // The second one lies below the first, its leader at 11; the third would cover that leader in the first row, and meet it in the
        // second.
        var rows = LabelRows.Place([(5, 10), (11, 10), (17, 13)], 100, 4);
        Assert.Equal([0, 1, 2], Enumerable.Range(0, 3).Select(rows.Row));
    }

    [Fact]
    public void What_finds_no_row_is_left_out()
    {
        var rows = LabelRows.Place([(10, 10), (10, 10), (10, 10)], 100, 2);
        Assert.Equal([true, true, false], Enumerable.Range(0, 3).Select(rows.Has));
    }
}
