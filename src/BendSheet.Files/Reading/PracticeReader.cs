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
        YamlList { Items.Count: > 0 } list => NotTooMany([.. list.Items.Select(LongForm).OfType<Practice>()]),
        _ => LongForm(value) is { } practice ? [practice] : [],
    };

    /// <summary>Together no more than one tube may have.</summary>
    private ImmutableArray<Practice> NotTooMany(ImmutableArray<Practice> all)
    {
        var sum = 0;
        foreach (var practice in all)
        {
            sum += practice.Flares + practice.Bends;
            if (!Range.Pieces.Allows(sum))
            {
                context.Report(FileRules.OutOfRange.Error(
                    practice.At, $"with this one there are {sum} practice pieces: all together must be at most 1000"));
                return [];
            }
        }

        return all;
    }

    private Practice? ShortForm(YamlText text)
    {
        var quantity = new Quantity(text.Text);
        var isRead = quantity.TakeNumber(out var flares)
            && Words.Contains(quantity.TakeWord().ToString(), StringComparer.OrdinalIgnoreCase) && quantity.AtEnd;
        var wrong = isRead && double.IsInteger(flares) ? null : "is not a number of practice flares: write one, such as `6 flares`";
        var count = FigureReader.Checked("practice", text, wrong, FileRules.UnreadableNumber, flares, Range.Pieces, context);

        // All tubes of the file may be one and the same in the shop.
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

        var flares = Count(map, "flares");
        var bends = Count(map, "bends");
        var (done, bendsDone) = (Done(map, "done", "flares", flares), Done(map, "bends-done", "bends", bends));
        var length = map.Length("length", Range.PositiveLength);
        var bendLength = map.Length("bend-length", Range.PositiveLength);
        var tube = StoresReader.TubeOf(map, "`practice`", tubes, context);
        if (!map.Has("flares") && !map.Has("bends"))
        {
            map.ReportMissing(
                $"`practice` does not say how many flares or bends are tried: add `flares` or `bends`, such as "
                    + $"`practice: {Vocabulary.Practice.Example}`");
        }

        return tube is null || map.Has("flares") != flares.HasValue || map.Has("bends") != bends.HasValue || (flares ?? bends) is null
            || done is null || bendsDone is null
            ? null
            : new(flares ?? 0, length ?? Practice.UsualLength, tube, map.Position)
            {
                Done = done.Value,
                Bends = bends ?? 0,
                BendsDone = bendsDone.Value,
                BendLength = bendLength ?? Practice.UsualBendLength,
            };
    }

    private int? Count(FieldReader map, string word) =>
        map.Text(word) is { } typed ? FigureReader.Count(typed, word, Range.Pieces, context) : null;

    /// <summary>Tried already: none where nothing is said, null where more are tried than there were to be.</summary>
    private int? Done(FieldReader map, string word, string all, int? count)
    {
        var done = Count(map, word) ?? 0;
        if (done <= (count ?? 0))
        {
            return done;
        }

        if (count.HasValue || !map.Has(all))
        {
            context.Report(FileRules.OutOfRange.Error(
                map.PositionOf(word), $"more {all} are tried than there were to be: check `{word}` and `{all}`"));
        }

        return null;
    }
}
