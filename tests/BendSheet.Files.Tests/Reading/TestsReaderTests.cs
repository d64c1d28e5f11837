using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Workshop;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>
/// Tests of a bender as they are typed: what is read, and where each finding stands and what it says would make it right.
/// </summary>
public class TestsReaderTests
{
    /// <summary>Test as it stands at 3:35, finding, and the end of its message.</summary>
    public static TheoryData<string, string, string> Wrong { get; } = new()
    {
        {
            "{pull: 90, got: 93}", "3:42 out-of-range",
            "pulled to 90° a bend cannot come out at 93°, because tube only comes back: look whether `pull` and `got` changed places"
        },
        { "{pull: 44, included: 135}", "3:42 out-of-range", "look whether `pull` and `got` changed places" },
        {
            "{pull: 93, got: 9}", "3:42 out-of-range",
            "the bend came back from 93° to 9°, and tube bent by hand comes back a few degrees: look at `pull` and `got` again"
        },
        { "{pull: 93, included: 150}", "3:42 out-of-range", "look at `pull` and `included` again" },
        { "{pull: 93}", "3:35 missing-word", "add `got`, the degrees that the tube turns, or `included`, the angle between its legs" },
        { "{got: 90, included: 90, pull: 93}", "3:45 said-twice", "keep one of them" },
        {
            "{got: 90}", "3:35 missing-word",
            "a test needs what the tool was pulled to (`pull`), or a piece's `length` before and its `legs` after, such as `tests: "
                + "[{pull: 93, got: 90}, {pull: 47.5, got: 45}]`"
        },
        { "{got: 90, length: 200}", "3:45 missing-word", "add `legs`, such as `legs: [106, 105.5]`" },
        { "{got: 90, legs: [103, 103]}", "3:45 missing-word", "add `length`, such as `length: 200`" },
        { "{pull: 93, got: 90, mark: 97}", "3:55 out-of-place", "stands: add them, or take it out" },
        {
            "{got: 90, length: 200, legs: [106, 105.5], measured: outside, mark: 205}", "3:97 out-of-range",
            "check both, and their units"
        },
        {
            "{got: 90, length: 200, legs: [56, 155.5], measured: outside, mark: 140}", "3:96 out-of-range",
            "look whether the legs changed places"
        },
        { "{pull: 93, got: 90, measured: outside}", "3:55 out-of-place", "add `length` and `legs`, or take it out" },
        {
            "{got: 90, length: 200, legs: [103]}", "3:64 wrong-kind",
            "`legs` is the two legs of the bent piece, such as `legs: [106, 105.5]`, and this is 1 length"
        },
        { "{got: 90, length: 200, legs: [1, 2, 3]}", "3:64 wrong-kind", "and this is 3 lengths" },
        { "{got: 90, length: 200, legs: []}", "3:64 wrong-kind", "and this is empty" },
        { "{got: 90, length: 200, legs: 206}", "3:64 wrong-kind", "and this is `206`" },
        { "{got: 90, length: 200, legs: [103, x]}", "3:70 unreadable-length", "write a number, such as `310`, `310 mm` or `12 5/16 in`" },
        { "{got: 90, length: 200, legs: [103, -3]}", "3:70 out-of-range", "it must be above 0 and at most 100 m" },
        { "{got: 90, length: 0, legs: [103, 103]}", "3:53 out-of-range", "it must be above 0 and at most 100 m" },
        { "{pull: 400, got: 90}", "3:42 out-of-range", "it must be from 1° (less cannot be measured on tube) to 360°" },
        { "{pull: 93, got: 0}", "3:51 out-of-range", "it must be from 1° (less cannot be measured on tube) to 360°" },
        {
            "{pull: 3, included: 179.5}", "3:55 out-of-range",
            "it must be from 0° to 179° (a bend of less than 1° cannot be measured on tube)"
        },
        { "{got: 180, length: 200, legs: [103, 103]}", "3:36 no-corner", "measure its flat parts and say `measured: straight` for it" },
        { "{included: 0, length: 200, legs: [103, 103]}", "3:36 no-corner", "measure its flat parts and say `measured: straight` for it" },
        {
            "{got: 90, length: 200, legs: [103, 116]}", "3:58 out-of-range",
            "they leave 9.6 mm (0.377 in) of tube for a bend of 90°, and by the tool's radius it takes 22.4 mm (0.884 in) (from 11.3 mm "
                + "(0.442 in) to 33.6 mm (1.325 in) can be)"
        },
        {
            "{got: 90, length: 300, legs: [103, 103], measured: along}", "3:58 out-of-range",
            "measure all three again, and look at `measured` and the tool's `radius`"
        },
        {
            "{got: 90, length: 200, legs: [103, 103], measured: around}", "3:86 not-a-choice",
            "is not one of `corner`, `straight`, `outside`, `inside`, `along`"
        },
        {
            "{pull: 93, got: 90, tube: main}", "3:61 unknown-name",
            "the file's only tube has no name: leave this out, or give it a name in `tubes`"
        },
        { "{pull: 93, gto: 90}", "3:46 unknown-word", "`gto` is not a word for a test: did you mean `got`?" },
        {
            "{pulled-to: 93, bent: 90}", "3:36 unknown-word",
            "it may have `pull`, `got`, `included`, `length`, `legs`, `measured`, `mark`, `tube`"
        },
        { "93", "3:35 wrong-kind", "a test is written as words with values, such as `{pull: 93, got: 90}`, and this is `93`" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_test_is_found_at_its_place(string test, string place, string message)
    {
        var file = Read(With($"tests: [{test}]"));
        Assert.Equal(place, Places(file).Split("; ")[0]);
        Assert.EndsWith(message, Ending(file.Findings[0].Message, message), StringComparison.Ordinal);
        if (!test.Contains("pulled-to", StringComparison.Ordinal))
        {
            Assert.Single(file.Findings);
        }
    }

    [Theory]
    [InlineData("tests: []", "3:34 wrong-kind")]
    [InlineData("tests: {pull: 93, got: 90}", "3:34 wrong-kind")]
    [InlineData("tests: 93", "3:34 wrong-kind")]
    [InlineData("tests: ", "3:27 missing-word")]
    [InlineData("test: [{pull: 93, got: 90}]", "3:27 unknown-word")]
    public void Tests_are_a_list(string typed, string place) => Assert.Equal(place, Places(Read(With(typed))));

    [Fact]
    public void Every_test_that_is_wrong_is_found_in_one_reading() => Assert.Equal(
        "3:42 out-of-range; 3:56 missing-word; 3:75 unreadable-angle",
        Places(Read(With("tests: [{pull: 80, got: 90}, {pull: 90}, {pull: x, got: 90}]"))));

    [Fact]
    public void A_pulled_bend_is_read()
    {
        var tests = Tests("tests: [{pull: 93, got: 90}, {pull: 47.5°, included: 135 deg}]");
        Assert.Equal([(93.0, 90.0), (47.5, 45.0)], tests.Select(test => (test.Pull!.Value.Degrees, test.Got.Degrees)));
        Assert.All(tests, test => Assert.Null(test.Piece));
        Assert.Equal("3:46 3:70", string.Join(' ', tests.Select(test => $"{test.At.Line}:{test.At.Column}")));
    }

    [Theory]
    [InlineData("", MeasuredTo.Corner)]
    [InlineData(", measured: outside", MeasuredTo.Outside)]
    [InlineData(", measured: inside", MeasuredTo.Inside)]
    [InlineData(", measured: along", MeasuredTo.Along)]
    [InlineData(", measured: straight", MeasuredTo.Straight)]
    public void A_piece_is_read_in_every_habit_and_in_any_unit(string measured, MeasuredTo habit)
    {
        var legs = habit switch
        {
            MeasuredTo.Straight => "[3.5 in, 90]",
            MeasuredTo.Along => "[4 in, 98]",
            MeasuredTo.Outside => "[4 in, 109.2]",
            MeasuredTo.Inside => "[4 in, 99.8]",
            _ => "[4 in, 104.4]",
        };
        var piece = Assert.Single(Tests($"tests: [{{got: 90, length: 20 cm, legs: {legs}{measured}}}]")).Piece!;
        Assert.Equal((habit, 200.0), (piece.Habit, piece.Length.Millimetres));
        Assert.Equal(4.7625, piece.OutsideDiameter!.Value.Millimetres, 1e-9);
        Assert.Equal(habit == MeasuredTo.Straight ? 88.9 : 101.6, piece.FirstLeg.Millimetres, 1e-9);
    }

    [Fact]
    public void Legs_measured_outside_and_typed_as_corner_are_a_warning()
    {
        // The guide's own piece, whose arc factor is 0.973, without its `measured: outside`: 0.76.
        var file = Read(With("tests: [{got: 90, length: 200, legs: [106, 105.5]}]"));
        var finding = Assert.Single(file.Findings);
        Assert.Equal((Severity.Warning, "out-of-range"), (finding.Severity, finding.Rule.Name));
        Assert.Contains("look at `measured`", finding.Message, StringComparison.Ordinal);
        Assert.Empty(Read(With("tests: [{got: 90, length: 200, legs: [106, 105.5], measured: outside}]")).Findings);
    }

    [Theory]
    [InlineData("{pull: 93, got: 9}", false)]
    [InlineData("{pull: 66, got: 45}", true)]
    [InlineData("{pull: 90, got: 90}", true)]
    public void A_bend_that_came_back_far_is_a_warning_and_counts_all_the_same(string test, bool silent)
    {
        var file = Read(With($"tests: [{test}]"));
        Assert.Equal(silent ? [] : [Severity.Warning], file.Findings.Select(finding => finding.Severity));
        Assert.Single(Assert.Single(file.Benders).Tests);
    }

    [Fact]
    public void A_bend_of_180_is_measured_by_its_flat_parts()
    {
        var test = Assert.Single(Tests("tests: [{pull: 185, got: 180, length: 200, legs: [77, 77.5], measured: straight}]"));
        Assert.Equal((185, MeasuredTo.Straight), (test.Pull!.Value.Degrees, test.Piece!.Habit));
    }

    [Fact]
    public void A_test_may_name_its_tube()
    {
        var file = Read(Several("{pull: 93, got: 90, tube: b}, {pull: 92, got: 90}"));
        Assert.Empty(file.Findings);
        var bender = Assert.Single(file.Benders);
        Assert.Equal(["b", null], bender.Tests.Select(test => test.Tube?.Name), StringComparer.Ordinal);
        Assert.Single(BenderCalibration.Of(bender, file.Lines[0].Tube).Springback.Tests);
    }

    [Theory]
    [InlineData("{got: 90, length: 200, legs: [106, 105.5], measured: outside}", "3:78 missing-word")]
    [InlineData("{got: 90, length: 200, legs: [106, 105.5], measured: outside, tube: a}", "")]
    [InlineData("{got: 90, length: 200, legs: [103, 103]}", "")]
    [InlineData("{pull: 93, got: 90, tube: c}", "3:61 unknown-name")]
    public void Of_several_tubes_a_piece_measured_over_the_faces_says_which(string test, string places)
    {
        var file = Read(Several(test));
        Assert.Equal(places, Places(file));
        if (places.EndsWith("missing-word", StringComparison.Ordinal))
        {
            Assert.EndsWith("add `tube:` with the name of the one that was bent", file.Findings[0].Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(
        "units: mm\ntube: {od: x}\nbender: {radius: 14, tests: [{got: 90, length: 200, legs: [106, 105], measured: outside}]}\n",
        "2:12 unreadable-length")]
    [InlineData(
        "units: mm\ntube: {od: 5}\nbender: {radius: x, tests: [{got: 90, length: 200, legs: [106, 105], measured: outside}]}\n",
        "3:18 unreadable-length")]
    [InlineData("units: mm\ntubes: {a: {od: x}}\nbender: {radius: 9, tests: [{got: 90, pull: 93, tube: a}]}\n", "2:17 unreadable-length")]
    public void What_cannot_be_read_elsewhere_is_not_reported_again_at_the_test(string top, string places) =>
        Assert.Equal(places, Places(Read(top + Line)));

    [Fact]
    public void An_arc_factor_of_1_that_was_typed_is_told_from_none()
    {
        Assert.Null(Assert.Single(Read(Top + Line).Benders).ArcFactor);
        Assert.Equal(1, Assert.Single(Read(With("arc-factor: 1")).Benders).ArcFactor);
    }

    [Fact]
    public void Without_units_no_bender_is_shown() =>
        Assert.Empty(Read(With("tests: [{pull: 93, got: 90}]").Replace("units: mm\n", "", StringComparison.Ordinal)).Benders);

    /// <summary>The bender with more words, from 3:27 on.</summary>
    private static string With(string words) => Top.Replace("9/16 in", $"9/16 in, {words}", StringComparison.Ordinal) + Line;

    /// <summary>Two tubes, and tests of its bender from 3:35 on: the line is of tube a.</summary>
    private static string Several(string tests) =>
        "units: mm\ntubes: {a: {od: 4.75}, b: {od: 6}}\nbenders: {h: {radius: 14, tests: [" + tests
            + "]}}\nlines: {fl: {tube: a, rows: [{straight: 20}]}}\n";

    private static ImmutableArray<BenderTest> Tests(string words)
    {
        var file = Read(With(words));
        Assert.Empty(file.Findings);
        Assert.Single(file.Lines);
        return Assert.Single(file.Benders).Tests;
    }

    /// <summary>Up to the end of what is looked for, where the message goes on.</summary>
    private static string Ending(string message, string part) =>
        message.IndexOf(part, StringComparison.Ordinal) is var at and >= 0 ? message[..(at + part.Length)] : message;
}
