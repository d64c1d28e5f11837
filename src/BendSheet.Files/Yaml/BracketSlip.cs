using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Slips between <c>{</c> and <c>}</c> that leave readable YAML which says something else: the parser sees a word with no value. What was
/// meant is clear, so it is reported and read as meant.
/// </summary>
/// <param name="Finding">What to say.</param>
/// <param name="Meant">The entry as it was meant.</param>
/// <param name="BelongsToPrevious">The word was a part of the value before it: <paramref name="Meant"/> replaces the entry before.</param>
internal sealed record BracketSlip(Finding Finding, YamlEntry Meant, bool BelongsToPrevious)
{
    /// <summary>The slip in an entry of braces, or null.</summary>
    public static BracketSlip? In(YamlEntry entry, YamlEntry? previous, SourceLines source)
    {
        if (entry is not { Key: { IsPlain: true, Text.Length: > 0 }, Value: YamlText { IsPlain: true, Text: "" } nothing }
            || HasOwnColon(entry.Key, nothing, source))
        {
            return null;
        }

        return DecimalComma(entry.Key, previous) ?? SpaceAfterColon(entry.Key, source) ?? ColonOrQuotes(entry.Key, previous, source);
    }

    /// <summary><c>{bend: }</c> has a colon of its own before the missing value; <c>{bend}</c> has not.</summary>
    private static bool HasOwnColon(YamlText key, YamlText nothing, SourceLines source)
    {
        var from = source.OffsetOf(key.Position) + key.Text.Length;
        var to = source.OffsetOf(nothing.Position);
        return from < to && source.Text.AsSpan(from..to).Contains(':');
    }

    /// <summary><c>straight: 1,5</c>: a number, then a "word" that begins with a digit.</summary>
    private static BracketSlip? DecimalComma(YamlText word, YamlEntry? previous)
    {
        if (!char.IsAsciiDigit(word.Text[0]) || previous?.Value is not YamlText { IsPlain: true, Text: { Length: > 0 } whole } number
            || !char.IsAsciiDigit(whole[^1]))
        {
            return null;
        }

        if (CommaOfThousands.IsIn($"{whole},{word.Text}"))
        {
            return new BracketSlip(
                YamlRules.DecimalComma.Error(number.Position, CommaOfThousands.InWords($"{whole},{word.Text}")),
                previous with { Value = number with { Text = $"{whole},{word.Text}", IsUnclear = true } },
                BelongsToPrevious: true);
        }

        var meant = $"{whole}.{word.Text}";
        return new BracketSlip(
            YamlRules.DecimalComma.Error(number.Position,
                $"a decimal comma ends the number here: write {AsTyped.Show(meant)} with a point"),
            previous with { Value = number with { Text = meant } }, BelongsToPrevious: true);
    }

    /// <summary><c>straight:120</c>: one word with a colon in it.</summary>
    private static BracketSlip? SpaceAfterColon(YamlText word, SourceLines source)
    {
        var colon = word.Text.IndexOf(':', StringComparison.Ordinal);
        if (colon <= 0 || colon == word.Text.Length - 1)
        {
            return null;
        }

        var meant = Split(word, colon, source);
        return new BracketSlip(
            YamlRules.SpaceAfterColon.Error(word.Position,
                $"put a space after the colon: write {AsTyped.Show($"{meant.Key.Text}: {((YamlText)meant.Value).Text}")}"),
            meant, BelongsToPrevious: false);
    }

    /// <summary><c>straight 120</c>, or the rest of a text that had a comma in it: <c>note: heat, then bend</c>.</summary>
    private static BracketSlip? ColonOrQuotes(YamlText word, YamlEntry? previous, SourceLines source)
    {
        var blank = word.Text.IndexOf(' ', StringComparison.Ordinal);
        if (blank < 0)
        {
            return null;
        }

        if (char.IsAsciiLetter(word.Text[0]) && (char.IsAsciiDigit(word.Text[blank + 1]) || word.Text[blank + 1] is '-' or '+' or '.'))
        {
            var meant = Split(word, blank, source);
            return new BracketSlip(
                YamlRules.ColonMissing.Error(word.Position,
                    $"a colon is missing: write {AsTyped.Show($"{meant.Key.Text}: {((YamlText)meant.Value).Text}")}"),
                meant, BelongsToPrevious: false);
        }

        if (previous?.Value is not YamlText { IsPlain: true, Text: { Length: > 0 } begun } text)
        {
            return null;
        }

        return new BracketSlip(
            YamlRules.CommaInText.Error(word.Position,
                $"the comma before {AsTyped.Show(word.Text)} ends the text: put quotes around the whole, {AsTyped.Show($"\"{begun}, "
                    + $"{word.Text}\"")}"),
            previous with { Value = text with { Text = $"{begun}, {word.Text}" } }, BelongsToPrevious: true);
    }

    private static YamlEntry Split(YamlText word, int end, SourceLines source)
    {
        var value = word.Text[(end + 1)..].TrimStart();
        var position = source.At(word.Position.Line, word.Position.Column + word.Text.Length - value.Length);
        return new YamlEntry(word with { Text = word.Text[..end] }, new YamlText(value, IsPlain: true, position));
    }
}
