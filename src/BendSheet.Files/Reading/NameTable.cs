using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// The tubes, benders, fittings or parts of a file, by name. One that could not be read keeps its name; where none of them could be
/// read, every name may be one of theirs, so that a line that uses one is not reported as well.
/// </summary>
/// <typeparam name="T">Tube, bender, fitting or part.</typeparam>
internal sealed class NameTable<T>(string kind, string kinds, Vocabulary vocabulary)
    where T : class
{
    private readonly List<(string Name, T? Value)> _all = [];
    private readonly Dictionary<string, T?> _byName = new(StringComparer.Ordinal);
    private bool _isSaidTwice;
    private bool _mayHaveMore;

    /// <summary>Reads the long form, a map of names, or the short form, a single one without a name.</summary>
    /// <param name="file">The top of the file.</param>
    /// <param name="read">Reads one.</param>
    /// <param name="shortForm">Whether the file may have a single one without a name.</param>
    /// <param name="context">For findings.</param>
    public void Read(FieldReader file, Func<string, YamlValue, FileContext, T?> read, bool shortForm, FileContext context)
    {
        _mayHaveMore = context.IsPartUnread;
        _isSaidTwice = shortForm && file.Has(kind) && file.Has(kinds);
        if (_isSaidTwice)
        {
            context.Report(FileRules.SaidTwice.Error(
                file.PositionOf(kind),
                $"the file has `{kind}` and `{kinds}`: move the single one into `{kinds}`, under a name of its own"));
        }

        if (shortForm && file.Has(kind))
        {
            ReadSingle(file.Value(kind), read, context);
        }

        if (file.Value(kinds) is { } several)
        {
            ReadSeveral(several, read, shortForm, context);
        }
        else
        {
            _mayHaveMore |= file.Has(kinds);
        }
    }

    /// <summary>The one that a name leads to, or a finding.</summary>
    public T? Find(YamlText name, FileContext context)
    {
        if (_byName.TryGetValue(name.Text, out var value) || _mayHaveMore)
        {
            return value;
        }

        context.Report(FileRules.UnknownName, name.Position, () =>
        {
            var names = _all.Select(entry => entry.Name).Where(known => known.Length > 0).ToList();
            var nearest = NearestWord.Among(name.Text, names);
            var cure = nearest is not null ? $"did you mean {AsTyped.Show(nearest)}?"
                : names.Count > 0 ? $"the file has {AsTyped.Listed(names)}"
                : _all.Count > 0 ? $"the file's only {kind} has no name: leave this out, or give it a name in `{kinds}`"
                : $"add `{kinds}:` to the top of the file, and below it this name with `{vocabulary.Example}` after its colon";
            return $"there is no {kind} called {AsTyped.Show(name.Text)}: {cure}";
        });
        return null;
    }

    /// <summary>
    /// Whether something of that name was typed; null where it could not be read. Without a finding, for names that may be mere words.
    /// </summary>
    public bool TryFind(string name, out T? value) => _byName.TryGetValue(name, out value);

    /// <summary>All names, in the order of the file.</summary>
    public IEnumerable<string> Names => _all.Select(entry => entry.Name);

    /// <summary>The only one of the file, or a finding at the line that does not say which.</summary>
    public T? Only(SourcePosition line, FileContext context)
    {
        if (_all.Count == 1)
        {
            return _all[0].Value;
        }

        if (_all.Count > 1 && !_isSaidTwice)
        {
            context.Report(
                FileRules.MissingWord,
                line,
                () => $"the file has several {kinds} and this line does not say which: add `{kind}:` with one of "
                    + AsTyped.Listed(_all.Select(entry => entry.Name)));
        }

        return null;
    }

    /// <summary>The one that a line names, or the only one of the file.</summary>
    public T? Chosen(FieldReader line, YamlEntry entry, FileContext context) => !line.Has(kind) ? Only(entry.Key.Position, context)
        : line.Text(kind) is { } name ? Find(name, context)
        : null;

    /// <summary>All that could be read, in the order of the file.</summary>
    public ImmutableArray<T> All => [.. _all.Select(entry => entry.Value).OfType<T>()];

    /// <summary>The only one of the file, readable or not; null without a finding where there are none or several.</summary>
    public T? OnlyOne => _all is [var only] ? only.Value : null;

    /// <summary>The file has several, and only a name tells which is meant.</summary>
    public bool HasSeveral => _all.Count > 1 && !_isSaidTwice;

    /// <summary>Whether the file has any, readable or not.</summary>
    public bool Any => _all.Count > 0;

    private void ReadSingle(YamlValue? single, Func<string, YamlValue, FileContext, T?> read, FileContext context)
    {
        if (single is YamlMap { Entries.Count: > 0 } map && map.Entries.All(entry => entry.Value is YamlMap))
        {
            context.Report(FileRules.WrongKind.Error(
                single.Position, $"`{kind}` is a single {kind} without a name: write `{kinds}` above several, or above one with a name"));
            ReadAll(map, read, context);
            return;
        }

        _all.Add((string.Empty, single is null ? null : read(string.Empty, single, context)));
    }

    private void ReadSeveral(YamlValue several, Func<string, YamlValue, FileContext, T?> read, bool shortForm, FileContext context)
    {
        if (several is not YamlMap { Entries.Count: > 0 } map)
        {
            _mayHaveMore = true;
            context.Report(FileRules.WrongKind.Error(
                several.Position,
                $"`{kinds}` has a name for each {kind}, such as `{kinds}: {{main: {vocabulary.Example}}}`, and this is "
                    + $"{FieldReader.Kind(several)}"));
            return;
        }

        if (!map.Entries.Any(entry => entry.Value is YamlMap)
            && map.Entries.Any(entry => vocabulary.Known.Contains(entry.Key.Text, StringComparer.Ordinal)))
        {
            _mayHaveMore = true;
            var cure = shortForm
                ? $"write `{kind}` for a single one without a name, or put a name above its words"
                : "put a name above its words";
            context.Report(
                FileRules.WrongKind.Error(several.Position, $"`{kinds}` has a name for each {kind}, and here the name is missing: {cure}"));
            ReadSingle(map, read, context);
            return;
        }

        ReadAll(map, read, context);
    }

    private void ReadAll(YamlMap map, Func<string, YamlValue, FileContext, T?> read, FileContext context)
    {
        foreach (var (key, value) in map.Entries)
        {
            // Kept by the name that was typed, so that a line that uses it is not reported as well, but never printed under it.
            var name = NameCheck.CanBePrinted(key, $"a {kind}", context) ? key.Text : string.Empty;
            var one = read(name, value, context);
            _all.Add((key.Text, one));
            _byName.TryAdd(key.Text, one);
        }
    }
}
