using BendSheet.Core.Survey;
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
    [InlineData("{A-1: {within: 3}}", "6:22 missing-word")]
    [InlineData("{A-1: {distance: 120, within: -3}}", "6:46 out-of-range")]
    [InlineData("{A-1: {distance: 120, to: back}}", "6:42 missing-word")]
    [InlineData("[{from: A, to: 1, distance: 120, within: x}]", "6:57 unreadable-length")]
    public void What_is_wrong_is_said_where_it_stands(string typed, string places) =>
        Assert.StartsWith(places, Places(Read(File(typed, side: false))), StringComparison.Ordinal);

    /// <summary>The flat U of <see cref="BackReaderTests"/>, by nothing but a tape over its backs.</summary>
    [Fact]
    public void Distances_over_backs_give_the_corners()
    {
        var distances = string.Join(", ", new[]
        {
            ("A-1", 119.6774), ("1-2", 99.3539), ("2-B", 79.6777), ("A-2", 155.7501), ("1-B", 127.6083), ("A-B", 107.7033),
        }.Select(one => FormattableString.Invariant($"{one.Item1}: {{distance: {one.Item2}, to: back}}")));
        var file = Read(Top + "wire: {diameter: 2.4, radius: 4}\nlines:\n  fl:\n    distances: {" + distances + "}\n");
        Assert.Equal("7:216 taken-as-flat", Places(file));
        var line = Assert.Single(file.Lines);
        Assert.All(line.Route.Legs.Zip([120, 100, 80]), leg => Assert.Equal(leg.Second, leg.First.Measured.Millimetres, 1e-3));
        Assert.All(line.Route.Bends, bend => Assert.Equal(90, bend.Turn.Degrees, 1e-2));
        Assert.All(line.Taped!.Residuals, one => Assert.Equal(0, one.Residual.Millimetres, 1e-3));
        Assert.Equal("A-1 to back", LineSurvey.Of(line)!.Measurements[0].Name);
    }

    /// <summary>
    /// One distance too many, 5.94 mm too long, which the others check little. Corners that meet the weighed distances best are where the
    /// adjustment has them, which goes another way to them; and a distance of which nobody is sure gives way.
    /// </summary>
    [Theory]
    [InlineData("{distance: 333, within: 20}", -5.94, 0.3)]
    [InlineData("{distance: 333, within: 0.1}", 0, 0.001)]
    [InlineData("333", 0, 0.1)]
    public void What_is_less_sure_gives_way(string last, double moved, double within)
    {
        // A - 1 - 2 - 3 - B: legs of 120, 60, 200 and 80, bends of 45, 30 and 90, all but A to B as they are.
        var file = Read(Top + "tolerance: {tape: 1}\nlines:\n  fl:\n    distances: {A-1: 120, A-2: 167.881, 1-2: 60, A-3: 344.045, "
            + "1-3: 253.749, 2-3: 200, 1-B: 259.546, 2-B: 215.407, 3-B: 80, A-B: " + last + "}\n    side: {2: right, 3: left}\n");
        var line = Assert.Single(file.Lines);
        var taped = line.Taped!.Residuals;
        Assert.Equal(moved, taped[^1].Reconciled.Millimetres - 333, within);
        var survey = LineSurvey.Of(line)!;
        Assert.Equal(taped.Length, survey.Measurements.Length);

        // What was taped already is not asked for again.
        Assert.All(survey.Next, next => Assert.NotEqual(TapedKind.Distance, next.Quantity.Kind));
        Assert.All(taped.Zip(survey.Measurements), one =>
            Assert.Equal(one.First.Reconciled.Millimetres, one.Second.Adjusted, 2e-3));
    }

    private static Route Route(string distances, bool side = true)
    {
        var file = Read(File(distances, side));
        Assert.Empty(Places(file));
        return Assert.Single(file.Lines).Route;
    }

    private static string File(string distances, bool side) =>
        Top + $"lines:\n  fl:\n    distances: {distances}\n" + (side ? "    side: right\n" : string.Empty);
}
