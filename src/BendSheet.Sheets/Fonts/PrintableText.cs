using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// A typed text as it will be on paper. A character that the fonts have no glyph for would print as a mark that means
/// nothing, without a word from PDFsharp; here □ takes its place, and the caller can say so.
/// </summary>
public sealed class PrintableText
{
    private const char StandIn = '□';

    private PrintableText(string text, ImmutableArray<string> replaced)
    {
        Text = text;
        Replaced = replaced;
    }

    /// <summary>One line of text; every character has a glyph, and comes back as itself when it is copied out of the PDF.</summary>
    public string Text { get; }

    /// <summary>
    /// The characters that □ stands for, each once, in the order of the text, with its code: <c>管 (U+7BA1)</c>. Empty when
    /// nothing is lost: spaces for tabs and line ends, look-alikes and invisible characters left out are not counted.
    /// </summary>
    public ImmutableArray<string> Replaced { get; }

    /// <summary>What will print of a text. Any text will do, lone surrogates included.</summary>
    public static PrintableText Of(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (!typed.AsSpan().ContainsAnyExceptInRange(' ', '~'))
        {
            return new PrintableText(typed, []);
        }

        var text = new StringBuilder(typed.Length);
        var replaced = ImmutableArray.CreateBuilder<string>();
        for (var at = 0; at < typed.Length; at++)
        {
            var character = typed[at];
            if (character is >= ' ' and <= '~')
            {
                text.Append(character);
            }
            else if (char.IsSurrogatePair(typed, at))
            {
                at++;
                Replace(typed.Substring(at - 1, 2));
            }
            else if (character == '\r' && at + 1 < typed.Length && typed[at + 1] == '\n')
            {
                // One line end, one space: the line feed will give it.
            }
            else if (Printed(character) is { } print)
            {
                text.Append(print);
            }
            else
            {
                Replace(character.ToString());
            }
        }

        return new PrintableText(text.ToString(), replaced.ToImmutable());

        void Replace(string lost)
        {
            text.Append(StandIn);
            var described = Described(lost);
            if (!replaced.Contains(described, StringComparer.Ordinal))
            {
                replaced.Add(described);
            }
        }
    }

    /// <summary>What a character prints as; null when there is no glyph for it. All four faces have the same characters.</summary>
    private static string? Printed(char character) => LookAlike.Of(character) ?? char.GetUnicodeCategory(character) switch
    {
        _ when character is '\t' or '\n' or '\r' or '\v' or '\f' or '\u0085' => " ",
        UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => " ",
        UnicodeCategory.Format => "", // joiners, direction marks, soft hyphens
        _ when character is >= '\uFE00' and <= '\uFE0F' => "", // variation selectors
        UnicodeCategory.Control or UnicodeCategory.Surrogate or UnicodeCategory.PrivateUse => null,
        _ when Face.At(0).Glyph(character) != 0 => character.ToString(),
        UnicodeCategory.SpaceSeparator => " ",
        _ => null,
    };

    private static string Described(string lost)
    {
        var known = Rune.TryGetRuneAt(lost, 0, out var rune);
        var code = string.Create(CultureInfo.InvariantCulture, $"U+{(known ? rune.Value : lost[0]):X4}");
        return known && !Rune.IsControl(rune) ? $"{lost} ({code})" : code;
    }
}
