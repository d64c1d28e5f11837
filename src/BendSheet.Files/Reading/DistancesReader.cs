using System.Globalization;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads straight-line distances between numbered corners, and the sides that the tape cannot tell. Null after findings.</summary>
/// <param name="Backs">For those to the backs of bends.</param>
internal sealed record DistancesReader(BackReader Backs)
{
    private const string Example = "`distances: {A-1: 120, A-B: 166.5, 1-B: 60}`";

    /// <summary>End B, until it is known how many corners there are.</summary>
    private const int EndB = -1;

    internal static readonly (Side Side, string Word)[] Sides = [(Side.Left, "left"), (Side.Right, "right")];

    /// <summary>The corners that the distances come to.</summary>
    /// <param name="typed">The route.</param>
    /// <param name="file">What the file says for all lines.</param>
    /// <param name="context">For findings.</param>
    public static (IReadOnlyList<CornerPoint> Corners, TapedFit Fit)? Read(TypedRoute typed, FileDefaults file, FileContext context)
    {
        var line = typed.Line;
        var distances = new DistancesReader(new BackReader(Route: null, file.Wire, context)).Distances(typed.Value);
        var sides = line.Has("side") ? SidesOf(line, context) : [];
        if (distances is null || sides is null)
        {
            return null;
        }

        var (fit, findings) = TapedCorners.Solve(distances, sides, line.PositionOf("distances"), file.Tolerance?.Tape);
        foreach (var finding in findings)
        {
            context.Report(finding);
        }

        if (fit is null)
        {
            return null;
        }

        // A leg's findings point at the distance that was typed for it.
        var corners = fit.Corners.Select((corner, number) => new CornerPoint(
            corner,
            distances.Find(
                distance => Math.Max(distance.From, distance.To) == number && Math.Min(distance.From, distance.To) == number - 1)?.At
                    ?? line.PositionOf("distances")));
        return ([.. corners], fit);
    }

    /// <summary>Pairs of places with their distance, or a list of them: end B is one more than the highest number typed.</summary>
    private List<TapedDistance>? Distances(YamlValue value)
    {
        List<TapedDistance?> distances;
        switch (value)
        {
            case YamlMap { Entries: { Count: > 0 } entries }:
                distances = [.. entries.Select(Distance)];
                break;
            case YamlList { Items: { Count: > 0 } items }:
                distances = [.. items.Select(Distance)];
                break;
            default:
                Backs.Context.Report(FileRules.WrongKind.Error(
                    value.Position,
                    $"`distances` has a length for each pair of A, B and the numbers of corners, such as {Example}, and this is "
                        + $"{FieldReader.Kind(value)}"));
                return null;
        }

        if (distances.Exists(distance => distance is null))
        {
            return null;
        }

        var last = 1 + distances.Max(distance => Math.Max(Numbered(distance!.From), Numbered(distance.To)));
        int Known(int place) => place == EndB ? last : place;
        return distances.ConvertAll(distance => distance! with { From = Known(distance.From), To = Known(distance.To) });
    }

    private static int Numbered(int place) => place == EndB ? 0 : place;

    private TapedDistance? Distance(YamlEntry entry)
    {
        var measured = entry.Value is YamlMap ? Measured(entry.Value) : Bare(entry);
        if (TapedReader.Pair(entry.Key.Text) is var (first, second) && Place(first) is { } from && Place(second) is { } to)
        {
            return measured is { } known ? known with { From = from, To = to } : null;
        }

        Backs.Context.Report(FileRules.UnknownWord.Error(
            entry.Key.Position,
            $"{AsTyped.Show(entry.Key.Text)} is not a pair of corners: write two of A, B and the numbers of corners with a hyphen, "
                + $"such as {Example}"));
        return null;
    }

    private TapedDistance? Bare(YamlEntry entry) =>
        FigureReader.Length(entry.Value, entry.Key.Text, Range.PositiveLength, Backs.Context) is { } length
            ? new(0, 0, length, entry.Value.Position)
            : null;

    /// <summary>A length with how sure it is, and what it was measured to.</summary>
    private TapedDistance? Measured(YamlValue value)
    {
        var map = FieldReader.Of(value, Vocabulary.Taped, Backs.Context)!;
        if (!map.Has("distance"))
        {
            map.ReportMissing($"what was measured is missing: write it like `{Vocabulary.Taped.Example}`");
        }

        var distance = map.Length("distance", Range.PositiveLength);
        var within = map.Length("within", Range.LengthOrZero);
        var isBack = BackReader.IsBack(map);
        var isClear = map.Has("within") == within.HasValue && (isBack is false || (isBack is true && Backs.WireIsKnown(map)));
        return distance is { } measured && isClear
            ? new(0, 0, measured, map.PositionOfValue("distance")) { Within = within, Back = isBack is true ? Backs.Wire : null }
            : null;
    }

    private TapedDistance? Distance(YamlValue item)
    {
        var context = Backs.Context;
        if (FieldReader.Of(item, Vocabulary.Distance, context) is not { } map)
        {
            return null;
        }

        foreach (var word in Vocabulary.Distance.Known.Where(word => word is not "within" && !map.Has(word)))
        {
            map.ReportMissing($"a distance needs `{word}`: write it like `{Vocabulary.Distance.Example}`");
        }

        var (from, to) = (Place(map, "from", context), Place(map, "to", context));
        var length = map.Length("distance", Range.PositiveLength);
        var within = map.Length("within", Range.LengthOrZero);
        return from is { } first && to is { } second && length is { } known && map.Has("within") == within.HasValue
            ? new(first, second, known, map.PositionOfValue("distance")) { Within = within }
            : null;
    }

    private static int? Place(FieldReader map, string word, FileContext context)
    {
        if (map.Text(word) is not { } text)
        {
            return null;
        }

        if (Place(text.Text) is { } place)
        {
            return place;
        }

        context.Report(FileRules.NotAChoice.Error(
            text.Position, $"{AsTyped.Show($"{word}: {text.Text}")} is no corner: write A, B or the number of a corner"));
        return null;
    }

    /// <summary>Null where it is none.</summary>
    private static int? Place(string text) => text switch
    {
        "A" or "a" => 0,
        "B" or "b" => EndB,
        _ => Corner(text),
    };

    private static int? Corner(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>One side for the second bend, or a side for each bend by its number.</summary>
    private static List<TapedSide>? SidesOf(FieldReader line, FileContext context)
    {
        if (line.Value("side") is not { } value)
        {
            return null;
        }

        if (value is YamlText text)
        {
            return line.Choice("side", Sides) is { } only ? [new(2, only, text.Position)] : null;
        }

        if (value is not YamlMap map || map.Entries.Any(entry => Corner(entry.Key.Text) is null))
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`side` is left or right, or one of them for each bend by its number, such as `side: {{2: left, 3: right}}`, and this "
                    + $"is {FieldReader.Kind(value)}"));
            return null;
        }

        var bends = FieldReader.Of(
            map, new Vocabulary("the sides", "{2: left}", [.. map.Entries.Select(entry => entry.Key.Text)]), context)!;
        var sides = map.Entries.Select(entry => bends.Choice(entry.Key.Text, Sides) is { } side
            ? new TapedSide(Corner(entry.Key.Text)!.Value, side, entry.Value.Position)
            : null).ToList();
        return sides.TrueForAll(side => side is not null) ? sides.ConvertAll(side => side!) : null;
    }
}
