using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Bench.Rules;

public class BendTooTightTests
{
    [Fact]
    public void Tighter_than_the_tube_stands_is_a_warning_at_the_tools_radius() => OneFinding.Is(
        Line(9.4, smallest: 9.5),
        Severity.Warning,
        BendTooTight.Rule,
        Lines.RadiusAt,
        "line front-left: bender hand bends to 9.4 mm (0.370 in), tighter than the 9.5 mm (0.374 in) that the file gives as this tube's "
        + "smallest radius: "
        + "use a tool with a larger radius, or check the figure with the tube's maker");

    [Fact]
    public void A_radius_of_half_the_tube_is_an_error() => OneFinding.Is(
        Line(Lines.Tube.OutsideDiameter.Millimetres / 2, smallest: null),
        Severity.Error,
        BendTooTight.Rule,
        Lines.RadiusAt,
        "line front-left: bender hand has a radius of 2.4 mm (0.094 in), not more than half of the tube's 4.8 mm (0.188 in): "
        + "give the bend radius to the tube's centreline");

    [Fact]
    public void A_tool_without_a_name_is_the_bender()
    {
        var template = Line(9.4, smallest: 9.5);
        Assert.StartsWith(
            "line front-left: the bender bends to",
            OneFinding.Of(template.OnTool(Lines.Bender(9.4, name: string.Empty))).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void The_smallest_radius_itself_is_silent() => OneFinding.None(Line(9.5, smallest: 9.5));

    [Fact]
    public void Where_the_file_gives_no_smallest_radius_any_that_the_tube_can_follow_has_other_rules() =>
        Assert.Same(TighterThanPublished.Rule, OneFinding.Of(Line(2.4, smallest: null)).Rule);

    [Fact]
    public void A_tool_that_bends_nothing_is_not_spoken_of()
    {
        var template = Lines.Of(Lines.Bender(9.4), [100]);
        OneFinding.None(template with { Tube = template.Tube with { SmallestRadius = Lines.Mm(9.5) } });
    }

    private static LineTemplate Line(double radius, double? smallest)
    {
        // Two bends on one tool: one finding all the same.
        var template = Lines.Of(Lines.Bender(radius), [100, 100, 100], (0, 45), (90, 45));
        return template with { Tube = template.Tube with { SmallestRadius = smallest is { } mm ? Lines.Mm(mm) : null } };
    }
}
