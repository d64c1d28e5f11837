using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Which entry of a map stands for which word of its vocabulary. Every other word gets a finding.</summary>
internal sealed class MapWords
{
    private readonly Dictionary<string, YamlEntry> _entries = new(StringComparer.Ordinal);

    private MapWords()
    {
    }

    /// <summary>A word stands here that nobody can tell the meaning of, so that something may be missing.</summary>
    public bool HasUnknownWord { get; private set; }

    /// <summary>Looks at every word of a map.</summary>
    public static MapWords Of(YamlMap map, Vocabulary vocabulary, FileContext context)
    {
        var words = new MapWords();
        foreach (var entry in map.Entries)
        {
            if (vocabulary.Knows(entry.Key.Text))
            {
                words._entries.Add(entry.Key.Text, entry);
            }
        }

        if (words._entries.Count == map.Entries.Count)
        {
            return words;
        }

        // An unknown word below a word without a value is that value, not indented far enough: the word above is reported, and one cause is
        // enough.
        var belongsFurtherIn = false;
        foreach (var entry in map.Entries)
        {
            if (words._entries.ContainsKey(entry.Key.Text))
            {
                belongsFurtherIn = entry.Value is YamlText { IsEmpty: true };
            }
            else
            {
                belongsFurtherIn = words.TakeOther(entry, vocabulary, belongsFurtherIn, context);
            }
        }

        return words;
    }

    /// <summary>The words that stand here.</summary>
    public Dictionary<string, YamlEntry>.KeyCollection Words => _entries.Keys;

    /// <summary>The entry for a word, also where the word is misspelt; null where there is none.</summary>
    public YamlEntry? Entry(string word) => _entries.GetValueOrDefault(word);

    /// <summary>Reports a word that is not read, and takes it for the one that it was meant to be.</summary>
    private bool TakeOther(YamlEntry entry, Vocabulary vocabulary, bool belongsFurtherIn, FileContext context)
    {
        var key = entry.Key;
        var nearest = vocabulary.Synonyms.TryGetValue(key.Text, out var meant) && !_entries.ContainsKey(meant)
            ? meant
            : NearestWord.Among(key.Text, vocabulary.Known.Where(word => !_entries.ContainsKey(word)));
        if (nearest is null && belongsFurtherIn)
        {
            HasUnknownWord = true;
            return true;
        }

        var cure = nearest is null ? $"it may have {ReadWords(vocabulary)}" : $"did you mean `{nearest}`?";
        context.Report(FileRules.UnknownWord.Error(key.Position, $"{AsTyped.Show(key.Text)} is not a word for {vocabulary.Place}: {cure}"));
        if (nearest is null)
        {
            HasUnknownWord = true;
        }
        else
        {
            _entries.Add(nearest, entry);
        }

        return false;
    }

    private static string ReadWords(Vocabulary vocabulary) => $"`{string.Join("`, `", vocabulary.Known)}`";
}
