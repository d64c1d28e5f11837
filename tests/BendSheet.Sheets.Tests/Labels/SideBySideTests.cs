using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.Tests.Labels;

public class SideBySideTests
{
    [Fact]
    public void A_label_with_room_stands_at_its_place() => Assert.Equal([20, 60], SideBySide.Middles([(20, 10), (60, 10)], 100));

    [Fact]
    public void Labels_that_would_meet_stand_side_by_side_around_their_places() =>
        Assert.Equal([45, 55, 90], SideBySide.Middles([(49, 10), (51, 10), (90, 10)], 100));

    [Fact]
    public void No_label_leaves_the_row() =>
        Assert.Equal([5, 15, 85, 95], SideBySide.Middles([(0, 10), (1, 10), (99, 10), (100, 10)], 100));

    [Fact]
    public void More_than_the_row_holds_goes_beyond_its_end() => Assert.Equal([30, 90], SideBySide.Middles([(10, 60), (20, 60)], 100));

    [Fact]
    public void No_labels_need_no_room() => Assert.Empty(SideBySide.Middles([], 100));

    [Fact]
    public void Whatever_their_places_they_keep_apart_and_in_order()
    {
        var random = new Random(7);
        for (var run = 0; run < 500; run++)
        {
            var crowded = run % 3 == 0 ? 0.05 : 1;
            var labels = Enumerable.Range(0, random.Next(1, 12))
                .Select(_ => (X: random.NextDouble() * 240 * crowded, Width: 8 + (random.NextDouble() * 10)))
                .OrderBy(label => label.X).ToList();
            var middles = SideBySide.Middles(labels, 240);
            Assert.True(middles[0] - (labels[0].Width / 2) > -1e-9);
            Assert.True(middles[^1] + (labels[^1].Width / 2) < 240 + 1e-9);
            Assert.All(Enumerable.Range(1, labels.Count - 1), i =>
                Assert.True(middles[i] - middles[i - 1] > ((labels[i].Width + labels[i - 1].Width) / 2) - 1e-9));
        }
    }
}
