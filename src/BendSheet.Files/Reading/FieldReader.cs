using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// A map of the file with the words that may stand in it. Asking for a word gives its value, or null after a finding has been written, so
/// that a reader goes on and finds everything else that is wrong.
/// </summary>
internal sealed class FieldReader
{
    /// <summary>In a word of two letters one slip is half of it.</summary>
    private const int ShortestToGuess = 3;

    private readonly MapWords _words;
    private readonly FileContext _context;

    private FieldReader(SourcePosition position, MapWords words, FileContext context)
    {
        Position = position;
        _words = words;
        _context = context;
    }

    /// <summary>Where the map begins.</summary>
    public SourcePosition Position { get; }

    /// <summary>A word stands here that nobody can tell the meaning of, so that something may be missing.</summary>
    public bool HasUnknownWord => _words.HasUnknownWord;

    /// <summary>Reports that a word is missing; not where a word stands here that may have been meant for it.</summary>
    public void ReportMissing(string message)
    {
        if (!HasUnknownWord)
        {
            _context.Report(FileRules.MissingWord.Error(Position, message));
        }
    }

    /// <summary>Takes a value as a map, and reports every word that does not belong there.</summary>
    public static FieldReader? Of(YamlValue value, Vocabulary vocabulary, FileContext context)
    {
        if (value is not YamlMap map)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"{vocabulary.Place} is written as words with values, such as `{vocabulary.Example}`, and this is {Kind(value)}"));
            return null;
        }

        return new(map.Position, MapWords.Of(map, vocabulary, context), context);
    }

    /// <summary>In a sentence.</summary>
    public static string Kind(YamlValue value) => value switch
    {
        YamlMap { Entries.Count: 0 } or YamlList { Items.Count: 0 } or YamlText { IsEmpty: true } => "empty",
        YamlMap => "a set of words with values",
        YamlList => "a list",
        YamlText text => AsTyped.Show(text.Text),
        _ => "something else",
    };

    /// <summary>The words that stand here, misspelt ones as what they were meant to be.</summary>
    public Dictionary<string, YamlEntry>.KeyCollection Words => _words.Words;

    /// <summary>Whether the word stands here, with or without a value.</summary>
    public bool Has(string word) => _words.Entry(word) is not null;

    /// <summary>Where the word itself stands, for findings about it.</summary>
    public SourcePosition PositionOf(string word) => _words.Entry(word)?.Key.Position ?? Position;

    /// <summary>Where the word's value stands, for findings of later stages about it; nowhere where the word is not there.</summary>
    public SourcePosition PositionOfValue(string word) => _words.Entry(word)?.Value.Position ?? default;

    /// <summary>What was typed after the word, whatever it is and without a finding: for a second look.</summary>
    public YamlValue? Typed(string word) => _words.Entry(word)?.Value;

    /// <summary>
    /// The word's value, whatever it is; null where it is not there, and after a finding where nothing was typed after it.
    /// </summary>
    public YamlValue? Value(string word)
    {
        if (_words.Entry(word) is not { } entry)
        {
            return null;
        }

        if (entry.Value is YamlText { IsEmpty: true })
        {
            _context.Report(
                FileRules.MissingWord.Error(
                    entry.Key.Position,
                    $"`{word}` has no value: type it after the colon, or on the next lines two spaces further in, or take the word out"));
            return null;
        }

        return entry.Value;
    }

    /// <summary>The word's text.</summary>
    public YamlText? Text(string word)
    {
        var value = Value(word);
        if (value is null or YamlText)
        {
            return (YamlText?)value;
        }

        _context.Report(FileRules.WrongKind.Error(value.Position, $"`{word}` is one word or figure, and this is {Kind(value)}"));
        return null;
    }

    /// <summary>A person's own words, on one line, to be printed as they are; null where they are only spaces.</summary>
    public string? FreeText(string word)
    {
        if (Text(word) is not { } text)
        {
            return null;
        }

        var line = text.Text.ReplaceLineEndings(" ").Replace('\t', ' ').Trim();
        if (!line.Any(InvisibleCharacter.Is))
        {
            return line.Length == 0 ? null : line;
        }

        _context.Report(
            YamlRules.ControlCharacter
                .Error(text.Position, $"`{word}` has a character in it that cannot be seen: type the text again without it"));
        return null;
    }

    /// <summary>A length in the file's unit or its own.</summary>
    public Length? Length(string word, Range range) => Text(word) is { } text ? FigureReader.Length(text, word, range, _context) : null;

    /// <summary>An angle in degrees.</summary>
    public Angle? Angle(string word, Range range) => Text(word) is { } text ? FigureReader.Angle(text, word, range, _context) : null;

    /// <summary>A rotation, clockwise positive.</summary>
    public Angle? Rotation(string word) => Text(word) is { } text ? FigureReader.Rotation(text, word, _context) : null;

    /// <summary>A plain number.</summary>
    public double? Number(string word, Range range)
    {
        if (Text(word) is not { } text)
        {
            return null;
        }

        var read = double.TryParse(
            text.Text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        return Figure(word, text, read ? null : "is not a number: write one, such as `1.0`", FileRules.UnreadableNumber, number, range);
    }

    /// <summary>A whole number of things.</summary>
    public int? Count(string word)
    {
        if (Number(word, Range.Count) is not { } number)
        {
            return null;
        }

        if (number == Math.Truncate(number))
        {
            return (int)number;
        }

        _context.Report(FileRules.OutOfRange.Error(PositionOfValue(word), $"`{word}` is a whole number of pieces, such as `{word}: 2`"));
        return null;
    }

    /// <summary>One of a few words; after a finding, the one that was probably meant.</summary>
    public T? Choice<T>(string word, IReadOnlyList<(T Value, string Word)> choices)
        where T : struct
    {
        var typed = Value(word);
        if (typed is not YamlText text)
        {
            if (typed is not null)
            {
                _context.Report(FileRules.WrongKind.Error(
                    typed.Position, $"`{word}` is one of {InWords(choices)}, and this is {Kind(typed)}"));
            }

            return null;
        }

        foreach (var (value, known) in choices)
        {
            if (text.Text.Equals(known, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        var meant = Meant(text.Text, choices.Select(choice => choice.Word));
        _context.Report(FileRules.NotAChoice.Error(
            text.Position,
            $"{AsTyped.Show($"{word}: {text.Text}")} is not one of {InWords(choices)}"
                + (meant is null ? string.Empty : $": did you mean `{meant}`?")));

        // Read on with what was probably meant, to find what is wrong beside it; nothing is made of it.
        return meant is null ? null : choices.First(choice => string.Equals(choice.Word, meant, StringComparison.Ordinal)).Value;
    }

    private static string InWords<T>(IEnumerable<(T Value, string Word)> choices) =>
        string.Join(", ", choices.Select(choice => $"`{choice.Word}`"));

    /// <summary>
    /// The choice that a common word stands for, the one with the fewest slips, or the one that stands among other words:
    /// <c>on the outside</c>.
    /// </summary>
    private static string? Meant(string typed, IEnumerable<string> choices)
    {
        var among = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return ChoiceSynonyms.Meant(typed, choices)
            ?? (typed.Length < ShortestToGuess ? null : NearestWord.Among(typed, choices))
            ?? choices.FirstOrDefault(choice => among.Contains(choice, StringComparer.OrdinalIgnoreCase));
    }

    private double? Figure(string word, YamlText text, string? wrong, Rule unreadable, double figure, Range range) =>
        FigureReader.Checked(word, text, wrong, unreadable, figure, range, _context);
}
