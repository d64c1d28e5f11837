using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>
/// A distance on the finished piece that is not the sheet's. Before the piece goes on the car it can still be put right, and one that is to
/// be made again needs to know which bend was wrong.
/// </summary>
public static class FinishedDiffers
{
    /// <summary>More of them would help nobody to find the one.</summary>
    private const int MostCauses = 3;

    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "finished-differs",
        RuleSubject.Making,
        "A finished piece that measures differently from its sheet does not fit where the template did.");

    /// <summary>A finding for each measured distance that is off by more than a tape could be.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, TubeCentreline centreline)
    {
        foreach (var check in FinishedCheck.Of(template, centreline))
        {
            var residual = check.Residual;
            var size = residual < Length.Zero ? Length.Zero - residual : residual;
            if (size > Tolerances.TapeSlip)
            {
                yield return Rule.Warning(
                    check.Measured.At,
                    $"{check.Name} is {FindingFigures.Mm(check.Measured.Distance)} on the finished piece, {FindingFigures.Mm(size)} "
                        + $"{(residual > Length.Zero ? "more" : "less")} than the sheet's {FindingFigures.Mm(check.Expected)}: "
                        + $"{Meaning(check, centreline)}");
            }
        }
    }

    private static string Meaning(FinishedCheck check, TubeCentreline centreline)
    {
        var between = check.Measured.To - check.Measured.From - 1;
        if (between == 0)
        {
            return "no bend lies between, so a mark or an end was that far out, or the tape was misread";
        }

        var causes = FinishedCause.Of(check, centreline).Take(MostCauses).ToList();
        if (causes.Count == 0)
        {
            return $"no single angle off by up to {AngleNotation.Figure(FinishedCause.Most)} explains it, so a mark, an end, the tape or "
                + "several angles were out: measure again, over one bend at a time";
        }

        var one = string.Join(", or ", causes.Select(cause => cause.InWords));
        return between == 1
            ? $"{one}, if its mark was right"
            : $"{one}, would do that alone: measure over one bend at a time to see which";
    }
}
