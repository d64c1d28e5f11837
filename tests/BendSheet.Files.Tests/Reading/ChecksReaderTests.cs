using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class ChecksReaderTests
{
    [Fact]
    public void Distances_lie_between_the_ends_and_the_corners_whichever_comes_first()
    {
        var file = Read(Checked("[{from: A, to: 2, distance: 150}, {from: b, to: 1, distance: 5 in}]"));
        Assert.Empty(file.Findings);
        Assert.Equal(
            [new FinishedDistance(0, 2, Millimetres(150), At(6, 41)), new FinishedDistance(1, 3, Millimetres(127), At(6, 74))],
            Assert.Single(file.Lines).Checks.ToArray());
    }

    [Fact]
    public void A_mirrored_line_has_its_own_and_none_of_the_other()
    {
        var file = Read(
            Checked("[{from: A, to: B, distance: 150}]")
                + "  fr: {mirror: fl}\n  again: {mirror: fl, checks: [{from: 1, to: 2, distance: 99}]}\n");
        Assert.Empty(file.Findings);
        Assert.Equal([150], Measured(file.Lines[0]));
        Assert.Empty(file.Lines[1].Checks);
        Assert.Equal([99], Measured(file.Lines[2]));
    }

    [Theory]
    [InlineData("150", "6:13 wrong-kind")]
    [InlineData("{from: 150}", "6:14 unknown-word")]
    [InlineData("{A-4: 150}", "6:14 no-distance")]
    [InlineData("{A-2: far}", "6:19 unreadable-length")]
    [InlineData("[]", "6:13 wrong-kind")]
    [InlineData("[150]", "6:14 wrong-kind")]
    [InlineData("[{from: A, to: B}]", "6:14 missing-word")]
    [InlineData("[{to: B, distance: 150}]", "6:14 missing-word")]
    [InlineData("[{from: A, too: B, distance: 150}]", "6:24 unknown-word")]
    [InlineData("[{from: A, to: C, distance: 150}]", "6:28 no-distance")]
    [InlineData("[{from: A, to: 4, distance: 150}]", "6:28 no-distance")]
    [InlineData("[{from: 1, to: 1, distance: 150}]", "6:28 no-distance")]
    [InlineData("[{from: A, to: B, distance: -150}]", "6:41 out-of-range")]
    [InlineData("[{from: A, to: B, distance: far}]", "6:41 unreadable-length")]
    [InlineData("[{from: A, to: B, distance: 150}, {from: B, to: A, distance: 140}]", "6:74 distance-said-twice")]
    [InlineData("[{from: C, to: B, distance: far}]", "6:21 no-distance; 6:41 unreadable-length")]
    public void What_cannot_be_read_is_one_finding_at_its_place(string checks, string places) =>
        Assert.Equal(places, Places(Read(Checked(checks))));

    [Fact]
    public void What_to_write_is_said() => Assert.EndsWith(
        "`corner 1` is no place on the finished piece: write A or B, or the number of a corner, 1 to 2",
        Assert.Single(Read(Checked("[{from: A, to: corner 1, distance: 150}]")).Findings).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("rows: [{straight: 100, bend: 180}, {straight: 80}]\n    measured: straight")]
    [InlineData("rows: [{straight: 100, coil: 1, radius: 30, pitch: 8}, {straight: 80}]")]
    public void A_bend_without_a_corner_is_no_place_to_measure_to(string rows)
    {
        var file = Read(Top + $"wire: {{radius: 4}}\nlines:\n  fl:\n    checks: [{{from: A, to: 1, distance: 150}}]\n    {rows}\n");
        Assert.Equal("7:28 no-distance", Places(file));
        Assert.Contains("a U-bend or a coil has none", file.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rough_line_has_no_finished_piece() =>
        Assert.Equal("5:20 out-of-place", Places(Read(Top + "lines:\n  fl: {rough: 2 m, checks: [{from: A, to: B, distance: 150}]}\n")));

    private static IEnumerable<double> Measured(Core.Templates.LineTemplate line) =>
        line.Checks.Select(check => check.Distance.Millimetres);

    private static Core.Units.Length Millimetres(double figure) => Core.Units.Length.FromMillimetres(figure);

    private static SourcePosition At(int line, int column) => new("car.yaml", line, column);

    /// <summary>A line of two corners; the value of <c>checks</c> stands from line 6, column 13 on.</summary>
    private static string Checked(string checks) =>
        Top + $"lines:\n  fl:\n    checks: {checks}\n    rows: [{{straight: 100, bend: 90}}, {{straight: 100, rotate: 90 cw, bend: 90}}, "
            + $"{{straight: 100}}]\n";
}
