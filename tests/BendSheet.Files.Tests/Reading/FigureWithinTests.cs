using BendSheet.Core.Survey;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Figures of a row that say themselves how sure they are.</summary>
public class FigureWithinTests
{
    private static readonly string[] Example =
    [
        "{straight: {length: 120, within: 3}, bend: {angle: 45, within: 1}}",
        "{straight: 60, rotate: {angle: 90 cw, within: 5}, included: {angle: 150, within: 0.5}}",
        "{straight: 80}",
    ];

    [Fact]
    public void Each_has_its_own_deviation_and_the_others_the_tolerance()
    {
        var survey = LineSurvey.Of(Assert.Single(Read(Rows(Example)).Lines))!;
        Assert.Equal(
            ["leg 1 3", "bend 1 1", "leg 2 1.5", "rotation 2 5", "bend 2 0.5", "leg 3 1.5"],
            survey.Measurements.Select(one => FormattableString.Invariant(
                $"{one.Name} {Math.Round(one.IsAngle ? one.Within * 180 / Math.PI : one.Within, 9)}")),
            StringComparer.Ordinal);
    }

    [Fact]
    public void The_line_is_that_of_the_bare_figures()
    {
        var read = Assert.Single(Read(Rows(Example)).Lines).Route;
        var bare = Assert.Single(Read(Rows(
            "{straight: 120, bend: 45}", "{straight: 60, rotate: 90 cw, included: 150}", "{straight: 80}")).Lines).Route;
        Assert.Equal(bare.Legs.Select(leg => leg.Measured), read.Legs.Select(leg => leg.Measured));
        Assert.Equal(bare.Bends.Select(bend => (bend.Turn, bend.Rotation)), read.Bends.Select(bend => (bend.Turn, bend.Rotation)));
    }

    /// <summary>A figure within 0 is known: it is not one of those that are adjusted, and the others of its row still are.</summary>
    [Theory]
    [InlineData("{straight: {length: 120, within: 0}, bend: 45}", "bend 1")]
    [InlineData("{straight: 120, bend: {angle: 45, within: 0}}", "leg 1")]
    [InlineData("{straight: 120, offset: {length: 30, within: 0}, bend: 45}", "leg 1, bend 1")]
    [InlineData("{straight: 120, offset: {length: 30, within: 0}, run: 60}", "leg 1, run 1")]
    [InlineData("{straight: 120, offset: 30, run: {length: 60, within: 0}}", "leg 1, offset 1")]
    [InlineData("{straight: 120, saddle: {length: 30, within: 0}, bends: 3, width: {length: 90, within: 0}}", "leg 1")]
    public void Within_nothing_is_known(string row, string adjusted)
    {
        var names = LineSurvey.Of(Assert.Single(Read(Rows(row, "{straight: {length: 80, within: 0}}")).Lines))!.Measurements
            .Select(one => one.Name).Where(name => !name.StartsWith("rotation", StringComparison.Ordinal));
        Assert.Equal(adjusted, string.Join(", ", names));
    }

    [Theory]
    [InlineData("{straight: {length: 120, withn: 3}, bend: 45}", "6:32 unknown-word")]
    [InlineData("{straight: {within: 3}, bend: 45}", "6:18 missing-word")]
    [InlineData("{straight: {length: 120, within: -3}, bend: 45}", "6:40 out-of-range")]
    [InlineData("{straight: {length: x, within: 3}, bend: 45}", "6:27 unreadable-length")]
    [InlineData("{straight: {angle: 120}, bend: 45}", "6:19 unknown-word")]
    [InlineData("{straight: 120, bend: {angle: 45, within: x}}", "6:49 unreadable-angle")]
    [InlineData("{straight: 120, bend: {angle: 400}}", "6:37 out-of-range")]
    [InlineData("{straight: 120, bend: {}}", "6:29 wrong-kind")]
    [InlineData("{straight: 120, bend: 45, note: {angle: 3}}", "6:39 wrong-kind")]
    public void What_is_wrong_is_said_where_it_stands(string row, string places) =>
        Assert.Equal(places, Places(Read(Rows(row, "{straight: 80}"))));
}
