namespace BendSheet.Core.Sheet;

/// <summary>What is measured on the finished piece, in words. Every bend and every roll shows in one of the distances.</summary>
public static class CheckWords
{
    /// <summary>Above the distances.</summary>
    public static string Heading(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return $"Check on the finished piece, in {sheet.Notation.UnitName}";
    }

    /// <summary>Each distance, short: room to write is left after it.</summary>
    public static IEnumerable<string> Distances(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return sheet.Checks.Select(check => $"{check.Name}: {check.Figure}");
    }

    /// <summary>Below the distances: the box the piece fits into, and what a degree too much does.</summary>
    public static IEnumerable<string> Below(SheetContent sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new[]
        {
            $"Outside box, X × Y × Z: {sheet.Envelope}.",
            sheet.Levers,
            sheet.HowSure,
        }.OfType<string>();
    }
}
