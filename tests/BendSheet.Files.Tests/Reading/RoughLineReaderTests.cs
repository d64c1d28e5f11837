using BendSheet.Core.Templates;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

public class RoughLineReaderTests
{
    private const string Fittings = "fittings: {an3: {flare: single 37}}\n";

    [Fact]
    public void A_line_may_have_a_rough_length_and_its_ends_until_there_is_a_template()
    {
        var file = Read(
            Top + Fittings + "lines:\n  rear: {rough: 2.4 m, from: {at: outlet, fitting: an3}, to: tee, made: true}\n"
                + "  fl: {rows: [{straight: 300}]}\n");
        Assert.Empty(file.Findings);
        var rough = Assert.Single(file.RoughLines);
        Assert.Equal(
            ("rear", 2400.0, "outlet", "an3", "tee", true),
            (rough.Name, rough.Length.Millimetres, rough.From.At, rough.From.Fitting?.Name, rough.To.At, rough.Made));
        Assert.Equal("fl", Assert.Single(file.Lines).Name);
    }

    [Fact]
    public void The_mirror_image_of_a_rough_line_is_as_long_roughly_wherever_it_stands()
    {
        var file = Read(
            Top + Fittings
                + "lines:\n  right: {mirror: left, to: right hose}\n  left: {rough: 900, from: {at: tee, fitting: an3}}\n  again: "
                + "{mirror: right}\n");
        Assert.Empty(file.Findings);
        Assert.Equal(
            [
                ("right", 900.0, null, "an3", "right hose"),
                ("left", 900.0, "tee", "an3", null),
                ("again", 900.0, null, "an3", (string?)null),
            ],
            file.RoughLines.Select(line => (line.Name, line.Length.Millimetres, line.From.At, line.From.Fitting?.Name, line.To.At)));
    }

    [Fact]
    public void The_mirror_image_of_a_rough_line_has_its_fittings_and_leads_to_ports_of_its_own()
    {
        var file = Read(
            Top + Fittings
                + "parts: {tee: {kind: tee, ports: an-3}}\nlines:\n  left: {rough: 900, from: {at: tee.left, fitting: an3}, to: {at: "
                + "tee.in, fitting: an3}}\n  right: {mirror: left, from: tee.right}\n");
        Assert.Empty(file.Findings);
        var right = file.RoughLines[1];
        Assert.Equal(("tee.right", "an3", "an3", null), (right.From.At, right.From.Fitting?.Name, right.To.Fitting?.Name, right.To.Port));
    }

    [Fact]
    public void On_the_first_evening_no_tool_is_needed()
    {
        var file = Read("units: mm\ntube: {od: 3/16 in}\nlines: {rear: {rough: 2.4 m}}\n");
        Assert.Empty(file.Findings);
        Assert.Single(file.RoughLines);
    }

    [Fact]
    public void Its_note_stands_at_the_length_and_ends_when_it_is_made()
    {
        var rough = Read(Top + "lines: {a: {rough: 900}, b: {rough: 900, made: true}}\n").RoughLines;
        var note = Assert.Single(rough.SelectMany(line => line.Findings));
        Assert.Equal((RoughLine.Rule, 4, 20), (note.Rule, note.Position.Line, note.Position.Column));
    }

    [Theory]
    [InlineData("rough: 0", "5:14 out-of-range")]
    [InlineData("rough: long", "5:14 unreadable-length")]
    [InlineData("ruogh: 900", "5:7 unknown-word")]
    [InlineData("rough: 900, rows: [{straight: 900}]", "5:7 said-twice")]
    [InlineData("rough: 900, measured: outside", "5:19 out-of-place")]
    [InlineData("rough: 900, clips: {every: 300}", "5:19 out-of-place")]
    [InlineData("rough: 900, mirror: b", "5:7 out-of-place")]
    [InlineData("rough: 900, tube: main", "5:25 unknown-name")]
    [InlineData("rough: 900, bender: big", "5:27 unknown-name")]
    [InlineData("rough: 900, made: maybe", "5:25 not-a-choice")]
    [InlineData("rough: 900, from: {at: a, trim: 5}", "5:33 out-of-place")]
    public void What_is_wrong_is_said_where_it_stands(string typed, string places) =>
        Assert.Equal(places, Places(Read(Top + $"lines:\n  a: {{{typed}}}\n  b: [{{straight: 300}}]\n")));
}
