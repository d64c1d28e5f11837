using BendSheet.Sheets.Fonts;
using PdfSharp.Drawing;

namespace BendSheet.Sheets.Drawing;

/// <summary>
/// Text that will really print, and how much room it takes. Everything that is to be drawn passes through here first, so it knows which
/// characters the font has no sign for. Widths in millimetres.
/// </summary>
internal sealed class TextMeasure : IDisposable
{
    private readonly XGraphics _graphics = XGraphics.CreateMeasureContext(new XSize(1000, 1000), XGraphicsUnit.Millimeter, XPageDirection.Downwards);
    /// <summary>No line on a page has as many characters: a longer text need not be measured to know that.</summary>
    private const int LongestLine = 1000;

    private readonly List<string> _missing = [];

    /// <summary>The same cautions and instructions stand on the sheet of every line.</summary>
    private readonly Dictionary<(string Typed, TextStyle Style, double Width), IReadOnlyList<string>> _wrapped = [];

    /// <summary>What was stood in for, each once, as it reads in a sentence.</summary>
    public IReadOnlyList<string> Missing => _missing;

    /// <summary>The font of a style.</summary>
    public static XFont Font(TextStyle style) => (style.Tabular ? Typeface.InterTabular : Typeface.Inter).Font(style.Size, style.Bold);

    /// <summary>The text with a stand-in for each character that has no sign.</summary>
    public string Printable(string typed)
    {
        var printable = PrintableText.Of(typed);
        _missing.AddRange(printable.Replaced.Except(_missing, StringComparer.Ordinal));
        return printable.Text;
    }

    /// <summary>Width on one line.</summary>
    public double Width(string printable, TextStyle style) => _graphics.MeasureString(printable, Font(style)).Width;

    /// <summary>The largest style, down to the smallest legible one, in which the text fits.</summary>
    public TextStyle Fitting(string printable, TextStyle style, double width)
    {
        var wanted = Width(printable, style);
        return wanted <= width ? style : style.At(style.Points * width / wanted);
    }

    /// <summary>The text broken into lines at blanks, and inside a word where the word alone is too long.</summary>
    public IReadOnlyList<string> Wrap(string typed, TextStyle style, double width)
    {
        if (!_wrapped.TryGetValue((typed, style, width), out var lines))
        {
            lines = Wrapped(typed, style, width);
            _wrapped.Add((typed, style, width), lines);
        }

        return lines;
    }

    /// <inheritdoc/>
    public void Dispose() => _graphics.Dispose();

    private List<string> Wrapped(string typed, TextStyle style, double width)
    {
        var lines = new List<string>();
        var line = string.Empty;
        foreach (var word in Printable(typed).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (longer.Length < LongestLine && Width(longer, style) <= width)
            {
                line = longer;
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line);
            }

            line = word;
            for (var fits = LongestStart(line, style, width); fits < line.Length; fits = LongestStart(line, style, width))
            {
                lines.Add(line[..fits]);
                line = line[fits..];
            }
        }

        if (line.Length > 0 || lines.Count == 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    /// <summary>How many characters fit, found without measuring more than some lines of a long word; at least one, so that wrapping ends.</summary>
    private int LongestStart(string word, TextStyle style, double width)
    {
        var high = 1;
        while (high < word.Length && Width(word[..high], style) <= width)
        {
            high = Math.Min(2 * high, word.Length);
        }

        var low = high / 2;
        if (high == word.Length && Width(word, style) <= width)
        {
            return high;
        }

        while (low + 1 < high)
        {
            var middle = (low + high) / 2;
            (low, high) = Width(word[..middle], style) <= width ? (middle, high) : (low, middle);
        }

        return Math.Max(low, 1);
    }
}
