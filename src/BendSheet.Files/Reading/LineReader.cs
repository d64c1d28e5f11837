using System.Buffers;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the lines of a file, each a list of rows or a map that says more. Null after findings that leave a line incomplete.</summary>
/// <param name="tubes">Of the file.</param>
/// <param name="benders">Of the file.</param>
/// <param name="fittings">Of the file.</param>
/// <param name="wire">The template's wire.</param>
/// <param name="tolerance">How well the templates were measured.</param>
/// <param name="context">For findings.</param>
internal sealed class LineReader(
    Named<Tube> tubes, Named<Bender> benders, Named<Fitting> fittings, Wire wire, MeasuringTolerance? tolerance, FileContext context)
{
    /// <summary>What separates folders, or means something to a shell or a file system somewhere.</summary>
    private static readonly SearchValues<char> NotInNames = SearchValues.Create("/\\:*?\"<>|");

    /// <summary>One line.</summary>
    public LineTemplate? Line(YamlEntry entry)
    {
        var nameIsUsable = CheckName(entry.Key);
        var line = entry.Value is YamlMap ? LongForm(entry) : ShortForm(entry);
        return nameIsUsable ? line : null;
    }

    private LineTemplate? ShortForm(YamlEntry entry)
    {
        var tube = tubes.Only(entry.Key.Position, context);
        var bender = benders.Only(entry.Key.Position, context);
        var route = RowReader.Route(entry.Value, bender, benders, context);
        return Complete(entry, tube, bender, MeasuringHabit.Corner, LineEnd.Unknown, LineEnd.Unknown, route);
    }

    private LineTemplate? LongForm(YamlEntry entry)
    {
        var map = TypedMap.Of(entry.Value, Vocabulary.Line, context)!;
        var tube = Chosen(map, "tube", tubes, entry);
        var bender = Chosen(map, "bender", benders, entry);
        var habit = map.Choice("measured", MeasuringHabits.All);
        var from = End(map, "from");
        var to = End(map, "to");
        var made = map.Choice("made", [(true, "true"), (false, "false")]);
        var route = map.Value("rows") is { } rows ? RowReader.Route(rows, bender, benders, context) : null;
        if (!map.Has("rows") && !map.HasLaterWord)
        {
            context.Report(FileRules.MissingWord.Error(entry.Key.Position, $"line `{entry.Key.Text}` has no rows: add `rows:` with the template's straights and bends"));
        }

        if (from?.Trim > Length.Zero)
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("from"), "`trim` belongs to end B (`to`): end A is finished first and all marks count from it"));
        }

        var unreadable = map.HasLaterWord || from is null || to is null || (map.Has("measured") && habit is null) || (map.Has("made") && made is null);
        var line = Complete(entry, tube, bender, habit ?? MeasuringHabit.Corner, from ?? LineEnd.Unknown, to ?? LineEnd.Unknown, route);
        return unreadable || line is null || !WireIsKnown(map, line) ? null : line with { Made = made ?? false };
    }

    private LineTemplate? Complete(YamlEntry entry, Tube? tube, Bender? bender, MeasuringHabit habit, LineEnd from, LineEnd to, Route? route) =>
        tube is null || bender is null || route is null
            ? null
            : new(entry.Key.Text, entry.Key.Position, tube, bender, wire, habit, from, to, route) { Tolerance = tolerance };

    private T? Chosen<T>(TypedMap map, string word, Named<T> named, YamlEntry entry)
        where T : class
    {
        if (map.Has(word))
        {
            return map.Text(word) is { } name ? named.Find(name, context) : null;
        }

        return named.Only(entry.Key.Position, context);
    }

    /// <summary>An end is a map, or only the name of what it connects to.</summary>
    private LineEnd? End(TypedMap line, string word)
    {
        if (!line.Has(word))
        {
            return LineEnd.Unknown;
        }

        if (line.Value(word) is not { } value)
        {
            return null;
        }

        if (value is YamlText)
        {
            return LineEnd.Unknown with { At = line.FreeText(word) };
        }

        if (TypedMap.Of(value, Vocabulary.End, context) is not { } map)
        {
            return null;
        }

        var trim = map.Length("trim", Range.LengthOrZero);
        var fitting = map.Text("fitting") is { } name ? fittings.Find(name, context) : null;
        var complete = (!map.Has("fitting") || fitting is not null) && (!map.Has("trim") || trim is not null);
        var connects = map.FreeText("at");
        return complete ? new(connects, fitting, trim ?? Length.Zero) : null;
    }

    private bool WireIsKnown(TypedMap map, LineTemplate line)
    {
        var missing = line.Habit.NeedsWireRadius() && wire.Radius is null ? "the wire's own bend radius to its centreline"
            : line.Habit.NeedsWireDiameter() && wire.Diameter is null ? "the wire's diameter"
            : null;
        if (missing is null)
        {
            return true;
        }

        var habit = MeasuringHabits.All.First(known => known.Habit == line.Habit).Word;
        context.Report(FileRules.MissingWord.Error(
            map.PositionOf("measured"), $"`measured: {habit}` needs {missing}: add it at the top of the file, such as `wire: {{diameter: 2.4 mm, radius: 4 mm}}`"));
        return false;
    }

    private bool CheckName(YamlText name)
    {
        var text = name.Text;
        var wrong = string.IsNullOrWhiteSpace(text) ? "a line needs a name, such as `front-left`"
            : text.AsSpan().IndexOfAny(NotInNames) is var at and >= 0 ? $"the line's name has `{text[at]}` in it, and it becomes part of a file's name: use letters, figures, blanks and hyphens"
            : text[0] is '.' or '-' ? $"the line's name begins with `{text[0]}`, and it becomes part of a file's name: begin with a letter or a figure"
            : text.Any(char.IsControl) ? "the line's name has a character in it that cannot be seen: type it again"
            : text.Length > 100 ? "the line's name is longer than 100 characters: it has to fit into the name of a file"
            : null;
        if (wrong is not null)
        {
            context.Report(FileRules.UnusableName.Error(name.Position, wrong));
        }

        return wrong is null;
    }
}
