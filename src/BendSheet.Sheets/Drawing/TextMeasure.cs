using BendSheet.Core.Units;
using BendSheet.Sheets.Fonts;

namespace BendSheet.Sheets.Drawing;

/// <summary>
/// Text that will really print, and the lines it takes. All text passes through here before it is drawn, so that it is known which
/// characters the font lacks.
/// </summary>
internal sealed class TextMeasure
{
    private readonly List<string> _missing = [];

    /// <summary>The characters that the font lacks, each once, as it reads in a sentence.</summary>
    public IReadOnlyList<string> Missing => _missing;

    /// <summary>The text with a stand-in for each character that the font lacks.</summary>
    public string Printable(string typed)
    {
        var printable = PrintableText.Of(typed);
        if (!printable.Replaced.IsEmpty)
        {
            _missing.AddRange(printable.Replaced.Except(_missing, StringComparer.Ordinal));
        }

        return printable.Text;
    }

    /// <summary>
    /// The text broken into lines at spaces, but not between a figure and its unit, and inside a word where the word alone is too long.
    /// </summary>
    /// <param name="typed">Any text.</param>
    /// <param name="style">It is set in.</param>
    /// <param name="width">Of the lines, in millimetres.</param>
    public IReadOnlyList<string> Wrap(string typed, TextStyle style, double width)
    {
        var face = style.Face;
        var room = width * face.UnitsPerEm / style.Size; // in the font's units, in which widths of parts add up
        var blank = face.Width(" ");
        var text = WithSingleBlanks(Printable(typed));
        var lines = new List<string>();
        var (start, end, used) = (0, 0, 0); // of the line that is being filled
        foreach (var range in UnpartedWords.Of(text))
        {
            var word = text.AsSpan(range);
            var wordWidth = face.Width(word);
            if (end > start && used + blank + wordWidth <= room)
            {
                used += blank + wordWidth;
                end += 1 + word.Length;
                continue;
            }

            if (end > start)
            {
                lines.Add(text[start..end]);
            }

            start = range.Start.Value;
            end = range.End.Value;
            while (wordWidth > room && end - start > 1)
            {
                var fits = LongestStart(text.AsSpan(start, end - start), face, room);
                var space = text.AsSpan(start, Math.Min(fits + 1, end - start)).LastIndexOf(' ');
                lines.Add(text.Substring(start, space > 0 ? space : fits));
                start += space > 0 ? space + 1 : fits;
                wordWidth -= face.Width(lines[^1]) + (space > 0 ? blank : 0);
            }

            used = wordWidth;
        }

        if (end > start || lines.Count == 0)
        {
            lines.Add(text[start..end]);
        }

        return lines;
    }

    private static string WithSingleBlanks(string text) =>
        text.Contains("  ", StringComparison.Ordinal) || text.StartsWith(' ') || text.EndsWith(' ')
            ? string.Join(' ', text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            : text;

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
