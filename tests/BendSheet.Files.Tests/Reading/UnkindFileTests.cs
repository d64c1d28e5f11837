using System.Globalization;
using System.Text;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Files that nobody types by accident: each ends in a finding with its place, whatever it would come to.</summary>
public class UnkindFileTests
{
    private const string Wire = Top + "wire: {diameter: 2.4, radius: 4}\n";

    [Fact]
    public void A_long_chain_of_templates_is_walked_and_counted()
    {
        var text = new StringBuilder(Top).Append("templates:\n");
        for (var i = 20_000; i > 0; i--)
        {
            text.Append(CultureInfo.InvariantCulture, $"  t{i}: [{{use: t{i - 1}}}, {{straight: 5, bend: 5}}]\n");
        }

        var file = Read(text.Append("  t0: [{straight: 5, bend: 10}]\nlines:\n  fl: [{use: t20000}, {straight: 50}]\n").ToString());
        Assert.Empty(file.Lines);
        Assert.Equal("too-many-rows", Assert.Single(file.Findings).Rule.Name);
    }

    [Fact]
    public void A_long_chain_of_mirror_images_is_walked_and_counted()
    {
        var text = new StringBuilder(Top).Append("lines:\n");
        for (var i = 50_000; i > 0; i--)
        {
            text.Append(CultureInfo.InvariantCulture, $"  l{i}: {{mirror: l{i - 1}}}\n");
        }

        var file = Read(text.Append("  l0: [{straight: 50, bend: 10}, {straight: 50}]\n").ToString());
        Assert.All(file.Findings, finding => Assert.Equal("too-many-rows", finding.Rule.Name));
        Assert.InRange(file.Findings.Length, 1, 2);
    }

    [Theory]
    [InlineData("{straight: 50, bend: 10}")]
    [InlineData("{straight: 0.01}")]
    public void Templates_that_use_one_another_twice_are_counted_before_they_are_made(string row)
    {
        var text = new StringBuilder(Top).Append("templates:\n");
        for (var i = 60; i > 0; i--)
        {
            text.Append(CultureInfo.InvariantCulture, $"  t{i}: [{{use: t{i - 1}}}, {{use: t{i - 1}}}]\n");
        }

        var file = Read(text.Append(CultureInfo.InvariantCulture, $"  t0: [{row}]\nlines:\n  fl: [{{use: t60}}, {{straight: 50}}]\n")
            .ToString());
        Assert.Empty(file.Lines);
        Assert.Equal("too-many-rows", Assert.Single(file.Findings).Rule.Name);
    }

    [Fact]
    public void Sixty_thousand_straights_in_a_row_are_too_many() =>
        Assert.Equal("1006:7 too-many-rows", Places(Read(Rows([.. Enumerable.Repeat("{straight: 0.1}", 60_000)]))));

    /// <summary>Of a line that can only be looked at for so long, what it comes to is still said.</summary>
    [Theory]
    [InlineData("coil: 100, radius: 15, pitch: 0.0000001", "meets-itself")]
    [InlineData("coil: 100, radius: 15, pitch: 0.001", "meets-itself")]
    [InlineData("coil: 100, radius: 15, pitch: 4", "meets-itself")]
    [InlineData("coil: 60, radius: 0.00001, pitch: 90 m", "out-of-range")]
    [InlineData("coil: 0.0000000001, radius: 15, pitch: 5", "out-of-range")]
    [InlineData("coil: 100, radius: 3 m, pitch: 5", "out-of-range")]
    public void A_coil_of_nearly_nothing_or_of_metres_has_its_finding(string coil, string rule)
    {
        var file = Read(Wire + $"lines:\n  fl: {{measured: straight, rows: [{{straight: 50, {coil}}}, {{straight: 50}}]}}\n");
        var findings = CarPlan.Of(file, []).Findings.Where(finding => finding.Severity == Severity.Error).ToList();
        Assert.Equal(rule, Assert.Single(findings).Rule.Name);
        Assert.Equal(6, findings[0].Position.Line);
    }

    [Fact]
    public void A_hypothesis_that_puts_two_corners_in_one_place_is_passed_over()
    {
        var file = Read(
            Top + "lines:\n  fl: {corners: [[60, 3/16 in, 1500], [600, 3/16 in, 1500], [2 5/16 in, 250, 35], [75.5, 1 ft 3 in, 400]], "
            + "taped: {A-B: 3/16 in, B ahead: 1500, 1-B: 60}}\n");
        Assert.Contains(CarPlan.Of(file, []).Findings, finding => finding.Rule.Name is "measured-apart");
    }

    [Fact]
    public void Distances_that_only_points_in_one_place_would_have_are_said_to_contradict_each_other()
    {
        var file = Read(
            Top + "lines:\n  fl: {legs: [{forward: 400, left: 600}, {forward: 12, left: 180}, {forward: 75.5, up: 20}], "
            + "taped: {A-B: 110, B ahead: 250, 1-B: 180}}\n");
        Assert.Contains(CarPlan.Of(file, []).Findings, finding => finding.Rule.Name is "measured-apart");
    }

    [Theory]
    [InlineData("mirror: lefft", "7:16 unknown-name")]
    [InlineData("measured: on the outside, rows: [{straight: 30, bend: 30}, {straight: 90}]", "7:8 missing-word; 7:18 not-a-choice")]
    public void What_was_meant_is_named_and_what_it_needs_is_looked_for(string line, string places) =>
        Assert.Equal(places, Places(Read(Top + "lines:\n  left:\n    - {straight: 300}\n  fl: {" + line + "}\n")));

    [Theory]
    [InlineData("radius 15\n  mark: strat", "4:3 colon-missing; 5:9 not-a-choice")]
    [InlineData("radius: 15\n   mark: strat", "5:4 uneven-indent; 5:10 not-a-choice")]
    [InlineData("radius: 15, mark: strat", "4:19 colon-twice; 4:21 not-a-choice")]
    [InlineData("radius:15\n  mark: strat", "4:3 space-after-colon; 5:9 not-a-choice")]
    public void A_slip_in_the_layout_hides_nothing_behind_it(string bender, string places) => Assert.Equal(
        places, Places(Read("units: mm\ntube: {od: 3/16 in}\nbender:\n  " + bender + "\nlines:\n  fl:\n    - {straight: 80}\n")));
}
