using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads all lines of a file: those that are the mirror image of another one after that one, wherever they stand.</summary>
internal sealed class LinesReader
{
    /// <summary>In one file.</summary>
    public const int MostLines = 500;

    private readonly Dictionary<string, YamlEntry> _typed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, LineTemplate?> _read = new(StringComparer.Ordinal);
    private readonly Dictionary<string, RoughLine> _rough = new(StringComparer.Ordinal);
    private readonly HashSet<string> _open = new(StringComparer.Ordinal);
    private readonly LineReader _reader;
    private readonly RoughLineReader _roughReader;
    private readonly FileContext _context;
    private int _rows;

    private LinesReader(LineHeadReader head, FileDefaults file, FileContext context)
    {
        _reader = new(head, file, context);
        _roughReader = new(head, file.Benders, context);
        _context = context;
    }

    /// <summary>Every line that could be read, in the order of the file.</summary>
    public static (ImmutableArray<LineTemplate> Lines, ImmutableArray<RoughLine> Rough) Read(
        IReadOnlyList<YamlEntry> entries, LineHeadReader head, FileDefaults file, FileContext context)
    {
        var lines = new LinesReader(head, file, context);
        foreach (var entry in entries)
        {
            lines._typed.Add(entry.Key.Text, entry);
        }

        if (entries.Count > MostLines)
        {
            context.Report(FileRules.TooManyRows.Error(
                entries[MostLines].Key.Position,
                $"a file has at most {Counted.Words(MostLines, "line")}: divide it into files of one car each"));
        }

        var read = entries.Take(MostLines).TakeWhile(lines.HasRoomFor).Select(lines.WithItsOther).OfType<LineTemplate>().ToImmutableArray();
        return (read, [.. lines._rough.Values.InFileOrder(line => line.At)]);
    }

    /// <summary>
    /// Reads a line after the one that it is the mirror image of. The chain may be long: it is walked on a stack, not by recursion.
    /// </summary>
    private LineTemplate? WithItsOther(YamlEntry entry)
    {
        var open = new Stack<YamlEntry>();
        Open(entry);
        while (open.TryPeek(out var last))
        {
            if (Mirror(last) is { } mirror && _typed.TryGetValue(mirror.Text, out var other) && Open(other))
            {
                continue;
            }

            var line = _rows > RowReader.MostRowsOfFile ? null : Line(last);
            _rows += line?.Route.Legs.Length ?? 0;
            _read[last.Key.Text] = line;
            _open.Remove(last.Key.Text);
            open.Pop();
        }

        return _read[entry.Key.Text];

        bool Open(YamlEntry line)
        {
            var isNew = !_read.ContainsKey(line.Key.Text) && _open.Add(line.Key.Text);
            if (isNew)
            {
                open.Push(line);
            }

            return isNew;
        }
    }

    /// <summary>Whether a further line is read: together they may come to more than any car has.</summary>
    private bool HasRoomFor(YamlEntry entry)
    {
        if (_rows <= RowReader.MostRowsOfFile)
        {
            return true;
        }

        _context.Report(FileRules.TooManyRows.Error(
            entry.Key.Position,
            $"the lines before this one come to more than {Counted.Large(RowReader.MostRowsOfFile, "row")}: divide the file"));
        return false;
    }

    private LineTemplate? Line(YamlEntry entry) => Mirror(entry) is { } mirror ? Mirrored(entry, mirror)
        : RoughLineReader.IsRough(entry) ? Keep(_roughReader.Line(entry))
        : _reader.Line(entry);

    private LineTemplate? Mirrored(YamlEntry entry, YamlText mirror) => Other(mirror) is { } other ? _reader.Mirrored(entry, other)
        : _rough.TryGetValue(mirror.Text, out var rough) ? Keep(_roughReader.Mirrored(entry, rough))
        : null;

    /// <summary>Keeps a rough line, which is no template.</summary>
    private LineTemplate? Keep(RoughLine? rough)
    {
        if (rough is not null)
        {
            _rough.Add(rough.Name, rough);
        }

        return null;
    }

    /// <summary>The name of the line that a line is the mirror image of; null where it says none.</summary>
    internal static YamlText? Mirror(YamlEntry entry) => (entry.Value as YamlMap)?.Entries
        .Where(word => string.Equals(word.Key.Text, RouteForm.Mirror, StringComparison.Ordinal))
        .Select(word => word.Value as YamlText ?? word.Key).FirstOrDefault();

    private LineTemplate? Other(YamlText name)
    {
        if (_open.Contains(name.Text))
        {
            _context.Report(FileRules.Circle.Error(
                name.Position,
                "a line cannot be the mirror image of itself, here or through another: name a line that has a route of its own"));
            return null;
        }

        if (_read.TryGetValue(name.Text, out var other))
        {
            return other;
        }

        _context.Report(FileRules.UnknownName, name.Position, () =>
        {
            var nearest = NearestWord.Among(name.Text, _typed.Keys);
            return $"there is no line called {AsTyped.Show(name.Text)} to mirror: "
                + (nearest is null ? "write the name of a line of this file" : $"did you mean {AsTyped.Show(nearest)}?");
        });
        return null;
    }
}
