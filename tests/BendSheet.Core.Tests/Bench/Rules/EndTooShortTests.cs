using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using CsCheck;

namespace BendSheet.Core.Tests.Bench.Rules;

public class EndTooShortTests
{
    private static Length Trimmed { get; } = Lines.Mm(25);

    [Fact]
    public void A_straight_that_just_fits_is_silent_whatever_the_last_digit_says()
    {
        for (var need = 200; need < 400; need += 3)
        {
            var fitting = Flared with { Straight = Lines.Mm(need / 10.0) };
            for (var radius = 90; radius < 160; radius++)
            {
                var line = Lines.Of(Lines.Bender(radius / 10.0), [(need + radius) / 10.0, 100], (0, 90));
                OneFinding.None(line with { From = line.From with { Fitting = fitting with { Hardware = [] } } });
            }
        }
    }

    private static Fitting Flared { get; } = new(
        "an3", Flare.Single37, Lines.Mm(0.5), [new("nut", Lines.Mm(17)), new("sleeve", Lines.Mm(9))], Lines.Mm(35));

    [Fact]
    public void An_end_that_is_trimmed_after_the_bends_must_take_the_flaring_bar_then() => OneFinding.Is(
        Line([200, 42], null, Flared, (0, 90)).Trimmed(Trimmed),
        Severity.Error,
        EndTooShort.Rule,
        Lines.StraightAt(1),
        "the straight at end B is 3.0 mm (0.119 in) too short: fitting an3 needs 35.0 mm (1.378 in) to be flared once it is trimmed and "
        + "32.0 mm (1.260 in) is left after the bend; "
        + "move the bend further from the end, or use a radius of at most 7.0 mm (0.275 in), or leave `trim` out and flare before bending");

    [Fact]
    public void An_end_that_can_be_flared_before_the_bends_needs_no_room_for_the_bar_after_them()
    {
        OneFinding.None(Line([42, 200], Flared, null, (0, 90)));
        OneFinding.None(Line([200, 42], null, Flared, (0, 90)));
    }

    [Fact]
    public void Hardware_needs_its_own_length_where_the_file_asks_for_less() => OneFinding.Is(
        Line([30, 200], Flared with { Straight = Lines.Mm(20) }, null, (0, 90)),
        Severity.Error,
        EndTooShort.Rule,
        Lines.StraightAt(0),
        "the straight at end A is 6.0 mm (0.237 in) too short: fitting an3 needs 26.0 mm (1.024 in) for the hardware and 20.0 mm "
        + "(0.787 in) is left before the bend; "
        + "move the bend further from the end, or use a radius of at most 4.0 mm (0.157 in)");

    [Fact]
    public void No_radius_is_offered_where_the_leg_itself_is_shorter_than_the_need() => Assert.EndsWith(
        "; move the bend further from the end", OneFinding.Of(Line([25, 200], Flared, null, (0, 90))).Message, StringComparison.Ordinal);

    [Fact]
    public void Nor_beside_a_U_bend_which_has_no_corner()
    {
        var template = Line([20, 200], Flared, null, (0, 180)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(10)) };
        Assert.EndsWith(
            "is left before the bend; move the bend further from the end", OneFinding.Of(template).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_too_short_for_its_bend_is_one_finding_not_two() =>
        Assert.Same(LegTooShort.Rule, OneFinding.Of(Line([9, 200], Flared, null, (0, 90))).Rule);

    [Fact]
    public void A_straight_tube_must_take_both_ends()
    {
        OneFinding.Is(
            Line([69.5], Flared, Flared),
            Severity.Error,
            EndTooShort.Rule,
            Lines.StraightAt(0),
            "the line is 0.5 mm (0.020 in) too short for its two ends: their fittings need 70.0 mm (2.756 in) of straight tube together; "
                + "make the line longer, or use fittings that need less");
        OneFinding.None(Line([70], Flared, Flared));
    }

    [Fact]
    public void Enough_straight_is_silent()
    {
        OneFinding.None(Line([45.5, 200], Flared, null, (0, 90)));
        OneFinding.None(Line([200, 45.5], null, Flared, (0, 90)));
        OneFinding.None(Line([11, 11], null, null, (0, 90)));
    }

    [Fact]
    public void Just_enough_straight_is_silent() => OneFinding.None(
        Line([35, 35], Flared, Flared, (0, 180)) with { Habit = MeasuredTo.Straight, Wire = new(null, Lines.Mm(10)) });

    [Fact]
    public void Doing_what_the_finding_says_makes_it_silent() =>
        Gen.Select(Gen.Double[51, 60], Gen.Double[15, 16], Gen.Double[91, 110]).Sample(
        (leg, radius, turn) =>
        {
            var need = Flared with { Straight = Lines.Mm(45) };
            var template = (Line([200, leg], null, need, (0, turn)) with { Tube = Lines.Tube with { SmallestRadius = Lines.Mm(0.1) } })
                .Trimmed(Trimmed).OnTool(Lines.Bender(radius));
            var message = OneFinding.Of(template).Message;
            var longer = leg + OneFinding.MmAfter("the straight at end B is", message);
            OneFinding.None(Line([200, longer], null, need, (0, turn)).Trimmed(Trimmed).OnTool(Lines.Bender(radius)));
            OneFinding.None(template.OnTool(Lines.Bender(OneFinding.MmAfter("a radius of at most", message))));
        },
        iter: 500);

    private static LineTemplate Line(double[] legs, Fitting? atA, Fitting? atB, params (double Rotate, double Turn)[] bends) =>
        Lines.Of(Lines.Bender(10), legs, bends) with
        {
            From = LineEnd.Unknown with { Fitting = atA },
            To = LineEnd.Unknown with { Fitting = atB },
        };
}
