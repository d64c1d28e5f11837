using BendSheet.Core.Findings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Limits;

/// <summary>The tool's mark offset puts the pen beyond the end of the tube.</summary>
public static class MarkOffTube
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "mark-off-tube", RuleSubject.Making, "A mark must lie on the tube, or the bend cannot be placed in the tool.");

    /// <summary>A finding at each bend whose mark is not on the tube.</summary>
    public static IEnumerable<Finding> Check(BenchPlan plan)
    {
        foreach (var bend in plan.Bends)
        {
            if (bend.Mark.FallsShortOf(Length.Zero))
            {
                yield return Finding(bend, $"{FindingFigures.UpMm(Length.Zero - bend.Mark)} before the cut end of A");
            }
            else if (plan.CutLength.FallsShortOf(bend.Mark))
            {
                yield return Finding(bend, $"{FindingFigures.UpMm(bend.Mark - plan.CutLength)} beyond the cut end of B");
            }
        }
    }

    private static Finding Finding(BenchBend bend, string where) => Rule.Error(
        bend.Bend.TurnAt,
        $"the mark of bend {bend.Number} would lie {where}: lengthen the straight beside it, or check the bender's `mark` and `offset`");
}
