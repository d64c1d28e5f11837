namespace BendSheet.Files.Typed;

/// <summary>
/// Angles as people type them: <c>45</c>, <c>22 1/2</c>, <c>45 deg</c>, <c>45°</c>; rotations with <c>cw</c> or <c>ccw</c> after them.
/// </summary>
public static class AngleText
{
    /// <summary>Reads an angle.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="degrees">May be negative or infinite, which is for the caller to judge.</param>
    /// <returns>Null where it could be read; otherwise what is wrong, as the rest of a sentence about the text.</returns>
    public static string? Read(string text, out double degrees)
    {
        var quantity = new Quantity(text);
        if (!TakeDegrees(ref quantity, out degrees))
        {
            return "is not an angle: write degrees, such as `45`";
        }

        if (quantity.AtEnd)
        {
            return null;
        }

        var rest = quantity;
        var word = rest.TakeWord();
        return word.Equals("included", StringComparison.OrdinalIgnoreCase)
            ? "says the angle between the legs: write it after `included` instead, such as `included: 90`"
            : SenseOf(word) is null
            ? quantity.WhatIsLeft("write degrees, such as `45`")
            : "says which way round, which only a rotation has: write degrees here, such as `45`, and the way round after `rotate`";
    }

    /// <summary>Reads a rotation; clockwise comes out positive.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="degrees">May be infinite, which is for the caller to judge.</param>
    /// <returns>Null where it could be read; otherwise what is wrong, as the rest of a sentence about the text.</returns>
    public static string? ReadRotation(string text, out double degrees)
    {
        var quantity = new Quantity(text);
        if (!TakeDegrees(ref quantity, out degrees))
        {
            return "is not a rotation: write degrees with cw or ccw, such as `90 cw`";
        }

        if (quantity.AtEnd)
        {
            return null;
        }

        var rest = quantity;
        if (SenseOf(quantity.TakeWord()) is not { } sense || !quantity.AtEnd)
        {
            return rest.WhatIsLeft("write `90 cw` or `90 ccw`");
        }

        if (degrees < 0)
        {
            return "has a minus sign and a sense: write `45 ccw` or `-45`, which are the same";
        }

        degrees = sense < 0 ? 0 - degrees : degrees;
        return null;
    }

    /// <summary>1 for clockwise, -1 for counterclockwise, null for anything else.</summary>
    private static int? SenseOf(ReadOnlySpan<char> word) =>
        word.Equals("cw", StringComparison.OrdinalIgnoreCase) ? 1
        : word.Equals("ccw", StringComparison.OrdinalIgnoreCase) ? -1
        : null;

    /// <summary>A number with an optional degree word; what follows is left for the caller.</summary>
    private static bool TakeDegrees(ref Quantity quantity, out double degrees)
    {
        var negative = quantity.TakeMinus();
        if (!quantity.TakeNumber(out degrees))
        {
            return false;
        }

        degrees = negative ? 0 - degrees : degrees;
        var beforeWord = quantity;
        var word = quantity.TakeWord();
        if (!IsDegree(word))
        {
            quantity = beforeWord;
        }

        return true;
    }

    /// <summary>The degree character, also as keyboards without it have it (º, ˚), or the word.</summary>
    private static bool IsDegree(ReadOnlySpan<char> word) =>
        word is "°" or "º" or "˚"
        || word.Equals("deg", StringComparison.OrdinalIgnoreCase)
        || word.Equals("degree", StringComparison.OrdinalIgnoreCase)
        || word.Equals("degrees", StringComparison.OrdinalIgnoreCase);
}
