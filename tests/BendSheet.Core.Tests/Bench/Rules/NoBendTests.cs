using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using BendSheet.Core.Tests.Sheet;

namespace BendSheet.Core.Tests.Bench.Rules;

/// <summary>MIL-H-8891A 3.11.4.5: a line between two fixed ends has a bend.</summary>
public class NoBendTests
{
    [Fact]
    public void A_straight_tube_between_two_ends_is_a_warning_at_its_name() => OneFinding.Is(
        Lines.Of(Lines.Bender(10), [300]) with
        {
            From = new("front tee", FullLine.An3, default),
            To = new("bracket", FullLine.An3, default),
        },
        Severity.Warning,
        NoBend.Rule,
        Lines.NameAt,
        "line front-left is straight from end to end: between two fixed ends a tube needs at least one bend (MIL-H-8891A 3.11.4.5); lead "
            + "it round "
            + "something, or offset it");

    [Fact]
    public void One_bend_is_enough_and_an_end_of_which_nothing_is_said_is_not_fixed()
    {
        OneFinding.None(Lines.Of(Lines.Bender(10), [300]));
        OneFinding.None(Lines.Of(Lines.Bender(10), [300]) with { From = new("front tee", FullLine.An3, default) });
        OneFinding.None(Lines.Of(Lines.Bender(10), [100, 100], (0, 30)) with
        {
            From = new("front tee", FullLine.An3, default),
            To = new("bracket", FullLine.An3, default),
        });
    }
}
