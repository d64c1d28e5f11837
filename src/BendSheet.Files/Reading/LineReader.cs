using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads the lines of a file, each a list of rows or a map that says more. Null after findings that leave a line incomplete.
/// </summary>
/// <param name="tubes">Of the file.</param>
/// <param name="benders">Of the file.</param>
/// <param name="fittings">Of the file.</param>
/// <param name="pieces">The templates that rows may use.</param>
/// <param name="wire">The template's wire; null where it was typed and cannot be read.</param>
/// <param name="tolerance">How well the templates were measured.</param>
/// <param name="clips">How lines that do not say it themselves are held.</param>
/// <param name="ports">What the ends may lead to.</param>
/// <param name="context">For findings.</param>
internal sealed class LineReader(
    NameTable<Tube> tubes,
    NameTable<Bender> benders,
    NameTable<Fitting> fittings,
    Pieces pieces,
    Wire? wire,
    MeasuringTolerance? tolerance,
    Clipping? clips, PortFinder ports, FileContext context)
{
    /// <summary>What a mirrored line cannot say for itself.</summary>
    private static readonly string[] HasFromOther =
    [
        "bender", "measured", "start", "rows", "corners", "legs", "distances", "side", "rough",
    ];

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
        var route = new RowReader(bender, benders, pieces, context).Route(entry.Value);
        return tube is null || bender is null || route is null
            ? null
            : Template(
                entry, tube, bender, MeasuredTo.Corner, LineEnd.Unknown, LineEnd.Unknown, new(route, Frame.Default, LiesOnCar: false));
    }

    private LineTemplate? LongForm(YamlEntry entry)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var tube = Chosen(map, "tube", tubes, entry);
        var bender = Chosen(map, "bender", benders, entry);
        var habit = map.Choice("measured", MeasuredToWords.All);
        var from = End(map, "from");
        var to = End(map, "to");
        var made = map.Choice("made", YesOrNo.Choices);
        var held = map.Has("clips") ? ClipsReader.Read(map, context) : clips;
        var route = new LineRouteReader(benders, pieces, context).Read(map, entry.Key, bender);
        var checks = ChecksReader.Read(map, route?.Route, context);
        if (map.HasUnknownWord || from is null || to is null || (map.Has("measured") && habit is null) || (map.Has("made") && made is null))
        {
            return null;
        }

        var line = tube is null || bender is null || route is null
            ? null
            : Template(entry, tube, bender, habit ?? MeasuredTo.Corner, from, to, route) with
            {
                Made = made ?? false,
                Clips = held,
                Checks = checks
            };
        return line is not null && WireIsKnown(map, line) ? line : null;
    }

    private LineTemplate Template(YamlEntry entry, Tube tube, Bender bender, MeasuredTo habit, LineEnd from, LineEnd to, LineRoute route) =>
        new(entry.Key.Text, entry.Key.Position, tube, bender, wire ?? Wire.Unknown, from, to, route.Route)
        {
            Habit = habit,
            Start = route.Start,
            LiesOnCar = route.LiesOnCar,
            Taped = route.Taped,
            Tolerance = tolerance,
            Clips = clips,
        };

    /// <summary>A line that is the mirror image of another one, but for what it says itself.</summary>
    /// <param name="entry">The mirrored line.</param>
    /// <param name="other">The one it is the mirror image of.</param>
    public LineTemplate? Mirrored(YamlEntry entry, LineTemplate other)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var nameIsUsable = NameCheck.CanNameFile(entry.Key, context);
        ReportWhatOtherHas(map);
        var tube = map.Has("tube") ? Chosen(map, "tube", tubes, entry) : other.Tube;
        var from = End(map, "from", other.From);
        var to = End(map, "to", other.To);
        var made = map.Choice("made", YesOrNo.Choices);
        var held = map.Has("clips") ? ClipsReader.Read(map, context) : other.Clips;
        var checks = ChecksReader.Read(map, other.Route, context);
        return !nameIsUsable || map.HasUnknownWord || tube is null || from is null || to is null || (map.Has("made") && made is null)
            ? null
            : other.Mirrored() with
            {
                Name = entry.Key.Text,
                At = entry.Key.Position,
                Tube = tube,
                From = from,
                To = to,
                Made = made ?? false,
                Clips = held,
                Checks = checks,
            };
    }

    /// <summary>Reports words that a mirrored line cannot say for itself.</summary>
    public void ReportWhatOtherHas(FieldReader map)
    {
        foreach (var word in HasFromOther.Where(map.Has))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf(word),
                $"`{word}` does nothing beside `mirror`: a mirrored line has it from the other one; take it out, or take `mirror` out"));
        }
    }

    /// <summary>The tube that a line names, or the only one of the file.</summary>
    public Tube? TubeOf(FieldReader map, YamlEntry entry) => Chosen(map, "tube", tubes, entry);

    /// <summary>Reports a bender that the file does not have.</summary>
    public void CheckBender(FieldReader map)
    {
        if (map.Text("bender") is { } name)
        {
            benders.Find(name, context);
        }
    }

    private T? Chosen<T>(FieldReader map, string word, NameTable<T> named, YamlEntry entry)
        where T : class
    {
        if (map.Has(word))
        {
            return map.Text(word) is { } name ? named.Find(name, context) : null;
        }

        return named.Only(entry.Key.Position, context);
    }

    /// <summary>An end is a map, or only the name of what it connects to.</summary>
    /// <param name="line">That may say it.</param>
    /// <param name="word"><c>from</c> or <c>to</c>.</param>
    /// <param name="other">The same end of the line that this one is the mirror image of: it has what is not said here, but for where it
    /// leads.</param>
    public LineEnd? End(FieldReader line, string word, LineEnd? other = null)
    {
        var unsaid = (other ?? LineEnd.Unknown) with { At = null, Port = null };
        if (!line.Has(word))
        {
            return unsaid;
        }

        if (line.Value(word) is not { } value)
        {
            return null;
        }

        if (value is YamlText place)
        {
            return unsaid with { At = line.FreeText(word), Port = ports.Find(place) };
        }

        if (FieldReader.Of(value, Vocabulary.End, context) is not { } map)
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
        var port = connects is not null && map.Text("at") is { } at ? ports.Find(at) : null;
        return complete ? new(connects, fitting ?? unsaid.Fitting, trim ?? unsaid.Trim) { Port = port } : null;
    }

    private bool WireIsKnown(FieldReader map, LineTemplate line)
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

        var habit = MeasuredToWords.All.First(known => known.Habit == line.Habit).Word;
        context.Report(FileRules.MissingWord.Error(
            map.PositionOf("measured"),
            $"`measured: {habit}` needs {missing}: add it at the top of the file, such as `wire: {{diameter: 2.4 mm, radius: 4 mm}}`"));
        return false;
    }
}
