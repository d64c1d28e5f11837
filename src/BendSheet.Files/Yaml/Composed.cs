using System.Globalization;
using System.Text;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Text in Unicode's composed form (Normalization Form C, Unicode Standard Annex 15, with the algorithms of the Unicode Standard, 3.11 and
/// 3.12): é is one character, whether a keyboard gave one or an e with an accent after it. The runtime leaves text as it is where it has
/// no tables of languages, which a small native program does without.
/// </summary>
public static class Composed
{
    private const int HangulFirst = 0xAC00;
    private const int LeadFirst = 0x1100;
    private const int VowelFirst = 0x1161;
    private const int TailBefore = 0x11A7;
    private const int Leads = 19;
    private const int Vowels = 21;
    private const int Tails = 28;

    private static readonly Lazy<CompositionTable> Known = new(CompositionTable.Read);

    /// <summary>The same text, composed; the text itself where it is already.</summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!text.Any(MayChange))
        {
            return text;
        }

        var table = Known.Value;
        var apart = new List<int>(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            TakeApart(rune.Value, table, apart);
        }

        Order(apart, table);
        var composed = new StringBuilder(text.Length);
        foreach (var code in Together(apart, table))
        {
            composed.Append(new Rune(code));
        }

        return composed.ToString();
    }

    /// <summary>
    /// False for Latin with its accents already on it, symbols, CJK ideographs and Hangul syllables: most of what anybody types.
    /// </summary>
    private static bool MayChange(char character) => character >= '\u0300'
        && character is not ((>= '\u2010' and <= '\u20CF') or (>= '\u2190' and <= '\u2328') or (>= '\u4E00' and <= '\u9FFF')
            or (>= '\uAC00' and <= '\uD7A3'));

    private static void TakeApart(int code, CompositionTable table, List<int> into)
    {
        if (code is >= HangulFirst and < HangulFirst + (Leads * Vowels * Tails))
        {
            var index = code - HangulFirst;
            into.Add(LeadFirst + (index / (Vowels * Tails)));
            into.Add(VowelFirst + (index / Tails % Vowels));
            if (index % Tails > 0)
            {
                into.Add(TailBefore + (index % Tails));
            }
        }
        else if (table.Parts.TryGetValue(code, out var parts))
        {
            // Parts have parts of their own, in the table at most four levels deep.
            foreach (var part in parts)
            {
                TakeApart(part, table, into);
            }
        }
        else
        {
            into.Add(code);
        }
    }

    /// <summary>Marks after one letter in the order of their classes; those of one class stay as they were typed.</summary>
    private static void Order(List<int> codes, CompositionTable table)
    {
        for (var from = 0; from < codes.Count; from++)
        {
            var to = from;
            while (to < codes.Count && table.Class(codes[to]) != 0)
            {
                to++;
            }

            if (to - from > 1)
            {
                var marks = codes.GetRange(from, to - from).OrderBy(table.Class).ToList();
                codes.RemoveRange(from, marks.Count);
                codes.InsertRange(from, marks);
            }

            from = Math.Max(from, to - 1);
        }
    }

    private static List<int> Together(List<int> apart, CompositionTable table)
    {
        var composed = new List<int>(apart.Count);
        var starter = -1;
        var before = 0;
        foreach (var code in apart)
        {
            var mark = table.Class(code);
            var isNext = starter == composed.Count - 1;
            if (starter >= 0 && (isNext || (before < mark && before != 0)) && Pair(composed[starter], code, table) is { } pair)
            {
                composed[starter] = pair;
                continue;
            }

            if (mark == 0)
            {
                starter = composed.Count;
            }

            before = mark;
            composed.Add(code);
        }

        return composed;
    }

    private static int? Pair(int first, int second, CompositionTable table)
    {
        if (first is >= LeadFirst and < LeadFirst + Leads && second is >= VowelFirst and < VowelFirst + Vowels)
        {
            return HangulFirst + ((((first - LeadFirst) * Vowels) + second - VowelFirst) * Tails);
        }

        return first is >= HangulFirst and < HangulFirst + (Leads * Vowels * Tails) && (first - HangulFirst) % Tails == 0
            && second is > TailBefore and < TailBefore + Tails
                ? first + second - TailBefore
            : table.Whole.TryGetValue((first, second), out var whole) ? whole
            : null;
    }

    /// <summary>What comes apart into what, what comes together, and which marks stand before which.</summary>
    private sealed class CompositionTable
    {
        private readonly Dictionary<int, int> _classes = [];

        public Dictionary<int, int[]> Parts { get; } = [];

        public Dictionary<(int First, int Second), int> Whole { get; } = [];

        public int Class(int code) => _classes.GetValueOrDefault(code);

        public static CompositionTable Read()
        {
            var table = new CompositionTable();
            using var stream = typeof(Composed).Assembly.GetManifestResourceStream("composition.txt")!;
            using var text = new StreamReader(stream);
            while (text.ReadLine() is { } line)
            {
                foreach (var entry in line.StartsWith('#') ? [] : line.Split(' '))
                {
                    table.Add(entry);
                }
            }

            return table;
        }

        private void Add(string entry)
        {
            var sign = entry.IndexOfAny(['=', ':', '/']);
            var (left, right) = (entry[..sign], entry[(sign + 1)..]);
            if (entry[sign] == '/')
            {
                var ends = left.Split('-');
                for (var code = Code(ends[0]); code <= Code(ends[1]); code++)
                {
                    _classes.Add(code, int.Parse(right, CultureInfo.InvariantCulture));
                }

                return;
            }

            int[] parts = [.. right.Split('+').Select(Code)];
            Parts.Add(Code(left), parts);
            if (entry[sign] == '=')
            {
                Whole.Add((parts[0], parts[1]), Code(left));
            }
        }

        private static int Code(string hexadecimal) => int.Parse(hexadecimal, NumberStyles.HexNumber, CultureInfo.InvariantCulture);
    }
}
