using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads what was measured on wire or car beside the route: <c>A-3: 344</c>, <c>B ahead: 225</c>, <c>A-B: {forward: 285, up: -40}</c>, each
/// with its own <c>within</c> where it is less sure than the tape.
/// </summary>
internal static class TapedReader
{
    /// <summary>The word of a line.</summary>
    public const string Word = "taped";

    private const string Example = "`taped: {A-B: 326.5, B ahead: 224}`";

    private static readonly (string Word, Vector3D Axis)[] Ways =
        [("forward", new(1, 0, 0)), ("left", new(0, 1, 0)), ("up", new(0, 0, 1))];

    /// <summary>What the line says; what cannot be read is left out after a finding.</summary>
    /// <param name="line">The line.</param>
    /// <param name="route">Its route and how it lies; null where it cannot be read, and then the places are not looked at.</param>
    /// <param name="wire">The template's; null where it cannot be read.</param>
    /// <param name="context">For findings.</param>
    public static ImmutableArray<TapedMeasurement> Read(FieldReader line, LineRoute? route, Wire? wire, FileContext context)
    {
        if (line.Value(Word) is not { } value)
        {
            return [];
        }

        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`{Word}` has what was measured beside the route, such as {Example}, and this is {FieldReader.Kind(value)}"));
            return [];
        }

        List<TapedMeasurement> taped = [.. entries.SelectMany(entry => Measured(entry, route, wire, context))];
        foreach (var again in taped.GroupBy(one => one.Quantity).SelectMany(same => same.Skip(1)))
        {
            context.Report(TapedRules.DistanceSaidTwice.Error(
                again.At, "this is here a second time: keep one of the two, or measure again"));
        }

        return [.. taped];
    }

    /// <summary>Two places with a hyphen between them; null for anything else.</summary>
    public static (string From, string To)? Pair(string key) =>
        key.Split('-', StringSplitOptions.TrimEntries) is [{ Length: > 0 } from, { Length: > 0 } to] ? (from, to) : null;

    private static IEnumerable<TapedMeasurement> Measured(YamlEntry entry, LineRoute? route, Wire? wire, FileContext context)
    {
        var places = route is null ? null : new PlaceReader(route.Route, "this line", context);
        var (key, at) = (entry.Key.Text, entry.Key.Position);
        if (Pair(key) is var (from, to))
        {
            var pair = places?.Pair(from, to, at, at);
            return entry.Value is YamlMap map && Ways.Any(way => map.Entries.Any(part => IsWord(part, way.Word)))
                ? Parts(map, pair, route, context)
                : Single(
                    entry,
                    pair is var (first, second) ? new(TapedKind.Distance, Math.Min(first, second), Math.Max(first, second)) : null,
                    new(route?.Route, wire, context));
        }

        foreach (var (word, kind) in new[] { (" ahead", TapedKind.Ahead), (" aside", TapedKind.Aside) })
        {
            if (key.EndsWith(word, StringComparison.OrdinalIgnoreCase))
            {
                var place = places?.Pair("A", key[..^word.Length].Trim(), at, at);
                return Single(entry, place is var (_, point) ? new(kind, 0, point) : null, new(route?.Route, wire, context));
            }
        }

        context.Report(FileRules.UnknownWord.Error(
            at,
            $"{AsTyped.Show(key)} is nothing that can be measured: write two places with a hyphen, or one with `ahead` or `aside`, such as "
                + Example));
        return [];
    }

    private static bool IsWord(YamlEntry entry, string word) => string.Equals(entry.Key.Text, word, StringComparison.Ordinal);

    /// <summary>A length, or a length with how sure it is.</summary>
    private static IEnumerable<TapedMeasurement> Single(YamlEntry entry, TapedQuantity? quantity, BackReader backs)
    {
        var context = backs.Context;

        // A point may lie behind end A.
        var range = quantity?.Kind == TapedKind.Ahead ? Range.SignedLength : Range.PositiveLength;
        if (entry.Value is not YamlMap)
        {
            return FigureReader.Length(entry.Value, entry.Key.Text, range, context) is { } length && quantity is { } known
                ? [new(known, length, entry.Value.Position)]
                : [];
        }

        var map = FieldReader.Of(entry.Value, Vocabulary.Taped, context)!;
        if (!map.Has("distance"))
        {
            map.ReportMissing($"what was measured is missing: write it like `{Vocabulary.Taped.Example}`");
        }

        var distance = map.Length("distance", range);
        var within = map.Length("within", Range.LengthOrZero);
        return distance is { } measured && quantity is { } typed && backs.Quantity(map, typed) is { } one
            && map.Has("within") == within.HasValue
            ? [new(one, measured, map.PositionOfValue("distance")) { Within = within }]
            : [];
    }

    /// <summary>Parts of the way on the car.</summary>
    private static List<TapedMeasurement> Parts(
        YamlMap value, (int From, int To)? pair, LineRoute? route, FileContext context)
    {
        if (route is { LiesOnCar: false })
        {
            context.Report(FileRules.OutOfPlace.Error(
                value.Position,
                "forward, left and up mean something only on the car: say how the line lies with `start`, or measure ahead and aside"));
            return [];
        }

        var map = FieldReader.Of(value, Vocabulary.TapedWay, context)!;
        var within = map.Length("within", Range.LengthOrZero);
        List<TapedMeasurement> parts = [];
        foreach (var (word, axis) in Ways)
        {
            if (map.Length(word, Range.SignedLength) is { } part && pair is var (first, second))
            {
                // From B to A it is the same way back.
                parts.Add(new(
                    new(TapedKind.Part, Math.Min(first, second), Math.Max(first, second)) { Axis = axis },
                    first < second ? part : Length.Zero - part,
                    map.PositionOfValue(word))
                {
                    Within = within,
                });
            }
        }

        return parts;
    }
}
