using BendSheet.Core.Templates;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads a line that has only a rough length so far. Null after findings.</summary>
/// <param name="head">Reads what every line says.</param>
/// <param name="benders">Of the file.</param>
/// <param name="context">For findings.</param>
internal sealed class RoughLineReader(LineHeadReader head, NameTable<Bender> benders, FileContext context)
{
    private const string Word = RouteForm.Rough;

    private static readonly string[] OfARoute =
        [.. RouteForm.All.SelectMany(form => form.WordsBeside), "clips", TapedReader.Word, .. PieceReader.Words];

    /// <summary>Whether a line says so.</summary>
    public static bool IsRough(YamlEntry entry) =>
        entry.Value is YamlMap map && map.Entries.Any(word => string.Equals(word.Key.Text, Word, StringComparison.Ordinal));

    /// <summary>One line.</summary>
    public RoughLine? Line(YamlEntry entry)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        var route = RouteForm.All.FirstOrDefault(form => map.Has(form.Word))?.Word;
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
        if (map.Text("bender") is { } bender)
        {
            benders.Find(bender, context);
        }

        var known = head.Read(map, entry);
        var length = map.Length(Word, Range.PositiveLength);
        return nameIsUsable && route is null && known is not null && length is { } about
            ? new(entry.Key.Text, entry.Key.Position, known.Tube, known.From, known.To, about, map.PositionOfValue(Word), known.Made)
            : null;
    }

    /// <summary>A line that is the mirror image of a rough one, but for what it says itself: as long, roughly.</summary>
    public RoughLine? Mirrored(YamlEntry entry, RoughLine other)
    {
        var map = FieldReader.Of(entry.Value, Vocabulary.Line, context)!;
        return head.Mirrored(map, entry, new(other.Tube, other.From, other.To, other.Made)) is not { } known ? null : other with
        {
            Name = entry.Key.Text,
            At = entry.Key.Position,
            Tube = known.Tube,
            From = known.From,
            To = known.To,
            LengthAt = map.PositionOfValue(RouteForm.Mirror),
            Made = known.Made,
        };
    }
}
