using BendSheet.Core.Sheet;
using BendSheet.Core.Workshop;

namespace BendSheet.Sheets.Tests;

public class StepPanelsTests
{
    [Fact]
    public void An_end_has_its_hardware_from_the_end_inwards_the_right_way_round()
    {
        var panels = Steps(Printed.WorkedExample);
        var end = Assert.Single(panels, panel => panel.End?.End == TubeEnd.A).End!;
        Assert.Equal(
            ["sleeve: coned end towards A", "nut: threaded end towards A"], end.Pieces.Select(piece => piece.InWords),
            StringComparer.Ordinal);
        Assert.Equal([HardwareShape.Sleeve, HardwareShape.Nut], end.Pieces.Select(piece => piece.Shape));
        Assert.Equal("stands out by the tool's own stop", end.StandsOutInWords);
        Assert.All(panels.Where(panel => panel.End is not null), panel => Assert.True(panel.End!.HasBar));
    }

    [Fact]
    public void What_stands_out_of_the_bar_is_the_figure_of_the_sentence()
    {
        var panels = Steps(Printed.WorkedExample.Replace("takes: 0.5,", "takes: 0.5, countersink: 1.2,", StringComparison.Ordinal));
        var panel = Assert.Single(panels, panel => panel.End?.End == TubeEnd.A);
        Assert.NotNull(panel.End!.StandsOut);
        Assert.Contains(
            panel.End.StandsOutInWords["stands out ".Length..] + " of tube standing out of the bar", panel.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_flip_shows_the_bend_made_last_and_the_next_one_each_with_the_end_that_is_held()
    {
        // A bend near each end and 1.5 m between them: either end is swept clear of the long tail by turning the tube round once.
        const string Rows = "  long:\n    - {straight: 150, bend: 60}\n    - {straight: 140, rotate: 90 cw, bend: 45}\n"
            + "    - {straight: 1500, rotate: 30 cw, bend: 60}\n    - {straight: 150}\n";
        var flips = Steps(Printed.Head + Rows).Where(panel => panel.Flip is not null).ToList();
        Assert.Single(flips);
        Assert.All(flips, panel =>
        {
            var flip = panel.Flip!;
            Assert.NotEqual(flip.Before.Held, flip.After.Held);
            Assert.Equal($"now hold the {flip.After.Held} side", flip.AfterInWords);
            Assert.True(flip.After.Made.SetEquals(
                flip.Before.Made.Union(Enumerable.Range(flip.Before.Bends.First, flip.Before.Bends.Last - flip.Before.Bends.First + 1))));
        });
    }

    /// <summary>Bends that are made have no panel, and what is done before the first bend is done.</summary>
    [Fact]
    public void An_order_that_was_begun_goes_on_with_the_bends_that_are_left()
    {
        var all = Steps(Printed.WorkedExample);
        var first = all.First(panel => panel.Bend is not null).Bend!.Number;
        var begun = Steps(Printed.WorkedExample.Replace(
            "    rows:", $"    bent: [{first}]\n    rows:", StringComparison.Ordinal));
        Assert.Equal("Go on", begun[0].Heading);
        Assert.DoesNotContain(begun, panel => string.Equals(panel.Heading, "Cut", StringComparison.Ordinal));
        Assert.DoesNotContain(begun, panel => string.Equals(panel.Bend?.Number, first, StringComparison.Ordinal));
        Assert.Equal(2, begun.Count(panel => panel.Bend is not null));
        Assert.All(
            begun.Where(panel => panel.Bend is not null),
            panel => Assert.Contains(int.Parse(first, System.Globalization.CultureInfo.InvariantCulture) - 1, panel.Bend!.Picture.Made));
    }

    private static List<StepPanel> Steps(string yaml) => [.. Assert.Single(Printed.WithSteps(yaml)).Steps];
}
