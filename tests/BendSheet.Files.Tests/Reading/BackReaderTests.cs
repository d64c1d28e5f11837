using System.Globalization;
using BendSheet.Core.Survey;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Distances that were taped over the backs of bends.</summary>
public class BackReaderTests
{
    private const string Wire = "wire: {diameter: 2.4, radius: 4}\n";

    private const string Line = "lines:\n  fl:\n    rows: [{straight: 120, bend: 90}, {straight: 100, bend: 90}, {straight: 80}]\n";

    /// <summary>
    /// A flat U of three straights with bends of 90°: from corner to corner 100, from A over a corner √(120² + 100²), and each back lies
    /// 4·(√2 − 1) − 1.2 = 0.4569 mm inwards along a diagonal, 0.3230 mm each way.
    /// </summary>
    [Theory]
    [InlineData("A-B", 107.7033)]
    [InlineData("1-B", 127.6083)]
    [InlineData("A-2", 155.7501)]
    [InlineData("A-1", 119.6774)]
    [InlineData("1-2", 99.3539)]
    public void A_tape_over_the_backs_reads_so(string places, double reads)
    {
        var distance = reads.ToString(CultureInfo.InvariantCulture);
        var file = Read(Top + Wire + Line + $"    taped: {{{places}: {{distance: {distance}, to: back}}}}\n");
        Assert.Empty(Places(file));
        var survey = LineSurvey.Of(Assert.Single(file.Lines))!;

        // Nothing is left over where it reads what the line has.
        Assert.Equal(0, survey.Measurements[^1].Measured - survey.Measurements[^1].Adjusted, 1e-4);
        Assert.Equal(places + " to back", survey.Measurements[^1].Name);
    }

    [Fact]
    public void To_corner_is_what_is_read_without_it()
    {
        double Adjusted(string to) => LineSurvey.Of(Assert.Single(
            Read(Top + Wire + Line + $"    taped: {{1-B: {{distance: 130{to}}}}}\n").Lines))!.Measurements[^1].Adjusted;
        Assert.Equal(Adjusted(string.Empty), Adjusted(", to: corner"));
        Assert.NotEqual(Adjusted(string.Empty), Adjusted(", to: back"));
    }

    [Theory]
    [InlineData(Wire, "1-B: {distance: 130, to: bak}", "8:38 not-a-choice")]
    [InlineData(Wire, "B ahead: {distance: 20, to: back}", "8:41 out-of-place")]
    [InlineData("", "1-B: {distance: 130, to: back}", "7:38 missing-word")]
    [InlineData("wire: {diameter: 2.4}\n", "1-B: {distance: 130, to: back}", "8:38 missing-word")]
    public void What_is_wrong_is_said_where_it_stands(string wire, string taped, string places) =>
        Assert.Equal(places, Places(Read(Top + wire + Line + $"    taped: {{{taped}}}\n")));

    [Fact]
    public void Beside_a_bend_without_a_corner_nobody_knows_where_a_back_lies() => Assert.Equal(
        "9:38 no-distance",
        Places(Read(
            Top + Wire + "lines:\n  fl:\n    measured: straight\n"
            + "    rows: [{straight: 120, bend: 90}, {straight: 100, bend: 180}, {straight: 80}]\n"
            + "    taped: {1-B: {distance: 130, to: back}}\n")));
}
