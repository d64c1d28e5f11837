using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a line that has only a rough length so far. Null after findings.</summary>
/// <param name="lines">Reads what it shares with other lines.</param>
/// <param name="context">For findings.</param>
internal sealed class RoughLineReader(LineReader lines, FileContext context)
{
    private const string Word = "rough";

    private static readonly string[] Routes = ["rows", "corners", "legs", "distances"];

    private static readonly string[] OfARoute = ["measured", "start", "side", "clips", "checks"];

    /// <summary>Whether a line says so.</summary>
    public static bool IsRough(YamlEntry entry) =>
        entry.Value is YamlMap map && map.Entries.Any(word => string.Equals(word.Key.Text, Word, StringComparison.Ordinal));

    /// <summary>One line.</summary>
    public RoughLine? Line(YamlEntry entry)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var route = Array.Find(Routes, map.Has);
        if (route is not null)
        {
            context.Report(FileRules.SaidTwice.Error(
                map.PositionOf(Word),
                $"`{Word}` stands for a line that has no template yet, and this one has `{route}`: take `{Word}` out"));
        }

        foreach (var word in OfARoute.Where(word => route is null && map.Has(word)))
        {
            context.Report(FileRules.OutOfPlace.Error(
                map.PositionOf(word),
                $"`{word}` does nothing beside `{Word}`: it belongs to a template, which this line does not have yet; take it out "
                    + "until then"));
        }

        var nameIsUsable = NameCheck.CanNameFile(entry.Key, context);
        lines.CheckBender(map);
        var tube = lines.TubeOf(map, entry);
        var (from, to) = (lines.End(map, "from"), lines.End(map, "to"));
        var made = map.Choice("made", YesOrNo.Choices);
        var length = map.Length(Word, Range.PositiveLength);
        return !nameIsUsable || map.HasUnknownWord || route is not null || tube is null || from is null || to is null
            || length is not { } about || (map.Has("made") && made is null)
            ? null
            : new(entry.Key.Text, entry.Key.Position, tube, from, to, about, map.PositionOfValue(Word), made ?? false);
    }

    /// <summary>A line that is the mirror image of a rough one, but for what it says itself: as long, roughly.</summary>
    public RoughLine? Mirrored(YamlEntry entry, RoughLine other)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        lines.ReportWhatOtherHas(map);
        var nameIsUsable = NameCheck.CanNameFile(entry.Key, context);
        var tube = map.Has("tube") ? lines.TubeOf(map, entry) : other.Tube;
        var from = lines.End(map, "from", other.From);
        var to = lines.End(map, "to", other.To);
        var made = map.Choice("made", YesOrNo.Choices);
        return !nameIsUsable || map.HasUnknownWord || tube is null || from is null || to is null || (map.Has("made") && made is null)
            ? null
            : other with
            {
                Name = entry.Key.Text,
                At = entry.Key.Position,
                Tube = tube,
                From = from,
                To = to,
                LengthAt = map.PositionOfValue("mirror"),
                Made = made ?? false,
            };
    }
}
