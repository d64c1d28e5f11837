using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Stock;

namespace BendSheet.Cli.Output;

/// <summary>What <c>check</c> tells: all but how far the search for a cutting plan came, which is no matter of the file.</summary>
internal static class CheckFindings
{
    /// <summary>Of the lines asked for.</summary>
    public static IEnumerable<Finding> Of(CarPlan plan) => plan.IsWhole
        ? plan.Stock.Findings.Where(finding => finding.Rule != StockRules.NotProven)
        : plan.Findings;
}
