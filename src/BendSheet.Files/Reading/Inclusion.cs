using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// What several cars share, such as tools and fittings, stands in a file of its own, and each car's file includes it. Its words are read
/// as if they stood in the car's file, each length in the unit of the file that it is typed in. A file that is included includes no other.
/// </summary>
internal sealed class Inclusion
{
    /// <summary>The word at the top of the file.</summary>
    public const string Word = "include";

    /// <summary>Nobody has more workshops.</summary>
    public const int MostFiles = 8;

    /// <summary>Each file may have some of these, by name, and some rolls of `stock`; any other word stands in one file only.</summary>
    private static readonly string[] ByName = ["tubes", "benders", "fittings", "hoses", "have"];

    private const string Rolls = "stock";

    private readonly FileContext _context;
    private readonly OpenIncluded _open;
    private readonly List<YamlEntry> _entries;
    private readonly List<YamlMap> _files;
    private readonly List<SourceLines> _sources = [];
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);

    private Inclusion(YamlMap file, OpenIncluded open, FileContext context)
    {
        _context = context;
        _open = open;
        _entries = [.. file.Entries];
        _files = [file];
    }

    /// <summary>The file with all that it includes.</summary>
    /// <param name="file">As typed.</param>
    /// <param name="open">Opens the others.</param>
    /// <param name="context">For findings; learns the unit of each file.</param>
    /// <returns>The words of all files together, each file by itself with the first one first, and the texts of the others.</returns>
    public static (YamlMap Together, IReadOnlyList<YamlMap> Files, IReadOnlyList<SourceLines> Sources) Of(
        YamlMap file, OpenIncluded open, FileContext context)
    {
        var inclusion = new Inclusion(file, open, context);
        if (file.Entries.FirstOrDefault(IsInclude) is { } entry)
        {
            inclusion.Read(entry);
        }

        return (file with { Entries = inclusion._entries }, inclusion._files, inclusion._sources);
    }

    /// <summary>Also where the word is misspelt, which is reported with all other words.</summary>
    private static bool IsInclude(YamlEntry entry) =>
        string.Equals(entry.Key.Text, Word, StringComparison.Ordinal)
        || (!Vocabulary.File.Knows(entry.Key.Text)
            && string.Equals(NearestWord.Among(entry.Key.Text, Vocabulary.File.Known), Word, StringComparison.Ordinal));

    private void Read(YamlEntry entry)
    {
        if (entry.Value is YamlText { IsEmpty: true })
        {
            Unread(FileRules.MissingWord.Error(
                entry.Key.Position, $"`{Word}` has no value: type the name of a file after it, or take the word out"));
            return;
        }

        IReadOnlyList<YamlValue> names = entry.Value is YamlList list ? list.Items : [entry.Value];
        foreach (var name in names.Take(MostFiles))
        {
            if (name is YamlText { IsEmpty: false } text)
            {
                Read(text);
            }
            else
            {
                Unread(FileRules.WrongKind.Error(
                    name.Position,
                    $"`{Word}` is the name of a file, such as `{Word}: workshop.yaml`, or a list of names, and this is "
                        + $"{FieldReader.Kind(name)}"));
            }
        }

        if (names.Count > MostFiles)
        {
            Unread(FileRules.OutOfRange.Error(
                names[MostFiles].Position, $"a file includes at most {MostFiles} others: put what they have into fewer files"));
        }
    }

    private void Read(YamlText typed)
    {
        var file = _open(typed.Text);
        using var content = file.Content;
        if (file.IsItself)
        {
            _context.Report(FileRules.Circle.Error(typed.Position, "the file cannot include itself: take this out"));
        }
        else if (content is null)
        {
            Unread(FileRules.CannotRead.Error(typed.Position, $"{AsTyped.Show(typed.Text)} cannot be included: {file.Problem}"));
        }
        else if (!_names.Add(file.Name))
        {
            _context.Report(FileRules.SaidTwice.Error(
                typed.Position, $"{AsTyped.Show(typed.Text)} is included already: take one of the two out"));
        }
        else
        {
            var yaml = YamlDocument.Read(file.Name, content, _names.Count);
            _sources.Add(yaml.Source);
            foreach (var finding in yaml.Findings)
            {
                _context.Report(finding);
            }

            Take(yaml);
        }
    }

    private void Unread(Finding finding)
    {
        _context.IsPartUnread = true;
        _context.Report(finding);
    }

    private void Take(YamlReading yaml)
    {
        if (yaml.Root is not YamlMap root)
        {
            _context.IsPartUnread = true;
            if (yaml.Root is { } other)
            {
                _context.Report(FileRules.WrongKind.Error(
                    other.Position, $"a file that is included begins with words and values, such as `{Vocabulary.Included.Example}`"));
            }

            return;
        }

        _files.Add(root);
        var own = root with { Entries = [.. root.Entries.Where(IsShared)] };
        if (FieldReader.Of(own, Vocabulary.Included, _context) is not { } file)
        {
            return;
        }

        if (!file.Has("units"))
        {
            file.ReportMissing(
                "this file does not say in which unit its bare numbers are: add `units: mm` (or cm, m, in, ft) at its top");
        }

        _context.SetUnit(root.Position.FileNumber, file.Choice("units", TemplateReader.UnitChoices) ?? LengthUnit.Millimetre);
        foreach (var word in file.Words.Where(word => !string.Equals(word, "units", StringComparison.Ordinal)))
        {
            Add(new(new(word, IsPlain: true, file.PositionOf(word)), file.Typed(word)!));
        }
    }

    /// <summary>What only the car's own file may say is reported, and left out.</summary>
    private bool IsShared(YamlEntry entry)
    {
        var word = entry.Key.Text;
        if (Vocabulary.Included.Knows(word) || !Vocabulary.File.Knows(word))
        {
            return true;
        }

        _context.Report(FileRules.OutOfPlace.Error(
            entry.Key.Position,
            string.Equals(word, Word, StringComparison.Ordinal)
                ? $"a file that is included includes no other: put this `{Word}` into the file that you check and print"
                : $"`{word}` stands only in the file that you check and print: move it there"));
        return false;
    }

    private void Add(YamlEntry entry)
    {
        var at = _entries.FindIndex(one => string.Equals(one.Key.Text, entry.Key.Text, StringComparison.Ordinal));
        if (at < 0)
        {
            _entries.Add(entry);
            return;
        }

        var here = _entries[at];
        switch (here.Value, entry.Value)
        {
            case (YamlMap one, YamlMap other) when ByName.Contains(entry.Key.Text, StringComparer.Ordinal):
                _entries[at] = here with { Value = Together(one, other) };
                break;
            case (YamlList one, YamlList other) when string.Equals(entry.Key.Text, Rolls, StringComparison.Ordinal):
                _entries[at] = here with { Value = one with { Items = [.. one.Items, .. other.Items] } };
                break;
            default:
                ReportTwice(here.Key, entry.Key);
                break;
        }
    }

    private YamlMap Together(YamlMap one, YamlMap other)
    {
        var names = one.Entries.ToDictionary(entry => entry.Key.Text, entry => entry.Key, StringComparer.Ordinal);
        List<YamlEntry> together = [.. one.Entries];
        foreach (var entry in other.Entries)
        {
            if (names.TryGetValue(entry.Key.Text, out var here))
            {
                ReportTwice(here, entry.Key);
            }
            else
            {
                together.Add(entry);
            }
        }

        return one with { Entries = together };
    }

    private void ReportTwice(YamlText here, YamlText there)
    {
        var line = FormattableString.Invariant($"{there.Position.Line}");
        _context.Report(FileRules.SaidTwice.Error(
            here.Position,
            $"{AsTyped.Show(here.Text)} is in {there.Position.File} as well, on line {line}: take one of the two out, or give it another "
                + "name"));
    }
}
