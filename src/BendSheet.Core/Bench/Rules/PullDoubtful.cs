using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Tube bent by hand comes back a few degrees. A pull that goes much further comes from a test that was typed wrongly, or from a line
/// through tests that was extended too far; on the bench it would spoil the tube.
/// </summary>
public static class PullDoubtful
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "pull-doubtful",
        RuleSubject.Making,
        "A pull far beyond its bend comes from a mistyped test, or from tests too far from this bend.");

    /// <summary>A finding at each bend that would be pulled further than any tube comes back.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i].Bend;
            var pull = BenderCalibration.Of(bend.Bender, template.Tube).Pull(bend.Turn);
            if (Springback.CannotBe(pull, bend.Turn))
            {
                yield return Rule.Error(
                    bend.TurnAt,
                    $"the tests of {BenderNames.InWords(bend.Bender)} contradict each other: by them bend {i + 1} "
                        + $"({AngleNotation.Figure(bend.Turn)}) would be pulled to {AngleNotation.Figure(pull)}, which no tube comes back "
                        + "from; measure them again, and take the wrong one out");
            }
            else if (Springback.IsDoubtful(pull, bend.Turn))
            {
                yield return Rule.Warning(
                    bend.TurnAt,
                    $"by the tests of {BenderNames.InWords(bend.Bender)}, bend {i + 1} ({AngleNotation.Figure(bend.Turn)}) would be "
                        + $"pulled to {AngleNotation.Figure(pull)}, and tube bent by hand comes back a few degrees: look at the tests "
                        + "again, or make one of about this bend");
            }
        }
    }
}
