using System.Collections.Immutable;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads the distances that were measured on a finished piece: <c>A-3: 344</c>, or a list of <c>{from: A, to: 3, distance: 344}</c>.
/// </summary>
internal static class ChecksReader
{
    private const string Word = "checks";

    /// <summary>What the line says; what cannot be read is left out after a finding.</summary>
    /// <param name="line">The line.</param>
    /// <param name="route">Its route; null where it cannot be read, and then the places are not looked at.</param>
    /// <param name="context">For findings.</param>
    public static ImmutableArray<FinishedDistance> Read(FieldReader line, Route? route, FileContext context)
    {
        if (line.Value(Word) is not { } value)
        {
            return [];
        }

        var places = route is null ? null : new PlaceReader(route, "the finished piece", context);
        List<FinishedDistance> checks;
        switch (value)
        {
            case YamlList { Items.Count: > 0 } list:
                checks = [.. list.Items.Select(item => Check(item, places, context)).OfType<FinishedDistance>()];
                break;
            case YamlMap { Entries.Count: > 0 } map:
                checks = [.. map.Entries.Select(entry => Check(entry, places, context)).OfType<FinishedDistance>()];
                break;
            default:
                context.Report(FileRules.WrongKind.Error(
                    value.Position,
                    $"`{Word}` has distances on the finished piece, each between two of its places, such as `{Word}: {{A-2: 344}}`, "
                        + $"and this is {FieldReader.Kind(value)}"));
                return [];
        }

        foreach (var again in checks.GroupBy(check => (check.From, check.To)).SelectMany(same => same.Skip(1)))
        {
            context.Report(TapedRules.DistanceSaidTwice.Error(
                again.At, "these two places are here a second time: keep one of the two, or measure again"));
        }

        return [.. checks];
    }

    private static FinishedDistance? Check(YamlEntry entry, PlaceReader? places, FileContext context)
    {
        var distance = FigureReader.Length(entry.Value, entry.Key.Text, Range.PositiveLength, context);
        if (TapedReader.Pair(entry.Key.Text) is not var (from, to))
        {
            context.Report(FileRules.UnknownWord.Error(
                entry.Key.Position,
                $"{AsTyped.Show(entry.Key.Text)} is no pair of places: write two of A, B and the numbers of corners with a hyphen, such as "
                    + "`A-2`"));
            return null;
        }

        return places?.Pair(from, to, entry.Key.Position, entry.Key.Position) is var (first, second) && distance is { } measured
            ? new(Math.Min(first, second), Math.Max(first, second), measured, entry.Value.Position)
            : null;
    }

    private static FinishedDistance? Check(YamlValue value, PlaceReader? places, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Check, context) is not { } map)
        {
            return null;
        }

        foreach (var word in Vocabulary.Check.Known.Where(word => !map.Has(word)))
        {
            map.ReportMissing($"a check needs `{word}`: write it like `{Vocabulary.Check.Example}`");
        }

        var distance = map.Length("distance", Range.PositiveLength);
        return map.Text("from") is { } from && map.Text("to") is { } to
            && places?.Pair(from.Text, to.Text, from.Position, to.Position) is var (first, second)
            && distance is { } measured
            ? new(Math.Min(first, second), Math.Max(first, second), measured, map.PositionOfValue("distance"))
            : null;
    }
}
