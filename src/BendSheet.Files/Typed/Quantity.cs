using System.Globalization;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Typed;

/// <summary>
/// Reads numbers the way people type measurements: <c>310</c>, <c>0.028</c>, <c>3/16</c>, <c>12 5/16</c>, <c>12-5/16</c>, each with the
/// word that follows it. No exponents, no thousands separators, no NaN.
/// </summary>
internal ref struct Quantity(ReadOnlySpan<char> text)
{
    private ReadOnlySpan<char> _rest = text.Trim();

    /// <summary>Nothing is left to read.</summary>
    public readonly bool AtEnd => _rest.IsEmpty;

    /// <summary>What is wrong with what is left to read, as the rest of a sentence about the text.</summary>
    /// <param name="cure">What to write instead, where nothing nearer can be said.</param>
    public readonly string WhatIsLeft(string cure)
    {
        var digits = DigitsLength(_rest.TrimStart("-– "));
        return _rest.TrimStart("-– ")[digits..] is ['/' or '⁄', ..] ? "has a fraction that cannot be: write it like `3/16` or `12 5/16`"
            : _rest is ['.'] or ['.', not (>= '0' and <= '9'), ..]
                ? "has a point and no figure after it: type the figure, or leave the point out"
            : $"has {AsTyped.Show(_rest)} left over: {cure}";
    }

    /// <summary>Takes a plus or minus sign, if one stands here; whether it was a minus.</summary>
    public bool TakeMinus()
    {
        var isMinus = _rest is ['-' or '−' or '–', ..];
        if (isMinus || _rest is ['+', ..])
        {
            _rest = _rest[1..].TrimStart();
        }

        return isMinus;
    }

    /// <summary>Takes a number; infinite where it has more digits than a number can hold.</summary>
    public bool TakeNumber(out double number)
    {
        if (TakeFraction(out number))
        {
            return true;
        }

        var length = DecimalLength(_rest);
        if (length == 0)
        {
            return false;
        }

        number = double.Parse(_rest[..length], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        var isWhole = !_rest[..length].Contains('.');
        _rest = _rest[length..];
        if (isWhole && TakeMixedFraction(out var fraction))
        {
            number += fraction;
        }

        return true;
    }

    /// <summary>Takes the letters, or the inch, foot or degree mark, that stand here; empty where there are none. Marks come as phones and
    /// word processors bend them (”, ’), and the degree also as what looks like it (º, ˚).</summary>
    public ReadOnlySpan<char> TakeWord()
    {
        _rest = _rest.TrimStart();
        var isMark = _rest is ['"' or '″' or '”' or '\'' or '′' or '’' or '°' or 'º' or '˚', ..];
        var length = isMark ? 1 : LettersLength(_rest);
        var word = _rest[..length];
        _rest = _rest[length..].TrimStart();
        return word;
    }

    /// <summary>A fraction after a whole number, joined by spaces or a hyphen, and smaller than one.</summary>
    private bool TakeMixedFraction(out double fraction)
    {
        var before = _rest;
        var behindBlanks = _rest.TrimStart();
        var joined = behindBlanks.Length < _rest.Length;
        if (behindBlanks is ['-' or '–', ..])
        {
            behindBlanks = behindBlanks[1..].TrimStart();
            joined = true;
        }

        _rest = behindBlanks;
        if (joined && TakeFraction(out fraction) && fraction < 1)
        {
            return true;
        }

        _rest = before;
        fraction = 0;
        return false;
    }

    private bool TakeFraction(out double fraction)
    {
        fraction = 0;
        var above = DigitsLength(_rest);
        if (above == 0 || above == _rest.Length || _rest[above] is not ('/' or '⁄'))
        {
            return false;
        }

        var below = DigitsLength(_rest[(above + 1)..]);
        if (below == 0)
        {
            return false;
        }

        var numerator = double.Parse(_rest[..above], NumberStyles.None, CultureInfo.InvariantCulture);
        var denominator = double.Parse(_rest.Slice(above + 1, below), NumberStyles.None, CultureInfo.InvariantCulture);
        if (denominator == 0)
        {
            return false;
        }

        fraction = numerator / denominator;
        _rest = _rest[(above + 1 + below)..];
        return true;
    }

    private static int DecimalLength(ReadOnlySpan<char> text)
    {
        var whole = DigitsLength(text);
        if (whole == text.Length || text[whole] != '.')
        {
            return whole;
        }

        var decimals = DigitsLength(text[(whole + 1)..]);
        return decimals == 0 ? whole : whole + 1 + decimals;
    }

    private static int LettersLength(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && char.IsLetter(text[length]))
        {
            length++;
        }

        return length;
    }

    private static int DigitsLength(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && char.IsAsciiDigit(text[length]))
        {
            length++;
        }

        return length;
    }
}
