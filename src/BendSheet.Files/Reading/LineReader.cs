using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>What lines are made with and measured by, where they do not say it themselves.</summary>
/// <param name="Benders">Of the file.</param>
/// <param name="Templates">That rows may use.</param>
/// <param name="Wire">The template's wire; null where it was typed and cannot be read.</param>
/// <param name="Tolerance">How well the templates were measured.</param>
/// <param name="Wanted">How well lines have to fit.</param>
/// <param name="Clips">How lines are held.</param>
internal sealed record FileDefaults(
    NameTable<Bender> Benders,
    TemplateLibrary Templates,
    Wire? Wire,
    MeasuringTolerance? Tolerance,
    WantedFit Wanted,
    Clipping? Clips);

/// <summary>
/// Reads the lines of a file, each a list of rows or a map that says more. Null after findings that leave a line incomplete.
/// </summary>
/// <param name="head">Reads what every line says.</param>
/// <param name="file">What the file says for all lines.</param>
/// <param name="context">For findings.</param>
internal sealed class LineReader(LineHeadReader head, FileDefaults file, FileContext context)
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
        map.Entries.Any(entry => RowKind.WordsOfOneBend.Contains(entry.Key.Text, StringComparer.Ordinal))
        && !map.Entries.Any(entry => string.Equals(entry.Key.Text, RouteForm.Rows.Word, StringComparison.Ordinal));

    private LineTemplate? ShortForm(YamlEntry entry)
    {
        var tube = head.OnlyTube(entry.Key.Position);
        var bender = file.Benders.Only(entry.Key.Position, context);
        var route = new RowReader(bender, file.Benders, file.Templates, context).Route(entry.Value);
        return tube is null || bender is null || route is null
            ? null
            : Template(
                entry.Key,
                new(tube, LineEnd.Unknown, LineEnd.Unknown, Made: false),
                bender,
                MeasuredTo.Corner,
                new(route, Frame.Default, LiesOnCar: false));
    }

    private LineTemplate? LongForm(YamlEntry entry)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var known = head.Read(map, entry);
        var bender = file.Benders.Chosen(map, entry, context);
        var habit = map.Choice("measured", MeasuredToWords.All);
        var held = map.Has("clips") ? ClipsReader.Read(map, context) : file.Clips;
        var route = new LineRouteReader(file, context).Read(map, entry.Key, bender);
        var taped = TapedReader.Read(map, route, file.Wire, context);
        var piece = PieceReader.Read(map, route?.Route, context);
        var wireIsKnown = habit is null || !map.Has(RouteForm.Rows.Word) || WireIsKnown(map, habit.Value);
        if (known is null || bender is null || route is null || !wireIsKnown || (map.Has("measured") && habit is null))
        {
            return null;
        }

        return Template(entry.Key, known, bender, habit ?? MeasuredTo.Corner, route) with
        {
            Clips = held,
            Beside = taped,
            Checks = piece.Checks,
            Bent = piece.Bent,
            TrialFit = piece.TrialFit,
        };
    }

    private LineTemplate Template(YamlText name, LineHead known, Bender bender, MeasuredTo habit, LineRoute route) =>
        new(name.Text, name.Position, known.Tube, bender, file.Wire ?? Wire.Unknown, known.From, known.To, route.Route)
        {
            Habit = habit,
            Start = route.Start,
            LiesOnCar = route.LiesOnCar,
            HasPlace = route.HasPlace,
            HasWire = route.HasWire,
            Corners = route.Corners,
            Taped = route.Taped,
            Tolerance = file.Tolerance,
            Wanted = file.Wanted,
            Clips = file.Clips,
            Made = known.Made,
        };

    /// <summary>The other side of the car has a rail of its own.</summary>
    private static Clipping? Mirrored(Clipping? clips) => clips is null ? null : clips with { Rail = null };

    /// <summary>A line that is the mirror image of another one, but for what it says itself.</summary>
    /// <param name="entry">The mirrored line.</param>
    /// <param name="other">The one it is the mirror image of.</param>
    public LineTemplate? Mirrored(YamlEntry entry, LineTemplate other)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var known = head.Mirrored(map, entry, new(other.Tube, other.From, other.To, other.Made));
        var held = map.Has("clips") ? ClipsReader.Read(map, context) : Mirrored(other.Clips);
        var piece = PieceReader.Read(map, other.Route, context);
        return known is null ? null : other.Mirrored() with
        {
            Name = entry.Key.Text,
            At = entry.Key.Position,
            WireOf = other.WireOf ?? other.Name,
            MirrorsWire = !other.MirrorsWire,
            Tube = known.Tube,
            From = known.From,
            To = known.To,
            Made = known.Made,
            Clips = held,
            Checks = piece.Checks,
            Bent = piece.Bent,
            TrialFit = piece.TrialFit,
        };
    }

    private bool WireIsKnown(FieldReader map, MeasuredTo measured)
    {
        var missing = measured.NeedsWireRadius() && file.Wire?.Radius is null ? "the wire's own bend radius to its centreline"
            : measured.NeedsWireDiameter() && file.Wire?.Diameter is null ? "the wire's diameter"
            : null;
        if (missing is null)
        {
            return true;
        }

        if (file.Wire is null)
        {
            // Reported where it was typed.
            return false;
        }

        var habit = MeasuredToWords.All.First(known => known.Habit == measured).Word;
        context.Report(FileRules.MissingWord.Error(
            map.PositionOf("measured"),
            $"`measured: {habit}` needs {missing}: add it at the top of the file, such as `wire: {{diameter: 2.4 mm, radius: 4 mm}}`"));
        return false;
    }
}
