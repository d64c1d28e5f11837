using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the lines of a file, each a list of rows or a map that says more. Null after findings that leave a line incomplete.</summary>
/// <param name="tubes">Of the file.</param>
/// <param name="benders">Of the file.</param>
/// <param name="fittings">Of the file.</param>
/// <param name="wire">The template's wire; null where it was typed and cannot be read.</param>
/// <param name="tolerance">How well the templates were measured.</param>
/// <param name="context">For findings.</param>
internal sealed class LineReader(
    Named<Tube> tubes, Named<Bender> benders, Named<Fitting> fittings, Wire? wire, MeasuringTolerance? tolerance, FileContext context)
{
    /// <summary>One line.</summary>
    public LineTemplate? Line(YamlEntry entry)
    {
        var nameIsUsable = NameCheck.CanNameFile(entry.Key, context);
        var line = entry.Value switch
        {
            YamlMap { Entries.Count: > 0 } map when !IsRow(map) => LongForm(entry),
            _ => ShortForm(entry),
        };
        return nameIsUsable ? line : null;
    }

    /// <summary>Whether a map is a row that has no dash before it, rather than a line that says more.</summary>
    private static bool IsRow(YamlMap map) =>
        map.Entries.Any(entry => entry.Key.Text is "straight" or "bend" or "included" or "rotate")
        && !map.Entries.Any(entry => string.Equals(entry.Key.Text, "rows", StringComparison.Ordinal));

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
        if (!map.Has("rows") && !map.HasLaterWord && !map.HasUnknownWord)
        {
            context.Report(FileRules.MissingWord.Error(entry.Key.Position, $"line {AsTyped.Show(entry.Key.Text)} has no rows: add `rows:` with the template's straights and bends"));
        }

        var unreadable = map.HasLaterWord || map.HasUnknownWord || from is null || to is null || (map.Has("measured") && habit is null) || (map.Has("made") && made is null);
        var line = Complete(entry, tube, bender, habit ?? MeasuringHabit.Corner, from ?? LineEnd.Unknown, to ?? LineEnd.Unknown, route);
        return unreadable || line is null || !WireIsKnown(map, line) ? null : line with { Made = made ?? false };
    }

    private LineTemplate? Complete(YamlEntry entry, Tube? tube, Bender? bender, MeasuringHabit habit, LineEnd from, LineEnd to, Route? route) =>
        tube is null || bender is null || route is null
            ? null
            : new(entry.Key.Text, entry.Key.Position, tube, bender, wire ?? Wire.Unknown, habit, from, to, route) { Tolerance = tolerance };

    private T? Chosen<T>(TypedMap map, string word, Named<T> named, YamlEntry entry)
        where T : class
    {
        if (map.Has(word))
        {
            return map.Text(word) is { } name ? named.Find(name, context) : null;
        }

        // What is not read yet may say it: a mirrored line has the tube of the other one.
        return map.HasLaterWord ? null : named.Only(entry.Key.Position, context);
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
        if (trim > Length.Zero && string.Equals(word, "from", StringComparison.Ordinal))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf("trim"), "`trim` belongs to end B (`to`): end A is finished first and all marks count from it"));
        }

        var fitting = map.Text("fitting") is { } name ? fittings.Find(name, context) : null;
        var complete = (!map.Has("fitting") || fitting is not null) && (!map.Has("trim") || trim is not null);
        var connects = map.FreeText("at");
        return complete ? new(connects, fitting, trim ?? Length.Zero) : null;
    }

    private bool WireIsKnown(TypedMap map, LineTemplate line)
    {
        var missing = line.Habit.NeedsWireRadius() && line.Wire.Radius is null ? "the wire's own bend radius to its centreline"
            : line.Habit.NeedsWireDiameter() && line.Wire.Diameter is null ? "the wire's diameter"
            : null;
        if (missing is null)
        {
            return true;
        }

        if (wire is null)
        {
            // Reported where it was typed.
            return false;
        }

        var habit = MeasuringHabits.All.First(known => known.Habit == line.Habit).Word;
        context.Report(FileRules.MissingWord.Error(
            map.PositionOf("measured"), $"`measured: {habit}` needs {missing}: add it at the top of the file, such as `wire: {{diameter: 2.4 mm, radius: 4 mm}}`"));
        return false;
    }
}
