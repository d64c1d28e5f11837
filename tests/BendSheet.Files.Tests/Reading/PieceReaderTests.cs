using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class PieceReaderTests
{
    [Fact]
    public void Distances_lie_between_the_ends_and_the_bends_whichever_comes_first()
    {
        var file = Read(Checked("[{from: A, to: 2, distance: 150}, {from: b, to: 1, distance: 5 in}]"));
        Assert.Empty(file.Findings);
        Assert.Equal(
            [
                new PieceMeasurement(new(PieceKind.Distance, 0, 2), 150, At(6, 41)),
                new PieceMeasurement(new(PieceKind.Distance, 1, 3), 127, At(6, 74)),
            ],
            Assert.Single(file.Lines).Checks.ToArray());
    }

    [Fact]
    public void A_distance_of_a_list_may_be_less_sure_than_the_tape() => Assert.Equal(
        3, Assert.Single(Read(Checked("[{from: A, to: 2, distance: 150, within: 3}]")).Lines[0].Checks).Within);

    [Fact]
    public void Where_it_is_not_clear_which_bends_are_made_what_was_measured_is_not_looked_at()
    {
        var file = Read(Checked("{A-1: 900}\n    bent: [1, x]"));
        Assert.Equal("7:15 no-distance", Places(file));
        Assert.Empty(file.Lines[0].Checks);
    }

    [Fact]
    public void A_tape_is_not_longer_than_the_tube_that_it_is_held_to()
    {
        var finding = Assert.Single(
            CarPlan.Of(Read(Checked("{A-B: 9 m}")), []).Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal((6, 19), (finding.Position.Line, finding.Position.Column));
        Assert.EndsWith("a tape drawn tight is never longer than that; read it again", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void No_port_lies_less_than_nothing_aside()
    {
        var finding = Assert.Single(
            CarPlan.Of(Read(Checked("{A-1: 100}\n    trial-fit: {aside: -5 m}")), []).Findings,
            finding => finding.Severity == Severity.Error);
        Assert.StartsWith("this trial fit would put the port beyond A's straight", finding.Message, StringComparison.Ordinal);
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
        "`corner 1` is no place on the piece: write A or B, or the number of a bend, 1 to 2",
        Assert.Single(Read(Checked("[{from: A, to: corner 1, distance: 150}]")).Findings).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Everything_that_can_be_measured_has_its_key()
    {
        var file = Read(Checked(
            "{A-2: 150, 3-1: 127, B ahead: -20, 2 aside: {distance: 1 in, within: 2}, bend 2: 34, roll 2: 47 ccw, "
                + "bend 1: {angle: 88, within: 2}}"));
        Assert.Empty(file.Findings);
        var checks = Assert.Single(file.Lines).Checks;
        Assert.Equal(
            [
                (new PieceQuantity(PieceKind.Distance, 0, 2), 150, null),
                (new(PieceKind.Distance, 1, 3), 127, null),
                (new(PieceKind.Ahead, 0, 3), -20, null),
                (new(PieceKind.Aside, 0, 2), 25.4, 2.0),
                (new(PieceKind.Bend, 0, 2), 34 * Degree, null),
                (new(PieceKind.Roll, 0, 2), -47 * Degree, null),
                (new(PieceKind.Bend, 0, 1), 88 * Degree, 2 * Degree),
            ],
            checks.Select(check => (check.Quantity, check.Value, check.Within)));
        Assert.Equal(
            ["A-2", "1-B", "B ahead", "2 aside", "bend 2", "roll 2", "bend 1"],
            checks.Select(check => check.Quantity.Name(2)),
            StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("{roll 1: 30}", "6:14 no-distance")]
    [InlineData("{bend 3: 30}", "6:14 no-distance")]
    [InlineData("{bend 2: 400}", "6:22 out-of-range")]
    [InlineData("{roll 2: sideways}", "6:22 unreadable-angle")]
    [InlineData("{bend 2: {within: 2}}", "6:22 missing-word")]
    [InlineData("{bend 2: {angle: 30, within: 0}}", "6:42 out-of-range")]
    [InlineData("{bend 2: [30]}", "6:22 wrong-kind")]
    [InlineData("{A ahead: 30}", "6:14 no-distance")]
    [InlineData("{A-2: 150, 2-A: 151}", "6:29 distance-said-twice")]
    public void A_key_that_cannot_be_is_one_finding_at_its_place(string checks, string places) =>
        Assert.Equal(places, Places(Read(Checked(checks))));

    [Theory]
    [InlineData("bent: 2", "")]
    [InlineData("bent: [2, 1]", "")]
    [InlineData("bent: [3]", "6:12 no-distance")]
    [InlineData("bent: [[1]]", "6:12 wrong-kind")]
    [InlineData("bent: 2\n    checks: {A-B: 150}", "7:14 out-of-place")]
    [InlineData("bent: 2\n    checks: {A-1: 150}", "7:14 out-of-place")]
    [InlineData("bent: 2\n    checks: {bend 1: 50}", "7:14 out-of-place")]
    [InlineData("trial-fit: {ahead: 6, aside: -4}", "")]
    [InlineData("trial-fit: {aside: 3/16 in}", "")]
    [InlineData("trial-fit: {}", "6:16 missing-word")]
    [InlineData("trial-fit: 6", "6:16 wrong-kind")]
    [InlineData("trial-fit: {ahead: far}", "6:24 unreadable-length")]
    public void What_is_bent_and_how_it_fitted(string typed, string places) =>
        Assert.Equal(places, Places(Read(Checked("{bend 2: 90}").Replace("checks: {bend 2: 90}", typed, StringComparison.Ordinal))));

    [Fact]
    public void Bends_that_are_made_and_a_trial_fit_are_read()
    {
        var line = Assert.Single(Read(Checked(
            "{bend 2: 90}").Replace("checks: {bend 2: 90}", "bent: [2, 1]\n    trial-fit: {ahead: 6}", StringComparison.Ordinal)).Lines);
        Assert.Equal([2, 1], line.Bent.ToArray());
        Assert.Equal((6.0, 0.0), (line.TrialFit!.Ahead.Millimetres, line.TrialFit.Aside.Millimetres));
    }

    [Fact]
    public void A_U_bend_has_a_back_and_a_part_of_a_coil_has_none()
    {
        const string Wire = "wire: {radius: 4}\nlines:\n  fl:\n    checks: {A-1: 150}\n    ";
        Assert.Empty(Read(Top + Wire + "rows: [{straight: 100, bend: 180}, {straight: 80}]\n    measured: straight\n").Findings);
        Assert.Equal("7:14 no-distance", Places(Read(
            Top + Wire + "rows: [{straight: 100, coil: 1, radius: 30, pitch: 8}, {straight: 80}]\n")));
    }

    [Fact]
    public void A_rough_line_has_no_finished_piece() =>
        Assert.Equal("5:20 out-of-place", Places(Read(Top + "lines:\n  fl: {rough: 2 m, checks: [{from: A, to: B, distance: 150}]}\n")));

    private static IEnumerable<double> Measured(Core.Templates.LineTemplate line) =>
        line.Checks.Select(check => check.Value);

    private const double Degree = Math.PI / 180;

    private static SourcePosition At(int line, int column) => new("car.yaml", line, column);

    /// <summary>A line of two corners; the value of <c>checks</c> stands from line 6, column 13 on.</summary>
    private static string Checked(string checks) =>
        Top + $"lines:\n  fl:\n    checks: {checks}\n    rows: [{{straight: 100, bend: 90}}, {{straight: 100, rotate: 90 cw, bend: 90}}, "
            + $"{{straight: 100}}]\n";
}
