using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Typed;

/// <summary>
/// Lengths as people type them: <c>310</c>, <c>310 mm</c>, <c>3/16 in</c>, <c>12-5/16"</c>, <c>2 ft 3 1/2 in</c>, <c>0.028in</c>. A bare
/// number is in the file's unit.
/// </summary>
public static class LengthText
{
    /// <summary>The units by the words that stand for them.</summary>
    private static readonly (string Word, LengthUnit Unit)[] UnitWords =
    [
        ("mm", LengthUnit.Millimetre),
        ("cm", LengthUnit.Centimetre),
        ("m", LengthUnit.Metre),
        ("in", LengthUnit.Inch),
        ("inch", LengthUnit.Inch),
        ("inches", LengthUnit.Inch),
        ("\"", LengthUnit.Inch),
        ("″", LengthUnit.Inch),
        ("”", LengthUnit.Inch),
        ("ft", LengthUnit.Foot),
        ("foot", LengthUnit.Foot),
        ("feet", LengthUnit.Foot),
        ("'", LengthUnit.Foot),
        ("′", LengthUnit.Foot),
        ("’", LengthUnit.Foot),
    ];

    /// <summary>Reads a length.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="bare">The unit of a number without one.</param>
    /// <param name="millimetres">The length; may be negative or infinite, which is for the caller to judge.</param>
    /// <returns>Null where it could be read; otherwise what is wrong, as the rest of a sentence about the text.</returns>
    public static string? Read(string text, LengthUnit bare, out double millimetres)
    {
        millimetres = 0;
        var quantity = new Quantity(text);
        var negative = quantity.TakeMinus();
        if (!quantity.TakeNumber(out var number))
        {
            return "is not a length: write a number, such as `310`, `310 mm` or `12 5/16 in`";
        }

        var word = quantity.TakeWord();
        if (!TryUnit(word, bare, out var unit))
        {
            return $"has {AsTyped.Show(word)} where a unit belongs: write mm, cm, m, in or ft";
        }

        millimetres = number * unit.InMillimetres();
        if (unit == LengthUnit.Foot && !word.IsEmpty && !quantity.AtEnd)
        {
            // Feet and inches in one figure, `2' 3-1/2"` or `2 ft - 3 in`; the inches must say so.
            quantity.TakeMinus();
            var inches = quantity.TakeNumber(out var more)
                && TryUnit(quantity.TakeWord(), LengthUnit.Foot, out unit)
                && unit == LengthUnit.Inch;
            if (!inches)
            {
                return "has something after the feet that is not inches: write it like `2 ft 3 1/2 in`";
            }

            millimetres += more * LengthUnit.Inch.InMillimetres();
        }

        if (!quantity.AtEnd)
        {
            return quantity.WhatIsLeft("write one length, such as `310 mm` or `12 5/16 in`");
        }

        if (negative)
        {
            millimetres = 0 - millimetres;
        }

        return null;
    }

    private static bool TryUnit(ReadOnlySpan<char> word, LengthUnit bare, out LengthUnit unit)
    {
        unit = bare;
        if (word.IsEmpty)
        {
            return true;
        }

        foreach (var (known, meant) in UnitWords)
        {
            if (word.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                unit = meant;
                return true;
            }
        }

        return false;
    }
}
