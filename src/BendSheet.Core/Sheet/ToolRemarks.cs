using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>
/// What a sheet says about how well its tools are known: whether pull angles are corrected for springback, and what the developed length
/// rests on. Once where all tools of a line say the same, else once for each.
/// </summary>
internal static class ToolRemarks
{
    /// <summary>The remarks for a line with bends.</summary>
    public static IEnumerable<string> Of(LineTemplate template, BenchPlan plan)
    {
        var remarks = plan.Bends.GroupBy(bend => bend.Bender)
            .Select(bends => (
                Tool: bends.Key.Name,
                Remark: RemarkOf(BenderCalibration.Of(bends.Key, template.Tube), [.. bends]) + LineRemark(bends.Key)))
            .GroupBy(tool => tool.Remark, tool => tool.Tool, StringComparer.Ordinal).ToList();
        return remarks.Count == 1
            ? [remarks[0].Key]
            : remarks.Select(remark => $"{string.Join(", ", remark.Distinct(StringComparer.Ordinal))}: {remark.Key}");
    }

    private static string RemarkOf(BenderCalibration tool, List<BenchBend> bends) =>
        $"{PullRemark(tool.Springback, bends)} {LengthRemark(tool)}";

    private static string PullRemark(Springback springback, List<BenchBend> bends)
    {
        if (springback.Law == SpringbackLaw.Unknown)
        {
            return "Pull angles are not corrected for springback (no test bends): check each angle before the next bend.";
        }

        var (from, to) = (AngleNotation.Figure(springback.Smallest), AngleNotation.Figure(springback.Largest));
        var tested = string.Equals(from, to, StringComparison.Ordinal) ? $"at {to}" : $"from {from} to {to}";
        var outside = bends.Where(bend => !springback.Covers(bend.Bend.Turn))
            .Select(bend => bend.Number.ToString(CultureInfo.InvariantCulture)).ToList();
        var check = outside.Count switch
        {
            0 => ".",
            1 => $"; bend {outside[0]} lies outside them: check its angle.",
            _ => $"; bends {string.Join(", ", outside)} lie outside them: check their angles.",
        };
        return $"Pull angles are corrected for springback by {Counted.Words(springback.Tests.Length, "test bend")} {tested}{check}";
    }

    private static string LengthRemark(BenderCalibration tool) => tool.Source switch
    {
        ArcFactorSource.Assumed => "The developed length assumes arc factor 1 (no test piece).",
        ArcFactorSource.Learned =>
            $"The developed length has arc factor {Factor(tool.ArcFactor)} from {Counted.Words(tool.Gain!.Pieces.Length, "test piece")}.",
        _ => $"The developed length has arc factor {Factor(tool.ArcFactor)} as typed.",
    };

    /// <summary>Silent where nothing was learned of the tool's line.</summary>
    private static string LineRemark(Bender bender) => ToolLine.Of(bender) is { IsLearned: true } line
        ? $" The marks allow for the tool's line, found from {Counted.Words(line.Pieces.Length, "test piece")}."
        : string.Empty;

    private static string Factor(double factor) => factor.ToString("0.###", CultureInfo.InvariantCulture);
}
