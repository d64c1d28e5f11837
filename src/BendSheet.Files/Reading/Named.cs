using BendSheet.Core.Findings;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// The tubes, benders or fittings of a file, by name. One that could not be read keeps its name, so that a line that uses it is not
/// reported as well.
/// </summary>
/// <typeparam name="T">Tube, bender or fitting.</typeparam>
internal sealed class Named<T>(string kind, string kinds)
    where T : class
{
    private readonly List<(string Name, T? Value)> _all = [];

    /// <summary>Reads the long form, a map of names, or the short form, a single one without a name.</summary>
    /// <param name="file">The top of the file.</param>
    /// <param name="read">Reads one.</param>
    /// <param name="shortForm">Whether the file may have a single one without a name.</param>
    /// <param name="context">For findings.</param>
    public void Read(TypedMap file, Func<string, YamlValue, FileContext, T?> read, bool shortForm, FileContext context)
    {
        if (shortForm && file.Has(kind) && file.Has(kinds))
        {
            context.Report(FileRules.SaidTwice.Error(
                file.PositionOf(kind), $"the file has `{kind}` and `{kinds}`: move the single one into `{kinds}`, under a name of its own"));
        }

        if (shortForm && file.Has(kind))
        {
            _all.Add((string.Empty, file.Value(kind) is { } single ? read(string.Empty, single, context) : null));
        }

        if (file.Value(kinds) is not { } several)
        {
            return;
        }

        if (several is not YamlMap map)
        {
            context.Report(FileRules.WrongKind.Error(
                several.Position, $"`{kinds}` is a list of names, each with its {kind}, and this is {TypedMap.Kind(several)}"));
            return;
        }

        foreach (var entry in map.Entries)
        {
            _all.Add((entry.Key.Text, read(entry.Key.Text, entry.Value, context)));
        }
    }

    /// <summary>The one that a name leads to, or a finding.</summary>
    public T? Find(YamlText name, FileContext context)
    {
        foreach (var (known, value) in _all)
        {
            if (known.Length > 0 && string.Equals(known, name.Text, StringComparison.Ordinal))
            {
                return value;
            }
        }

        var names = _all.Select(entry => entry.Name).Where(known => known.Length > 0).ToList();
        var nearest = NearestWord.Of(name.Text, names);
        var cure = nearest is not null ? $"did you mean `{nearest}`?"
            : names.Count > 0 ? $"the file has `{string.Join("`, `", names)}`"
            : $"the file has no `{kinds}`";
        context.Report(FileRules.UnknownName.Error(name.Position, $"there is no {kind} called `{name.Text}`: {cure}"));
        return null;
    }

    /// <summary>The only one of the file, or a finding at the line that does not say which.</summary>
    public T? Only(SourcePosition line, FileContext context)
    {
        if (_all.Count == 1)
        {
            return _all[0].Value;
        }

        if (_all.Count > 1)
        {
            var names = string.Join("`, `", _all.Select(entry => entry.Name));
            context.Report(FileRules.MissingWord.Error(line, $"the file has several {kinds} and this line does not say which: add `{kind}:` with one of `{names}`"));
        }

        return null;
    }

    /// <summary>Whether the file has any, readable or not.</summary>
    public bool Any => _all.Count > 0;
}
