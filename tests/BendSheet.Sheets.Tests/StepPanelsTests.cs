using BendSheet.Core.Sheet;
using BendSheet.Core.Workshop;

namespace BendSheet.Sheets.Tests;

public class StepPanelsTests
{
    /// <summary>Neither end is long enough to be held for the bend beside it.</summary>
    private static readonly string ShortEnds = Printed.Head.Replace(
        "bender: {radius: 9/16 in}", "bender: {radius: 10, grip: 20, follow: 5}", StringComparison.Ordinal) + """
          short:
            rows:
              - {straight: 16, bend: 90}
              - {straight: 300, rotate: 90 cw, bend: 90}
              - {straight: 16}
        """;

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
        var panels = Steps(ShortEnds);
        Assert.Equal(["1", "Flip", "2"], panels.Where(panel => panel.Bend is not null || panel.Flip is not null)
            .Select(panel => panel.Bend?.Number ?? "Flip"), StringComparer.Ordinal);
        var flip = Assert.Single(panels, panel => panel.Flip is not null).Flip!;
        Assert.Equal((TubeEnd.B, TubeEnd.A), (flip.Before.Held, flip.After.Held));
        Assert.Equal("now hold the A side", flip.AfterInWords);
        Assert.Empty(flip.Before.Made);
        Assert.Equal([0], flip.After.Made);
        Assert.Equal(((0, 0), (1, 1)), (flip.Before.Bends, flip.After.Bends));
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
