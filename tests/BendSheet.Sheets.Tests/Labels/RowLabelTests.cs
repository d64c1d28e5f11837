using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.Tests.Labels;

public class RowLabelTests
{
    [Fact]
    public void No_leader_passes_under_another_label()
    {
        // At the end of the tube: a nut, a sleeve, and a long name that has to lie to the left of where it belongs.
        var labels = RowLabel.Place([(80, 10), (92, 12), (100, 40)], 100, 4);
        Assert.Equal([0, 0, 1], labels.Select(label => label!.Row));
        Assert.Equal(80, labels[2]!.Middle);

        // There is no row nearer to the tube: better so than left out.
        Assert.Equal([0, 1], RowLabel.Place([(100, 40), (92, 12)], 100, 4).Select(label => label!.Row));
    }

    [Fact]
    public void A_label_goes_where_no_leader_of_a_further_row_passes() =>

        // The second one lies below the first, its leader at 11; the third would cover that leader in the first row, and meet it in the
        // second.
        Assert.Equal([0, 1, 2], RowLabel.Place([(5, 10), (11, 10), (17, 13)], 100, 4).Select(label => label!.Row));

    [Fact]
    public void What_finds_no_row_is_left_out() =>
        Assert.Equal([0, 1, null], RowLabel.Place([(10, 10), (10, 10), (10, 10)], 100, 2).Select(label => label?.Row));
}
