namespace BendSheet.Files.Typed;

/// <summary>Parts of a whole as people type them: <c>10 %</c>, <c>7.5%</c>, <c>10 per cent</c>.</summary>
public static class PerCentText
{
    private static readonly string[] Signs = ["%", "per cent", "percent"];

    /// <summary>Reads a part of a hundred.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="perCent">10 for <c>10 %</c>; may be negative or infinite, which is for the caller to judge.</param>
    /// <returns>Null where it could be read; otherwise what is wrong, as the rest of a sentence about the text.</returns>
    public static string? Read(string text, out double perCent)
    {
        var trimmed = text.Trim();
        var sign = Array.Find(Signs, known => trimmed.EndsWith(known, StringComparison.OrdinalIgnoreCase));
        var quantity = new Quantity(sign is null ? trimmed : trimmed[..^sign.Length]);
        var negative = quantity.TakeMinus();
        if (!quantity.TakeNumber(out perCent))
        {
            return "is not a part of a hundred: write a number with its sign, such as `10 %`";
        }

        perCent = negative ? 0 - perCent : perCent;
        return !quantity.AtEnd ? "is not a part of a hundred: write one number with its sign, such as `10 %`"
            : sign is null ? "does not say of what it is: write a part of a hundred with its sign, such as `10 %`"
            : null;
    }
}
