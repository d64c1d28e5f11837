using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>A list or map whose end has not been read yet.</summary>
internal abstract class OpenValue
{
    /// <summary>Takes the next thing inside; null stands for one that was reported and is left out.</summary>
    public abstract void Add(YamlValue? value);

    /// <summary>The finished value.</summary>
    public abstract YamlValue Close();
}

/// <summary>A list that is being read.</summary>
internal sealed class OpenList(SourcePosition position) : OpenValue
{
    private readonly List<YamlValue> _items = [];

    public override void Add(YamlValue? value)
    {
        if (value is not null)
        {
            _items.Add(value);
        }
    }

    public override YamlValue Close() => new YamlList(_items.ToArray(), position);
}

/// <summary>A map that is being read: words and values come in turn.</summary>
internal sealed class OpenMap(SourcePosition position, SourceLines source, bool isFlow, Action<Finding> report) : OpenValue
{
    private const int SmallMap = 8;

    private readonly List<YamlEntry> _entries = [];
    private readonly List<YamlText> _again = [];
    private Dictionary<string, int>? _lineOf;
    private YamlText? _key;
    private SourcePosition? _firstKey;

    /// <summary>The next thing is the word before a colon.</summary>
    public bool WantsKey { get; private set; } = true;

    /// <summary>The next thing is the value of a word that was refused.</summary>
    public bool RefusesValue => !WantsKey && _key is null;

    public override void Add(YamlValue? value)
    {
        if (WantsKey)
        {
            _key = value as YamlText;
            _firstKey ??= value?.Position;
            WantsKey = false;
            RefuseMerge();
            return;
        }

        if (_key is not null && value is not null)
        {
            AddEntry(new YamlEntry(_key, value));
        }

        _key = null;
        WantsKey = true;
    }

    /// <summary>A map without braces inside <c>[…]</c> (<c>[{pull: 93}, got: 90]</c>) begins at its word.</summary>
    public override YamlValue Close() => new YamlMap(_entries.ToArray(), isFlow && !StartsWithBrace ? _firstKey ?? position : position)
    {
        Again = _again.Count == 0 ? [] : _again.ToArray(),
    };

    private bool StartsWithBrace => source[position.Line].Length >= position.Column && source[position.Line][position.Column - 1] == '{';

    private void RefuseMerge()
    {
        if (_key is { IsPlain: true, Text: "<<" })
        {
            report(YamlRules.AnchorOrAlias.Error(_key.Position,
                "entries cannot be taken over with <<: type them again, or use `templates:` for rows that come twice"));
            _key = null;
        }
    }

    private void AddEntry(YamlEntry entry)
    {
        if (!isFlow && entry.Key is { IsPlain: true, Text: ['-', '{' or '[' or (>= 'a' and <= 'z'), ..] })
        {
            report(YamlRules.SpaceAfterDash.Error(entry.Key.Position, "put a space after the dash at the start of this line"));
            return;
        }

        if (isFlow && BracketSlip.In(entry, _entries.LastOrDefault(), source) is { } slip)
        {
            report(slip.Finding);
            if (slip.BelongsToPrevious)
            {
                _entries[^1] = slip.Meant;
                return;
            }

            entry = slip.Meant;
        }

        if (LineOf(entry.Key.Text) is not { } first)
        {
            _lineOf?.Add(entry.Key.Text, entry.Key.Position.Line);
            _entries.Add(entry);
            return;
        }

        _again.Add(entry.Key);
        var where = first == entry.Key.Position.Line ? "earlier on this line" : FormattableString.Invariant($"on line {first}");
        report(YamlRules.DuplicateWord.Error(entry.Key.Position,
            $"{AsTyped.Show(entry.Key.Text)} was already given {where}: delete one of the two"));
    }

    /// <summary>
    /// The line on which a word was given before. Most maps are small, and for those a table would cost more than it saves.
    /// </summary>
    private int? LineOf(string word)
    {
        if (_entries.Count < SmallMap)
        {
            foreach (var entry in _entries)
            {
                if (string.Equals(entry.Key.Text, word, StringComparison.Ordinal))
                {
                    return entry.Key.Position.Line;
                }
            }

            return null;
        }

        _lineOf ??= _entries.ToDictionary(e => e.Key.Text, e => e.Key.Position.Line, StringComparer.Ordinal);
        return _lineOf.TryGetValue(word, out var line) ? line : null;
    }
}
