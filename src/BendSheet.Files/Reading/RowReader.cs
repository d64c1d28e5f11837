using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads the rows of a line. Null after findings that leave the route incomplete.</summary>
internal static class RowReader
{
    /// <summary>The route of a list of rows.</summary>
    /// <param name="value">The list.</param>
    /// <param name="bender">The tool of every row that does not name its own; null where it could not be read.</param>
    /// <param name="benders">All tools of the file.</param>
    /// <param name="context">For findings.</param>
    public static Route? Route(YamlValue value, Bender? bender, Named<Bender> benders, FileContext context)
    {
        if (value is not YamlList { Items.Count: > 0 } list)
        {
            context.Report(FileRules.WrongKind.Error(
                value.Position, "a line is a list of rows, each behind a dash, such as `- {straight: 120, bend: 45}`; the last one only goes straight"));
            return null;
        }

        var rows = list.Items.Select(item => Row(item, bender, benders, context)).ToList();
        if (rows[^1] is not { } last)
        {
            return null;
        }

        // With a row missing there is no route, but that its end is wrong can be said already.
        var complete = rows.TrueForAll(row => row is not null);
        var (route, findings) = Core.Templates.Route.OfRows(complete ? rows.ConvertAll(row => row!) : [last]);
        foreach (var finding in findings)
        {
            context.Report(finding);
        }

        return complete ? route : null;
    }

    private static Row? Row(YamlValue value, Bender? lineBender, Named<Bender> benders, FileContext context)
    {
        if (TypedMap.Of(value, Vocabulary.Row, context) is not { } map)
        {
            return null;
        }

        var straight = map.Length("straight", Range.LengthOrZero);
        var rotation = map.Rotation("rotate");
        var turn = Turn(map, context);
        var bender = map.Text("bender") is { } name ? benders.Find(name, context) : map.Has("bender") ? null : lineBender;
        var note = map.FreeText("note");
        if (map.HasLaterWord || map.HasUnknownWord)
        {
            return null;
        }

        if (!map.Has("straight"))
        {
            context.Report(FileRules.MissingWord.Error(map.Position, "a row begins with the straight up to its bend: add `straight` (`straight: 0` where there is none), or take the dash out if this belongs to the row above"));
        }

        var bends = map.Has("bend") || map.Has("included");
        foreach (var word in new[] { "rotate", "bender", "note" })
        {
            if (map.Has(word) && !bends)
            {
                context.Report(FileRules.OutOfPlace.Error(
                    map.PositionOf(word), $"`{word}` does nothing in a row without a bend: put it into the row of the bend it belongs to"));
            }
        }

        if (straight is not { } length || (bends && (turn is null || bender is null)) || (map.Has("rotate") && rotation is null))
        {
            return null;
        }

        var bend = turn is { } angle
            ? new Bend(angle, rotation ?? Angle.Zero, bender!, note, map.Value(map.Has("bend") ? "bend" : "included")!.Position)
            : null;
        return new(length, map.Value("straight")!.Position, bend);
    }

    private static Angle? Turn(TypedMap map, FileContext context)
    {
        var bend = map.Angle("bend", Range.Turn);
        var included = map.Angle("included", Range.Included);
        if (map.Has("bend") && map.Has("included"))
        {
            context.Report(FileRules.SaidTwice.Error(
                map.PositionOf("included"), "`bend` and `included` are two ways to say one corner (bend = 180 − included): keep one of them"));
            return null;
        }

        return included is { } between ? Angle.FromDegrees(180 - between.Degrees) : bend;
    }
}
