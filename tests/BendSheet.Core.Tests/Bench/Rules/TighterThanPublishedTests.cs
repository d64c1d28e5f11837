using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Bench.Rules;

public class TighterThanPublishedTests
{
    private const string Cure =
        ": use a tool with a larger radius, or bend a practice piece, look at it for flats and kinks, and type the smallest "
            + "radius that your tube takes as `smallest-radius`";

    [Fact]
    public void Steel_on_a_common_hand_bender_is_a_warning_at_the_tools_radius() => OneFinding.Is(
        Line(Lines.NineSixteenths, "steel"),
        Severity.Warning,
        TighterThanPublished.Rule,
        Lines.RadiusAt,
        "bender hand bends tube main to 14.3 mm (0.563 in), tighter than 25.0 mm (0.984 in), the smallest published for steel of this size "
        + "(a truck service manual, for DIN 74234 brake pipe and a pliers-type bender)" + Cure);

    [Fact]
    public void A_figure_from_memory_says_so() => OneFinding.Is(
        Line(Lines.NineSixteenths, "stainless steel"),
        Severity.Warning,
        TighterThanPublished.Rule,
        Lines.RadiusAt,
        "bender hand bends tube main to 14.3 mm (0.563 in), tighter than 16.7 mm (0.656 in), the smallest published for steel of this size "
        + "(FAA AC 43.13-1B, table of tube data, from memory: check)" + Cure);

    [Fact]
    public void Tube_of_no_known_row_has_the_ideal_which_is_no_limit() => OneFinding.Is(
        Line(8, "copper-nickel", wall: 0.71),
        Severity.Warning,
        TighterThanPublished.Rule,
        Lines.RadiusAt,
        "bender hand bends tube main to 8.0 mm (0.315 in), tighter than 8.4 mm (0.329 in), 2.5 times the inside diameter, which is an "
        + "ideal "
        + "for low friction and no limit (NAVEDTRA 14105, p. 5-4)" + Cure);

    [Theory]
    [InlineData(Lines.NineSixteenths, "copper-nickel", 0.71)]
    [InlineData(8.4, "copper-nickel", 0.71)]
    [InlineData(8, "copper-nickel", null)]
    [InlineData(25, "steel", 0.71)]
    [InlineData(24.96, "steel", 0.71)]
    [InlineData(16.7, "stainless steel", 0.71)]
    [InlineData(8.4, "steel or copper, whatever the shop has", 0.71)]
    public void What_the_tube_stands_is_silent(double radius, string material, double? wall) =>
        OneFinding.None(Line(radius, material, wall));

    [Fact]
    public void Where_the_file_says_what_the_tube_stands_nothing_published_is_held_against_it()
    {
        var template = Line(Lines.NineSixteenths, "steel");
        OneFinding.None(template with { Tube = template.Tube with { SmallestRadius = Lines.Mm(14) } });
    }

    [Fact]
    public void A_radius_that_no_tube_can_follow_is_the_other_rules_subject() =>
        Assert.Same(BendTooTight.Rule, OneFinding.Of(Line(2.3, "steel")).Rule);

    [Fact]
    public void Lines_on_one_tube_and_tool_say_the_same()
    {
        var template = Line(Lines.NineSixteenths, "steel");
        Assert.Single(
            new[] { template, template with { Name = "front-right" } }.SelectMany(line => CarPlan.Line(line).Findings).Distinct());
    }

    /// <summary>Two bends on one tool: one finding all the same.</summary>
    private static LineTemplate Line(double radius, string material, double? wall = null) =>
        Lines.Of(Lines.Bender(radius), [100, 100, 100], (0, 45), (90, 45)) with
        {
            Tube = new("main", Lines.Mm(4.76), wall is { } mm ? Lines.Mm(mm) : null, material, null),
        };

    [Fact]
    public void A_radius_below_the_tubes_own_diameter_is_a_warning_where_nothing_else_is_known() => OneFinding.Is(
        Line(4.7, "copper-nickel"),
        Severity.Warning,
        TighterThanPublished.Rule,
        Lines.RadiusAt,
        "bender hand bends tube main to 4.7 mm (0.185 in), tighter than 4.8 mm (0.187 in), the tube's own diameter (common practice, no "
            + "source; the radius counts to the tube's centreline)" + Cure);
}
