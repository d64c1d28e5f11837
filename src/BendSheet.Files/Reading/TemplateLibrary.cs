using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>A template that rows may use.</summary>
/// <param name="Route">Legs and bends; it may end in a bend.</param>
/// <param name="Rows">How many rows it stands for, those of the templates that it uses itself included.</param>
internal sealed record TemplatePiece(Route Route, int Rows);

/// <summary>
/// The file's templates, by name. Each is read once, so that what is wrong with one is said once however often it is used; one that uses
/// another is read after it.
/// </summary>
internal sealed class TemplateLibrary
{
    private readonly Dictionary<string, YamlEntry> _typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, TemplatePiece?> _read = new(StringComparer.Ordinal);
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
            library.ReadWithThoseItUses(entry);
        }

        return library;
    }

    /// <summary>The template that a name leads to; null after a finding, its own or one about its name.</summary>
    public TemplatePiece? Find(YamlText name)
    {
        if (_open.Contains(name.Text))
        {
            _context.Report(
                FileRules.Circle.Error(
                    name.Position, $"template {AsTyped.Show(name.Text)} uses itself, here or through another: take one of the uses out"));
            return null;
        }

        if (_typed.ContainsKey(name.Text))
        {
            // One that is used after a misspelt word may not be read yet; that word has its finding.
            return _read.GetValueOrDefault(name.Text);
        }

        _context.Report(FileRules.UnknownName, name.Position, () =>
        {
            var nearest = NearestWord.Among(name.Text, _typed.Keys);
            var cure = nearest is not null ? $"did you mean {AsTyped.Show(nearest)}?"
                : _typed.Count > 0 ? $"the file has {AsTyped.Listed(_typed.Keys)}"
                : "add `templates:` to the top of the file, and below it this name with its rows";
            return $"there is no template called {AsTyped.Show(name.Text)}: {cure}";
        });
        return null;
    }

    /// <summary>Reads a template after those that it uses. The chain may be long: it is walked on a stack, not by recursion.</summary>
    private void ReadWithThoseItUses(YamlEntry entry)
    {
        var open = new Stack<(YamlEntry Entry, IEnumerator<string> Uses)>();
        Open(entry);
        while (open.TryPeek(out var last))
        {
            if (last.Uses.MoveNext())
            {
                if (_typed.TryGetValue(last.Uses.Current, out var used))
                {
                    Open(used);
                }

                continue;
            }

            _read[last.Entry.Key.Text] = new RowReader(LinesOwn, _benders, this, _context).Piece(last.Entry.Value);
            _open.Remove(last.Entry.Key.Text);
            open.Pop();
        }

        void Open(YamlEntry template)
        {
            if (!_read.ContainsKey(template.Key.Text) && _open.Add(template.Key.Text))
            {
                open.Push((template, NamesUsed(template.Value).GetEnumerator()));
            }
        }
    }

    /// <summary>The templates that rows use, by name.</summary>
    internal static IEnumerable<string> NamesUsed(YamlValue rows) => (rows as YamlList)?.Items.OfType<YamlMap>()
        .SelectMany(row => row.Entries)
        .Where(word => string.Equals(word.Key.Text, RowKind.Use.Word, StringComparison.Ordinal))
        .Select(word => word.Value).OfType<YamlText>().Select(name => name.Text) ?? [];
}
