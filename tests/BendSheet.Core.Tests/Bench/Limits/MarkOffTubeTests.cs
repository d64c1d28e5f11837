using BendSheet.Core.Bench.Limits;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Bench.Limits;

public class MarkOffTubeTests
{
    [Fact]
    public void A_mark_before_the_cut_end_of_A_is_an_error_at_its_bend() => OneFinding.Is(
        Line(offset: -25.5, 30, 100),
        Severity.Error,
        MarkOffTube.Rule,
        Lines.TurnAt(0),
        "the mark of bend 1 would lie 5.5 mm (0.217 in) before the cut end of A: lengthen the straight beside it, or check the bender's `mark` and `offset`");

    [Fact]
    public void A_mark_beyond_the_cut_end_of_B_is_an_error_at_its_bend()
    {
        // Cut: 90 and 10 of straight and 15.708 of arc; the mark stands at 90 + 26.
        OneFinding.Is(
            Line(offset: 26, 100, 20),
            Severity.Error,
            MarkOffTube.Rule,
            Lines.TurnAt(0),
            "the mark of bend 1 would lie 0.3 mm (0.012 in) beyond the cut end of B: lengthen the straight beside it, or check the bender's `mark` and `offset`");
    }

    [Fact]
    public void A_straight_longer_by_what_is_missing_is_silent()
    {
        OneFinding.None(Line(offset: -25.5, 35.5, 100));
        OneFinding.None(Line(offset: 26, 100, 20.3));
    }

    [Fact]
    public void A_mark_that_lies_at_the_cut_end_but_for_the_last_digit_is_on_the_tube() =>
        OneFinding.None(Lines.Of(Lines.Bender(9) with { Offset = Lines.Mm(-23.3) }, [32.3, 100], (0, 90)));

    [Fact]
    public void A_mark_at_the_very_end_is_on_the_tube() => OneFinding.None(Line(offset: -20, 30, 100));

    [Fact]
    public void Trim_at_B_is_tube_to_mark_on()
    {
        var template = Line(offset: 26, 100, 20);
        OneFinding.None(template with { To = template.To with { Trim = Lines.Mm(1) } });
    }

    private static LineTemplate Line(double offset, params double[] legs) =>
        Lines.Of(Lines.Bender(10) with { Offset = Lines.Mm(offset) }, legs, (0, 90));
}
