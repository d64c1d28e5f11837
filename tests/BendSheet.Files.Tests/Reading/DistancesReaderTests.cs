using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>A route of distances in every notation that they are read in: one shape.</summary>
public class DistancesReaderTests
{
    private const string Numbers = "{0-1: 120, 0-2: 168, 1-2: 60, 0-3: 344, 1-3: 253.5, 2-3: 200}";

    [Theory]
    [InlineData("{A-1: 120, A-2: 168, 1-2: 60, A-B: 344, 1-B: 253.5, 2-B: 200}")]
    [InlineData("{1-A: 120, 2 - a: 168, 2-1: 60, b-A: 344, B-1: 253.5, 2-B: 200}")]
    [InlineData(
        "[{from: A, to: 1, distance: 120}, {from: A, to: 2, distance: 168}, {from: 2, to: 1, distance: 60}, "
            + "{from: 0, to: B, distance: 344}, {from: 1, to: B, distance: 253.5}, {from: B, to: 2, distance: 200}]")]
    public void Ends_by_letter_or_number_and_a_list_say_the_same_shape(string typed)
    {
        var (expected, read) = (Route(Numbers), Route(typed));
        Assert.Equal(expected.Legs.Select(leg => leg.Measured), read.Legs.Select(leg => leg.Measured));
        Assert.Equal(expected.Bends.Select(bend => (bend.Turn, bend.Rotation)), read.Bends.Select(bend => (bend.Turn, bend.Rotation)));
    }

    [Fact]
    public void A_straight_line_has_only_its_ends() =>
        Assert.Equal(300, Route("{A-B: 300}", side: false).Legs[0].Measured.Millimetres, 1e-9);

    [Theory]
    [InlineData("{A-C: 120, A-2: 168}", "6:17 unknown-word")]
    [InlineData("{A: 120}", "6:17 unknown-word")]
    [InlineData("[{from: A, to: C, distance: 120}]", "6:31 not-a-choice")]
    [InlineData("[{from: A, distance: 120}]", "6:17 missing-word")]
    [InlineData("[{from: A, to: 1, distance: -3}]", "6:44 out-of-range")]
    [InlineData("[]", "6:16 wrong-kind")]
    [InlineData("{A-1: 120, 0-1: 130}", "6:32 distance-said-twice")]
    [InlineData("{A-1: 120, B-B: 130}", "6:32 no-distance")]
    public void What_is_wrong_is_said_where_it_stands(string typed, string places) =>
        Assert.StartsWith(places, Places(Read(File(typed, side: false))), StringComparison.Ordinal);

    private static Route Route(string distances, bool side = true)
    {
        var file = Read(File(distances, side));
        Assert.Empty(Places(file));
        return Assert.Single(file.Lines).Route;
    }

    private static string File(string distances, bool side) =>
        Top + $"lines:\n  fl:\n    distances: {distances}\n" + (side ? "    side: right\n" : string.Empty);
}
