using System.Text;
using BendSheet.Sheets.Fonts;

namespace BendSheet.Sheets.Drawing;

/// <summary>
/// Text that will really print, and the lines it takes. Everything that is to be drawn passes through here first, so it knows which characters
/// the font has no sign for.
/// </summary>
internal sealed class TextMeasure
{
    private readonly List<string> _missing = [];

    /// <summary>What was stood in for, each once, as it reads in a sentence.</summary>
    public IReadOnlyList<string> Missing => _missing;

    /// <summary>The text with a stand-in for each character that has no sign.</summary>
    public string Printable(string typed)
    {
        var printable = PrintableText.Of(typed);
        if (!printable.Replaced.IsEmpty)
        {
            _missing.AddRange(printable.Replaced.Except(_missing, StringComparer.Ordinal));
        }

        return printable.Text;
    }

    /// <summary>The text broken into lines at blanks, and inside a word where the word alone is too long.</summary>
    /// <param name="typed">Any text.</param>
    /// <param name="style">It is set in.</param>
    /// <param name="width">Of the lines, in millimetres.</param>
    public IReadOnlyList<string> Wrap(string typed, TextStyle style, double width)
    {
        var face = style.Face;
        var room = width * face.UnitsPerEm / style.Size; // in the font's units, in which widths of parts add up
        var blank = face.Width(" ");
        var text = Printable(typed);
        var lines = new List<string>();
        var line = new StringBuilder();
        var used = 0;
        foreach (var range in text.AsSpan().Split(' '))
        {
            var word = text.AsSpan(range);
            var wordWidth = face.Width(word);
            if (word.IsEmpty)
            {
                continue;
            }

            if (line.Length > 0 && used + blank + wordWidth <= room)
            {
                line.Append(' ').Append(word);
                used += blank + wordWidth;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            while (wordWidth > room && word.Length > 1)
            {
                var start = word[..LongestStart(word, face, room)];
                lines.Add(start.ToString());
                word = word[start.Length..];
                wordWidth -= face.Width(start);
            }

            line.Append(word);
            used = wordWidth;
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line.ToString());
        }

        return lines;
    }

    /// <summary>How many characters fit; at least one, so that wrapping ends.</summary>
    private static int LongestStart(ReadOnlySpan<char> word, Face face, double room)
    {
        var fits = 1;
        var used = face.Width(word[..1]);
        while (fits < word.Length && (used += face.Width(word.Slice(fits, 1))) <= room)
        {
            fits++;
        }

        return fits;
    }
}
