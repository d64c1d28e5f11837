using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.References;

/// <summary>
/// Published flare diameters, copied beside the program, against what it has. None of them is confirmed, so that these tests only say that
/// nothing was lost on the way, and that each is said to be from memory or second-hand.
/// </summary>
public class FlareSizeTests
{
    private static IReadOnlyList<IReadOnlyDictionary<string, string>> Rows { get; } = ReferenceTable.Read("flare_sizes.csv");

    public static TheoryData<int> Numbers { get; } = [.. Enumerable.Range(0, Rows.Count)];

    /// <summary>Where two publications have one size, the program has the narrower limits, which the wider allow.</summary>
    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_programs_limits_lie_within_each_publications(int number)
    {
        var row = Rows[number];
        var (flare, size) = Key(row);
        var own = FlareSize.For(flare, new("main", size, null, null, null))!;
        Assert.Equal(size, own.TubeSize);
        AssertGeometry.AtMost(own.Smallest.Millimetres, PublishedValue.Length(row["smallest"], row["unit"]).Millimetres);
        AssertGeometry.AtMost(PublishedValue.Length(row["largest"], row["unit"]).Millimetres, own.Largest.Millimetres);
        Assert.True(own.Source.MustBeChecked);
    }

    [Fact]
    public void Every_row_of_the_program_is_printed_somewhere() => Assert.All(FlareSize.All, own =>
    {
        var row = Rows.First(row => Key(row) == (own.Flare, own.TubeSize));
        AssertGeometry.Equal(PublishedValue.Length(row["smallest"], row["unit"]), own.Smallest);
        AssertGeometry.Equal(PublishedValue.Length(row["largest"], row["unit"]), own.Largest);
        Assert.Equal(row["largest_wall"].Length == 0 ? null : PublishedValue.Length(row["largest_wall"], row["unit"]), own.LargestWall);
        Assert.Equal(PublishedValue.Confidence(row["mark"]), own.Source.Confidence);
    });

    private static (Flare Flare, Length Size) Key(IReadOnlyDictionary<string, string> row) => (
        Flares.All.Single(known => string.Equals(known.Words, row["flare"], StringComparison.Ordinal)).Flare,
        PublishedValue.Length(row["tube"], row["unit"]));
}
