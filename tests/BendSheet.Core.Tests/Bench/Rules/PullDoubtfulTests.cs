using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Findings;
using static BendSheet.Core.Tests.Bench.TestBends;

namespace BendSheet.Core.Tests.Bench.Rules;

public class PullDoubtfulTests
{
    [Fact]
    public void A_pull_far_beyond_the_bend_is_a_warning_at_the_bend() => OneFinding.Is(
        Lines.Of(Lines.Bender(10) with { Tests = [Pulled(60, 50), Pulled(62, 60)] }, [100, 100, 100], (0, 58), (90, 20)),
        Severity.Warning,
        PullDoubtful.Rule,
        Lines.TurnAt(1),
        "by the tests of bender hand, bend 2 (20°) would be pulled to 54°, and tube bent by hand comes back a few degrees: look at the "
            + "tests again, or make one of about this bend");

    [Fact]
    public void A_pull_that_only_tests_against_each_other_come_to_is_an_error_at_the_bend() => OneFinding.Is(
        Lines.Of(Lines.Bender(10) with { Tests = [Pulled(83, 80), Pulled(123, 88)] }, [100, 100], (0, 120)),
        Severity.Error,
        PullDoubtful.Rule,
        Lines.TurnAt(0),
        "the tests of bender hand contradict each other: by them bend 1 (120°) would be pulled to 283°, which no tube comes back from; "
            + "measure them again, and take the wrong one out");

    [Theory]
    [InlineData(33, 30)]
    [InlineData(110, 90)]
    [InlineData(200, 180)]
    public void What_tube_does_is_silent(double pull, double got) =>
        OneFinding.None(Lines.Of(Lines.Bender(10) with { Tests = [Pulled(pull, got)] }, [100, 100], (0, 90)));
}
