namespace BendSheet.Core.Sheet;

/// <summary>What is measured on the finished piece, in words. The end that all distances are taken from is said once.</summary>
public static class CheckWords
{
    /// <summary>Above the distances.</summary>
    public static string Heading(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"Check: straight-line distances{(OneEnd(sheet) is { } from ? $" from {from}" : string.Empty)}";
    }

    /// <summary>Each distance, short: room to write is left behind it.</summary>
    public static IEnumerable<string> Distances(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var one = OneEnd(sheet);
        return sheet.Checks.Select(check => $"{(one is null ? $"{check.From} to" : "to")} {check.To}: {check.Distance.Main}");
    }

    /// <summary>Below the distances: what they go to, the box the piece fits into, and what a degree too much does.</summary>
    public static IEnumerable<string> Below(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new[]
        {
            sheet.Rows.IsEmpty ? null : "A corner is where two straights would meet.",
            $"Outside box, X × Y × Z: {sheet.Envelope}",
            string.Join(' ', new[] { sheet.Levers, sheet.HowSure }.OfType<string>()),
        }.OfType<string>().Where(sentence => sentence.Length > 0);
    }

    /// <summary>Null where the distances start at several.</summary>
    private static string? OneEnd(SheetContent sheet) =>
        sheet.Checks.Select(check => check.From).Distinct(StringComparer.Ordinal).ToList() is [var from] ? from : null;
}
