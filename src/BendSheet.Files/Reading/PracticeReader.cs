using System.Collections.Immutable;
using BendSheet.Core.Stock;
using BendSheet.Core.Workshop;
using BendSheet.Files.Typed;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads how many flares and bends are tried first: <c>6 flares</c>, or a map that says more, or a list of maps for several tubes.
/// </summary>
/// <param name="tubes">Of the file.</param>
/// <param name="context">For findings.</param>
internal sealed class PracticeReader(NameTable<Tube> tubes, FileContext context)
{
    private static readonly string[] Words = ["", "flare", "flares"];

    /// <summary>Each tube's practice pieces.</summary>
    public ImmutableArray<Practice> Read(YamlValue value) => value switch
    {
        YamlText text => ShortForm(text) is { } practice ? [practice] : [],
        YamlList { Items.Count: > 0 } list => [.. list.Items.Select(LongForm).OfType<Practice>()],
        _ => LongForm(value) is { } practice ? [practice] : [],
    };

    private Practice? ShortForm(YamlText text)
    {
        var quantity = new Quantity(text.Text);
        var isRead = quantity.TakeNumber(out var flares)
            && Words.Contains(quantity.TakeWord().ToString(), StringComparer.OrdinalIgnoreCase) && quantity.AtEnd;
        var wrong = isRead && double.IsInteger(flares) ? null : "is not a number of practice flares: write one, such as `6 flares`";
        var count = FigureReader.Checked("practice", text, wrong, FileRules.UnreadableNumber, flares, Range.Pieces, context);

        // Every tube of the file may be one in the shop.
        var kinds = tubes.All;
        var several = tubes.HasSeveral && kinds.Any(tube => !TubeKinds.AreOne(tube, kinds[0]));
        if (several)
        {
            context.Report(FileRules.MissingWord.Error(
                text.Position,
                "the file has several tubes and `practice` does not say on which the flares are tried: write `practice: {flares: 6, "
                    + "tube: …}`"));
        }

        return count is { } number && !several && !kinds.IsEmpty ? new((int)number, Practice.UsualLength, kinds[0], text.Position) : null;
    }

    private Practice? LongForm(YamlValue value)
    {
        if (FieldReader.Of(value, Vocabulary.Practice, context) is not { } map)
        {
            return null;
        }

        var flares = map.Text("flares") is { } typed ? FigureReader.Count(typed, "flares", Range.Pieces, context) : null;
        var bends = map.Text("bends") is { } tried ? FigureReader.Count(tried, "bends", Range.Pieces, context) : null;
        var length = map.Length("length", Range.PositiveLength);
        var bendLength = map.Length("bend-length", Range.PositiveLength);
        var tube = StoresReader.TubeOf(map, "`practice`", tubes, context);
        if (!map.Has("flares") && !map.Has("bends"))
        {
            map.ReportMissing(
                $"`practice` does not say how many flares or bends are tried: add `flares` or `bends`, such as "
                    + $"`practice: {Vocabulary.Practice.Example}`");
        }

        if (tube is null || map.Has("flares") != flares.HasValue || map.Has("bends") != bends.HasValue || (flares ?? bends) is null)
        {
            return null;
        }

        return new(flares ?? 0, length ?? Practice.UsualLength, tube, map.Position)
        {
            Bends = bends ?? 0,
            BendLength = bendLength ?? Practice.UsualBendLength,
        };
    }
}
