using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads what a row bends: one bend, or an offset, a saddle or a coil, which stand for several. A single null after findings.
/// </summary>
internal static class BendRowReader
{
    private static readonly Row?[] Nothing = [null];

    private static readonly (bool RightHanded, string Word)[] Winds = [(true, "cw"), (false, "ccw")];

    private static readonly (int Bends, string Word)[] SaddleBends = [(3, "3"), (4, "4")];

    /// <summary>A bend, an offset or a saddle.</summary>
    public static IEnumerable<Row?> Bends(
        FieldReader map, RowKind kind, Row straight, Angle rotation, Bender tool, string? note, FileContext context)
    {
        if (kind == RowKind.Offset)
        {
            return Offset(map, straight, rotation, tool, note, context);
        }

        if (kind == RowKind.Saddle)
        {
            return Saddle(map, straight, rotation, tool, note, context);
        }

        var turn = kind == RowKind.Included && map.Angle("included", Range.Included) is { } between
            ? Angle.FromDegrees(180 - between.Degrees)
            : map.Angle("bend", Range.Turn);
        return turn is { } angle
            ? [straight with { Bend = new(angle, rotation, tool, note, map.Value(kind.Word)!.Position) }]
            : Nothing;
    }

    /// <summary>A coil.</summary>
    public static IEnumerable<Row?> Coil(FieldReader map, Row straight, Angle rotation, string? note, FileContext context)
    {
        var turns = map.Number("coil", Range.CoilTurns);
        var radius = Required(map, "radius", "a coil needs the radius it is wound to, to the tube's centreline: add `radius`");
        var pitch = Required(map, "pitch", "a coil needs its pitch, centreline to centreline from turn to turn: add `pitch`");
        var winds = map.Choice("winds", Winds);
        if (turns is not { } count || radius is not { } known || pitch is not { } rise || (map.Has("winds") && winds is null))
        {
            return Nothing;
        }

        var at = map.Value("coil")!.Position;
        // Looked for on the bench by the radius that was typed; the tube on it curves a little less tightly where it rises.
        var name = "coil former of radius " + new LengthNotation(context.Unit is LengthUnit.Inch or LengthUnit.Foot, 64).Size(known);
        var former = new Bender(name, Core.Templates.Coil.CurveRadius(known, rise), map.Value("radius")!.Position);
        return Core.Templates.Coil.Rows(count, known, rise, winds ?? true, rotation, former, straight, at, note);
    }

    private static IEnumerable<Row?> Offset(FieldReader map, Row straight, Angle rotation, Bender tool, string? note, FileContext context)
    {
        var height = map.Length("offset", Range.PositiveLength);
        var run = map.Length("run", Range.PositiveLength);
        var bend = map.Angle("bend", Range.OffsetBend);
        if (OnlyOne(
            map, "bend", "run", "an offset needs its bend, or the run from corner to corner: add `bend` or `run`", context) is not { } word
            || height is not { } rise)
        {
            return Nothing;
        }

        var turn = run is { } along ? Core.Templates.Offset.BendOver(rise, along) : bend;
        return turn is { } angle
            ? (IEnumerable<Row?>)Core.Templates.Offset
            .Rows(
                rise, new(angle, rotation, tool, note, map.Value(word)!.Position), straight, map
                    .Value("offset")!.Position, fromRun: run is not null)
            : Nothing;
    }

    private static IEnumerable<Row?> Saddle(FieldReader map, Row straight, Angle rotation, Bender tool, string? note, FileContext context)
    {
        var height = map.Length("saddle", Range.PositiveLength);
        var width = map.Length("width", Range.PositiveLength);
        var bend = map.Angle("bend", Range.OffsetBend);
        var bends = map.Choice("bends", SaddleBends);
        if (!map.Has("bends"))
        {
            map.ReportMissing("a saddle has three bends or four: add `bends: 3` or `bends: 4`");
        }

        if (height is not { } rise || bends is not { } count)
        {
            return Nothing;
        }

        var at = map.Value("saddle")!.Position;
        if (count == 4)
        {
            var top = Required(map, "width", "a saddle of four bends needs the length of its flat top, corner to corner: add `width`");
            if (!map.Has("bend"))
            {
                map.ReportMissing("a saddle of four bends needs the bend of its slopes: add `bend`");
            }

            return top is { } flat && bend is { } slope
                ? (IEnumerable<Row?>)Core.Templates.Saddle
                .FourBends(rise, flat, new(slope, rotation, tool, note, map.Value("bend")!.Position), straight, at)
                : Nothing;
        }

        if (OnlyOne(
            map,
            "bend",
            "width",
            "a saddle of three bends needs its outer bend, or its width from outer corner to outer corner: add `bend` or `width`",
            context) is not { } word)
        {
            return Nothing;
        }

        var turn = width is { } across ? Core.Templates.Offset.BendOver(rise, 0.5 * across) : bend;
        return turn is { } angle
            ? (IEnumerable<Row?>)Core.Templates.Saddle
            .ThreeBends(rise, new(angle, rotation, tool, note, map.Value(word)!.Position), straight, at, fromWidth: width is not null)
            : Nothing;
    }

    /// <summary>The one of two words that is there; null after a finding where it is none or both, or has no value.</summary>
    private static string? OnlyOne(FieldReader map, string first, string second, string missing, FileContext context)
    {
        if (map.Has(first) && map.Has(second))
        {
            context.Report(
                FileRules.SaidTwice.Error(map.PositionOf(second), $"`{first}` and `{second}` say the same slope twice: keep one of them"));
            return null;
        }

        if (map.Has(first))
        {
            return first;
        }

        if (map.Has(second))
        {
            return second;
        }

        map.ReportMissing(missing);
        return null;
    }

    private static Length? Required(FieldReader map, string word, string missing)
    {
        if (!map.Has(word))
        {
            map.ReportMissing(missing);
        }

        return map.Length(word, string.Equals(word, "pitch", StringComparison.Ordinal) ? Range.LengthOrZero : Range.PositiveLength);
    }
}
