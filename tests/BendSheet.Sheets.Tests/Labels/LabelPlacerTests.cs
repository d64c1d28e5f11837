using BendSheet.Sheets.Labels;

namespace BendSheet.Sheets.Tests.Labels;

public class LabelPlacerTests
{
    [Fact]
    public void A_label_takes_the_cheapest_free_place_and_of_equals_the_first()
    {
        var placer = new LabelPlacer<string>((label, placed) => !placed.Any(other => label[0] == other[0]), (_, _) => 0);
        Assert.Equal("b1", placer.Place([new(1, 3, "a1"), new(1, 2, "b1"), new(2, 2, "c1")]));
        Assert.Equal("c2", placer.Place([new(1, 1, "b2"), new(2, 2, "c2")]));
        Assert.Null(placer.Place([new(1, 1, "b3"), new(2, 2, "c3")]));
    }

    [Fact]
    public void What_a_label_crosses_makes_its_place_dearer()
    {
        var placer = new LabelPlacer<string>((_, _) => true, (label, placed) => label.Length + placed.Count);
        Assert.Equal("b", placer.Place([new(1, 1, "aaaa"), new(2, 2, "b"), new(3, 3, "cc")]));
    }

    [Fact]
    public void No_place_is_looked_at_that_cannot_be_cheaper()
    {
        var placer = new LabelPlacer<string>((_, _) => true, (_, _) => 0);
        Assert.Equal("a", placer.Place(Places()));

        static IEnumerable<Candidate<string>> Places()
        {
            yield return new(1, 2, "a");
            yield return new(2, 2, "b");
            throw new InvalidOperationException();
        }
    }
}
