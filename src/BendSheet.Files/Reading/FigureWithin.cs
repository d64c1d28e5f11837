using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// A figure of a row with how sure it is, where that is not the tolerance: <c>straight: {length: 120, within: 3}</c>,
/// <c>rotate: {angle: 90 cw, within: 2}</c>.
/// </summary>
internal static class FigureWithin
{
    private const string Within = "within";

    private static readonly string[] Lengths = ["straight", "offset", "run", "saddle", "width"];

    private static readonly string[] Angles = ["bend", "included", "rotate"];

    /// <summary>
    /// A row as it would be with bare figures, and one standard deviation of each that was typed with its own, in millimetres or radians.
    /// </summary>
    /// <returns>A map only where every figure can be read as one; otherwise there are findings.</returns>
    public static (YamlValue? Row, Dictionary<string, double> Deviations) Taken(YamlValue row, FileContext context)
    {
        var deviations = new Dictionary<string, double>(StringComparer.Ordinal);
        if (row is not YamlMap { Entries: var entries } map || !entries.Any(IsWithin))
        {
            return (row, deviations);
        }

        List<YamlEntry?> bare = [.. entries.Select(entry => IsWithin(entry) ? Bare(entry, deviations, context) : entry)];
        return (bare.TrueForAll(entry => entry is not null) ? map with { Entries = bare.ConvertAll(entry => entry!) } : null, deviations);
    }

    private static bool IsWithin(YamlEntry entry) =>
        entry.Value is YamlMap { Entries.Count: > 0 } && (Is(Lengths, entry) || Is(Angles, entry));

    private static bool Is(string[] words, YamlEntry entry) => words.Contains(entry.Key.Text, StringComparer.Ordinal);

    private static YamlEntry? Bare(YamlEntry entry, Dictionary<string, double> deviations, FileContext context)
    {
        var isLength = Is(Lengths, entry);
        var (word, vocabulary) = isLength ? ("length", Vocabulary.LengthWithin) : ("angle", Vocabulary.AngleWithin);
        var map = FieldReader.Of(entry.Value, vocabulary, context)!;
        if (!map.Has(word))
        {
            map.ReportMissing($"the figure itself is missing: write it like `{entry.Key.Text}: {vocabulary.Example}`");
        }

        var deviation = isLength
            ? map.Length(Within, Range.LengthOrZero)?.Millimetres
            : map.Angle(Within, Range.AngleOrZero)?.Radians;
        if (map.Text(word) is not { } figure || map.HasUnknownWord || map.Has(Within) != deviation.HasValue)
        {
            return null;
        }

        if (deviation is { } known)
        {
            deviations.Add(entry.Key.Text, known);
        }

        return entry with { Value = figure };
    }
}
