using BendSheet.Sheets.Elements;

namespace BendSheet.Sheets.Tests.Elements;

public class LabelRowTests
{
    [Fact]
    public void Labels_with_room_enough_stay_where_they_belong() =>
        Assert.Equal([20, 40, 90], LabelRow.Spread([20, 40, 90], 10, 100));

    [Fact]
    public void Labels_that_would_meet_move_apart_to_both_sides() =>
        Assert.Equal([45, 55, 90], LabelRow.Spread([50, 50, 90], 10, 100));

    [Fact]
    public void No_labels_need_no_room() => Assert.Empty(LabelRow.Spread([], 10, 100));

    [Fact]
    public void Labels_keep_their_order_and_distance_and_stay_on_the_page()
    {
        var random = new Random(7);
        for (var run = 0; run < 200; run++)
        {
            var places = Enumerable.Range(0, 11).Select(_ => random.NextDouble() * 190 * (run % 3 == 0 ? 0.05 : 1)).Order().ToList();
            var labels = LabelRow.Spread(places, 17, 190);
            Assert.InRange(labels[0], 8.5 - 1e-9, 190);
            Assert.InRange(labels[^1], 0, 190 - 8.5 + 1e-9);
            Assert.All(labels.Zip(labels.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 17 - 1e-9));
        }
    }
}
