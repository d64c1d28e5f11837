using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the distances that were measured on a finished piece.</summary>
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

        if (value is YamlList { Items.Count: > 0 } list)
        {
            var checks = list.Items.Select(item => Check(item, route, context)).OfType<FinishedDistance>().ToList();
            foreach (var again in checks.GroupBy(check => (check.From, check.To)).SelectMany(same => same.Skip(1)))
            {
                context.Report(
                    TapedRules.DistanceSaidTwice
                        .Error(again.At, "these two places are here a second time: keep one of the two, or measure again"));
            }

            return [.. checks];
        }

        context.Report(FileRules.WrongKind.Error(
            value.Position,
            $"`{Word}` lists distances on the finished piece, each between two of its places, such as `{Word}: "
                + $"[{Vocabulary.Check.Example}]`, and this is {FieldReader.Kind(value)}"));
        return [];
    }

    private static FinishedDistance? Check(YamlValue value, Route? route, FileContext context)
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
        var (from, to) = (map.Text("from"), map.Text("to"));
        if (route is null || from is null || to is null)
        {
            return null;
        }

        var (first, second) = (Place(from, route, context), Place(to, route, context));
        if (first is not { } start || second is not { } end)
        {
            return null;
        }

        if (start == end)
        {
            context.Report(
                TapedRules.NoDistance.Error(
                    to.Position, $"from {AsTyped.Show(from.Text)} to itself there is no distance: write two different places"));
            return null;
        }

        return distance is { } measured ? new(Math.Min(start, end), Math.Max(start, end), measured, map.PositionOfValue("distance")) : null;
    }

    /// <summary>0 is end A, then the corners by the numbers of their bends, then end B.</summary>
    private static int? Place(YamlText text, Route route, FileContext context)
    {
        if (text.Text is "A" or "a")
        {
            return 0;
        }

        if (text.Text is "B" or "b")
        {
            return route.Bends.Length + 1;
        }

        if (!int.TryParse(text.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number < 1
            || number > route.Bends.Length)
        {
            var corners = route.Bends.Length switch
            {
                0 => "the line has no corner",
                1 => "or 1 for its only corner",
                _ => FormattableString.Invariant($"or the number of a corner, 1 to {route.Bends.Length}"),
            };
            context.Report(
                TapedRules.NoDistance.Error(
                    text.Position, $"{AsTyped.Show(text.Text)} is no place on the finished piece: write A or B, {corners}"));
            return null;
        }

        if (route.Bends[number - 1] is { HasCorner: true, FromTangent: false })
        {
            return number;
        }

        context.Report(TapedRules.NoDistance.Error(
            text.Position,
            string.Create(
                CultureInfo.InvariantCulture,
                $"bend {number} has no corner that a tape could be held to: a U-bend or a coil has none; "
                    + $"measure to A, B or another corner")));
        return null;
    }
}
