using System.Globalization;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads straight-line distances between numbered corners, and the sides that the tape cannot tell. Null after findings.</summary>
internal static class DistancesReader
{
    private const string Example = "`distances: {0-1: 120, 0-2: 166.5, 1-2: 60}`";

    private static readonly (Side Side, string Word)[] Sides = [(Side.Left, "left"), (Side.Right, "right")];

    /// <summary>The corners that the distances come to.</summary>
    /// <param name="line">The line.</param>
    /// <param name="value">What stands behind <c>distances</c>.</param>
    /// <param name="context">For findings.</param>
    public static (IReadOnlyList<CornerPoint> Corners, TapedFit Fit)? Read(FieldReader line, YamlValue value, FileContext context)
    {
        var distances = Distances(value, context);
        var sides = line.Has("side") ? SidesOf(line, context) : [];
        if (distances is null || sides is null)
        {
            return null;
        }

        var (fit, findings) = TapedCorners.Solve(distances, sides, line.PositionOf("distances"));
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

    private static List<TapedDistance>? Distances(YamlValue value, FileContext context)
    {
        if (value is not YamlMap { Entries: { Count: > 0 } entries })
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position,
                $"`distances` has a length for each pair of corners, end A being 0, such as {Example}, and this is "
                    + $"{FieldReader.Kind(value)}"));
            return null;
        }

        var distances = entries.Select(entry => Distance(entry, context)).ToList();
        return distances.TrueForAll(distance => distance is not null) ? distances.ConvertAll(distance => distance!) : null;
    }

    private static TapedDistance? Distance(YamlEntry entry, FileContext context)
    {
        var length = FigureReader.Length(entry.Value, entry.Key.Text, Range.PositiveLength, context);
        var pair = entry.Key.Text.Split('-');
        if (pair is [var first, var second] && Corner(first) is { } from && Corner(second) is { } to)
        {
            return length is { } known ? new(from, to, known, entry.Value.Position) : null;
        }

        context.Report(FileRules.UnknownWord.Error(
            entry.Key.Position,
            $"{AsTyped.Show(entry.Key.Text)} is not a pair of corners: write their numbers with a hyphen, end A being 0, "
                + $"such as {Example}"));
        return null;
    }

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
