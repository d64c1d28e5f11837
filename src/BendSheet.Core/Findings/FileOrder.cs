namespace BendSheet.Core.Findings;

/// <summary>The order in which things were typed.</summary>
public static class FileOrder
{
    /// <summary>
    /// By file, by line, then by column; what was typed at one place stays in the order it came in. What concerns a file as a whole stands
    /// before what stands in it.
    /// </summary>
    public static IOrderedEnumerable<T> InFileOrder<T>(this IEnumerable<T> typed, Func<T, SourcePosition> at) =>
        typed.OrderBy(one => (at(one).FileNumber, at(one).Line, at(one).Column));

    /// <summary>Findings by the place that each points at.</summary>
    public static IOrderedEnumerable<Finding> InFileOrder(this IEnumerable<Finding> findings) =>
        findings.InFileOrder(finding => finding.Position);
}
