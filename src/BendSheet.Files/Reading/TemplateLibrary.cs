using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// The file's templates, by name. Each is read once, so that what is wrong with one is said once however often it is used; one that uses
/// another is read after it.
/// </summary>
internal sealed class TemplateLibrary
{
    private readonly Dictionary<string, YamlEntry> _typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Route?> _read = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);
    private readonly NameTable<Bender> _benders;
    private readonly FileContext _context;

    private TemplateLibrary(NameTable<Bender> benders, FileContext context)
    {
        _benders = benders;
        _context = context;
    }

    /// <summary>Stands for the tool of whatever line uses the template.</summary>
    public static Bender LinesOwn { get; } = new(string.Empty, Length.FromMillimetres(1), default);

    /// <summary>Reads every template of the file, used or not.</summary>
    public static TemplateLibrary Read(FieldReader file, NameTable<Bender> benders, FileContext context)
    {
        var library = new TemplateLibrary(benders, context);
        if (file.Value("templates") is not { } value)
        {
            return library;
        }

        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                "`templates` has a name for each template, such as `bracket:` with its rows below it, and this is "
                    + $"{FieldReader.Kind(value)}"));
            return library;
        }

        foreach (var entry in entries)
        {
            library._typed.Add(entry.Key.Text, entry);
        }

        foreach (var entry in entries)
        {
            library.Read(entry);
        }

        return library;
    }

    /// <summary>The template that a name leads to; null after a finding, its own or one about its name.</summary>
    public Route? Find(YamlText name)
    {
        if (_open.Contains(name.Text))
        {
            _context.Report(
                FileRules.Circle.Error(
                    name.Position, $"template {AsTyped.Show(name.Text)} uses itself, here or through another: take one of the uses out"));
            return null;
        }

        if (_typed.TryGetValue(name.Text, out var entry))
        {
            return Read(entry);
        }

        var nearest = NearestWord.Among(name.Text, _typed.Keys);
        var cure = nearest is not null ? $"did you mean {AsTyped.Show(nearest)}?"
            : _typed.Count > 0 ? $"the file has {string.Join(", ", _typed.Keys.Select(known => AsTyped.Show(known)))}"
            : "add `templates:` to the top of the file, and below it this name with its rows";
        _context.Report(FileRules.UnknownName.Error(name.Position, $"there is no template called {AsTyped.Show(name.Text)}: {cure}"));
        return null;
    }

    private Route? Read(YamlEntry entry)
    {
        var name = entry.Key.Text;
        if (_read.TryGetValue(name, out var known))
        {
            return known;
        }

        _open.Add(name);
        var route = new RowReader(LinesOwn, _benders, this, _context).Piece(entry.Value);
        _open.Remove(name);
        _read[name] = route;
        return route;
    }
}
