using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Which lines a finding of the file concerns, by where it stands: at a line, that line and its mirror images; at a tool, those that are
/// made with it; at what no sheet shows, such as rolls of tube, none; and anywhere else all of them.
/// </summary>
internal sealed class FindingScope
{
    private const string Lines = "lines";
    private const string Templates = "templates";

    /// <summary>A finding at one of these, by its name, concerns only the lines that use it.</summary>
    private static readonly string[] ByName = [Lines, Templates, "tubes", "benders", "fittings", "parts"];

    /// <summary>No sheet shows anything of them.</summary>
    private static readonly string[] OfNoLine =
        ["hoses", "keep-clear", "clearance", "pedal-switch", "stock", "cutting-loss", "spare", "practice", "have"];

    /// <summary>What a line names.</summary>
    private static readonly string[] OfALine = ["tubes", "benders", "fittings", "parts"];

    private static readonly Place Everything = new(string.Empty, string.Empty);

    private readonly YamlMap _root;
    private readonly List<(SourcePosition From, Place Place)> _places = [];
    private readonly Dictionary<string, YamlEntry> _lines;
    private readonly Dictionary<string, YamlEntry> _templates;

    /// <param name="root">The whole file, with what it includes.</param>
    /// <param name="files">The same, file by file.</param>
    public FindingScope(YamlMap root, IReadOnlyList<YamlMap> files)
    {
        _root = root;
        foreach (var file in files)
        {
            // A place above a file's first word belongs to that file, not to the one before it.
            _places.Add((file.Position with { Line = 0, Column = 0 }, Everything));
            AddPlaces(file);
        }

        _places = [.. _places.InFileOrder(place => place.From)];
        _lines = Named(Lines);
        _templates = Named(Templates);
    }

    private void AddPlaces(YamlMap file)
    {
        foreach (var entry in file.Entries)
        {
            _places.Add((entry.Key.Position, Array.Exists(ByName, IsWord(entry)) ? new(entry.Key.Text, string.Empty)
                : Array.Exists(OfNoLine, IsWord(entry)) ? new(OfNoLine[0], string.Empty)
                : entry.Key.Text is "tube" or "bender" ? new($"{entry.Key.Text}s", string.Empty)
                : Everything));
            if (Array.Exists(ByName, IsWord(entry)) && entry.Value is YamlMap named)
            {
                _places.AddRange(named.Entries.Select(one => one.Key).Concat(named.Again)
                    .Select(name => (name.Position, new Place(entry.Key.Text, name.Text))));
            }
        }

        _places.AddRange(file.Again.Select(word => (word.Position, Everything)));
    }

    /// <summary>The names of all lines, in the order of the file.</summary>
    public ImmutableArray<string> LineNames => [.. _lines.Values.InFileOrder(line => line.Key.Position).Select(line => line.Key.Text)];

    /// <summary>What concerns each line, by its name; empty where the file has too many lines: then all findings concern each.</summary>
    /// <param name="findings">Of the file.</param>
    /// <param name="read">The lines with a template that could be read.</param>
    public ImmutableDictionary<string, ImmutableArray<Finding>> ByLine(
        ImmutableArray<Finding> findings, ImmutableArray<LineTemplate> read)
    {
        if (_lines.Count > LinesReader.MostLines)
        {
            return ImmutableDictionary<string, ImmutableArray<Finding>>.Empty;
        }

        var templates = read.ToDictionary(line => line.Name, StringComparer.Ordinal);
        var placed = findings.Select(finding => (finding, Place: PlaceOf(finding))).ToList();
        return _lines.Keys.ToImmutableDictionary(
            name => name,
            name =>
            {
                var uses = placed.Count == 0 ? [] : UsedBy(name, templates.GetValueOrDefault(name));
                return placed.Where(one => uses.Contains(one.Place)).Select(one => one.finding).ToImmutableArray();
            },
            StringComparer.Ordinal);
    }

    /// <summary>What concerns tools and tubes.</summary>
    /// <param name="findings">Of the file.</param>
    public ImmutableArray<Finding> OfTools(ImmutableArray<Finding> findings) =>
        [.. findings.Where(finding => PlaceOf(finding) is { Word: "" or "tubes" or "benders" } && !IsAboutNoLines(finding))];

    /// <summary>Whether a finding says that the file has no lines.</summary>
    private bool IsAboutNoLines(Finding finding) =>
        _lines.Count == 0 && string.Equals(finding.Message, TemplateReader.NoLines, StringComparison.Ordinal);

    /// <summary>All that a line is made of; a mirror image is made of what the other line is made of.</summary>
    private HashSet<Place> UsedBy(string line, LineTemplate? read)
    {
        HashSet<Place> uses = [Everything, new(Lines, string.Empty)];
        for (var name = line; name is not null && uses.Add(new(Lines, name)); name = MirroredFrom(name))
        {
            AddTemplates(name, uses);
            if (read is null)
            {
                AddNamed(name, uses);
            }
        }

        if (read is not null)
        {
            Bender[] benders = [read.Bender, .. read.Route.Bends.Select(bend => bend.Bender)];
            uses.UnionWith(benders.Select(bender => new Place("benders", bender.Name)));
            uses.Add(new("tubes", read.Tube.Name));
            TubeEnd(read.From);
            TubeEnd(read.To);
        }

        uses.Add(new("tubes", string.Empty));
        uses.Add(new("benders", string.Empty));
        return uses;

        void TubeEnd(LineEnd end)
        {
            uses.Add(new("fittings", end.Fitting?.Name ?? string.Empty));
            uses.Add(new("parts", end.Port?.Part.Name ?? string.Empty));
        }
    }

    /// <summary>
    /// Of a line that could not be read, what its text names: a tool, a tube, a fitting or a part, and the only one of its sort, which
    /// need not be named.
    /// </summary>
    private void AddNamed(string line, HashSet<Place> uses)
    {
        if (!_lines.TryGetValue(line, out var entry))
        {
            return;
        }

        var named = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<YamlValue>([entry.Value]);
        while (open.TryPop(out var value))
        {
            if (value is YamlText text)
            {
                named.Add(text.Text);
                named.Add(text.Text.Split('.')[0]);
            }

            var inside = value is YamlMap map ? map.Entries.Select(one => one.Value) : value is YamlList list ? list.Items : [];
            foreach (var one in inside)
            {
                open.Push(one);
            }
        }

        foreach (var sort in _places.Select(place => place.Place).Where(place => Array.Exists(OfALine, place.Word.Equals)).Distinct()
            .GroupBy(place => place.Word, StringComparer.Ordinal))
        {
            var known = sort.Where(place => place.Name.Length > 0).ToList();
            uses.UnionWith(known.Count == 1 ? known : known.Where(place => named.Contains(place.Name)));
        }
    }

    private string? MirroredFrom(string line) => _lines.TryGetValue(line, out var entry)
        ? LinesReader.Mirror(entry)?.Text
        : null;

    private void AddTemplates(string line, HashSet<Place> uses)
    {
        if (!_lines.TryGetValue(line, out var entry))
        {
            return;
        }

        var rows = entry.Value is YamlMap map
            ? map.Entries.Where(word => RouteForm.Rows.Word.Equals(word.Key.Text, StringComparison.Ordinal)).Select(word => word.Value)
            : [entry.Value];
        var open = new Stack<string>(rows.SelectMany(TemplateLibrary.NamesUsed));
        if (open.Count > 0)
        {
            uses.Add(new(Templates, string.Empty));
        }

        while (open.TryPop(out var name))
        {
            if (uses.Add(new(Templates, name)) && _templates.TryGetValue(name, out var template))
            {
                foreach (var used in TemplateLibrary.NamesUsed(template.Value))
                {
                    open.Push(used);
                }
            }
        }
    }

    private Place PlaceOf(Finding finding)
    {
        var (file, line, column) = (finding.Position.FileNumber, finding.Position.Line, finding.Position.Column);
        if (finding.Rule == YamlRules.TooManyMistakes || line == 0)
        {
            return Everything;
        }

        var (low, high) = (0, _places.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            var from = _places[middle].From;
            if ((from.FileNumber, from.Line, from.Column).CompareTo((file, line, column)) <= 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        // A finding at the top of the file says that something is missing from it.
        return low == 0 || finding.Position == _root.Position ? Everything : _places[low - 1].Place;
    }

    private Dictionary<string, YamlEntry> Named(string word) =>
        (_root.Entries.FirstOrDefault(entry => string.Equals(entry.Key.Text, word, StringComparison.Ordinal))?.Value as YamlMap)?.Entries
            .ToDictionary(entry => entry.Key.Text, StringComparer.Ordinal) ?? new(StringComparer.Ordinal);

    private static Predicate<string> IsWord(YamlEntry entry) => word => string.Equals(word, entry.Key.Text, StringComparison.Ordinal);

    /// <summary>A part of the file.</summary>
    /// <param name="Word">At the top; empty for anything that concerns everything.</param>
    /// <param name="Name">Below it; empty for the word itself, and for the only one without a name.</param>
    private readonly record struct Place(string Word, string Name);
}
