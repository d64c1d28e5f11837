using BendSheet.Sheets.Elements;

namespace BendSheet.Sheets.Tests.Elements;

public class LabelRowsTests
{
    [Fact]
    public void Labels_that_would_meet_go_to_another_row()
    {
        var rows = LabelRows.Place([(20, 10), (25, 10), (40, 10), (41, 10), (42, 10)], 100, 9);
        Assert.Equal([0, 1, 0, 1, 2], Enumerable.Range(0, 5).Select(rows.Row));
        Assert.Equal(3, rows.Count);
    }

    [Fact]
    public void No_two_labels_of_a_row_meet_and_none_leaves_the_page()
    {
        var random = new Random(7);
        var labels = Enumerable.Range(0, 200).Select(_ => (X: random.NextDouble() * 180, Width: 2 + (random.NextDouble() * 20))).ToList();
        var rows = LabelRows.Place(labels, 180, 200);
        for (var i = 0; i < labels.Count; i++)
        {
            Assert.InRange(rows.X(i), labels[i].Width / 2, 180 - (labels[i].Width / 2));
            for (var j = 0; j < i; j++)
            {
                Assert.True(rows.Row(i) != rows.Row(j) || Math.Abs(rows.X(i) - rows.X(j)) >= ((labels[i].Width + labels[j].Width) / 2) - 1e-9);
            }
        }
    }

    [Fact]
    public void What_finds_no_place_in_the_rows_there_are_is_left_out()
    {
        var rows = LabelRows.Place([(20, 10), (21, 10), (22, 10), (60, 10)], 100, 2);
        Assert.Equal([true, true, false, true], Enumerable.Range(0, 4).Select(rows.Has));
        Assert.Equal(2, rows.Count);
    }

    [Fact]
    public void No_labels_need_no_row() => Assert.Equal(0, LabelRows.Place([], 100, 4).Count);
}
