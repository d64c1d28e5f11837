using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads what a row bends: one bend, or an offset, a saddle or a coil, which stand for several. A single null after findings.
/// </summary>
internal static class BendRowReader
{
    private static readonly Row?[] Nothing = [null];

    internal static readonly (bool RightHanded, string Word)[] Winds = [(true, "cw"), (false, "ccw")];

    internal static readonly (int Bends, string Word)[] SaddleBends = [(3, "3"), (4, "4")];

    /// <summary>A bend, by what the tube turns.</summary>
    public static IEnumerable<Row?> Bend(TypedRow row) => OneBend(row, row.Map.Angle("bend", Range.Turn), "bend");

    /// <summary>A bend, by the angle between its legs.</summary>
    public static IEnumerable<Row?> Included(TypedRow row) => OneBend(
        row, row.Map.Angle("included", Range.Included) is { } between ? Angle.FromDegrees(180 - between.Degrees) : null, "included");

    /// <summary>A coil.</summary>
    public static IEnumerable<Row?> Coil(TypedRow row)
    {
        var map = row.Map;
        var turns = map.Number("coil", Range.CoilTurns);
        var radius = Required(map, "radius", "a coil needs the radius it is wound to, to the tube's centreline: add `radius`");
        var pitch = Required(map, "pitch", "a coil needs its pitch, centreline to centreline from turn to turn: add `pitch`");
        var winds = map.Choice("winds", Winds);
        if (turns is not { } count || radius is not { } known || pitch is not { } rise || (map.Has("winds") && winds is null))
        {
            return Nothing;
        }

        // Looked for on the bench by the radius that was typed; the tube on it curves a little less tightly, because it rises.
        var name = "coil former of radius " + new LengthNotation(row.Context.Unit is LengthUnit.Inch or LengthUnit.Foot, 64).Size(known);
        var coil = new Coil(count, known, rise, winds ?? true);
        if (coil.TubeLength.Millimetres > Range.Longest || coil.CurveRadius.Millimetres > Range.Longest || coil.Turn < Range.LeastBend)
        {
            row.Context.Report(FileRules.OutOfRange.Error(
                At(row, "coil"),
                "this coil cannot be: it must come to at most 100 m of tube, curve to a radius of at most 100 m and turn 0.1° or more; "
                    + "look at `coil` (how often it goes round), `radius` and `pitch`, and their units"));
            return Nothing;
        }

        if (!row.Reader.HasRoomFor(coil.Arcs, At(row, "coil")))
        {
            return Nothing;
        }

        return coil.Rows(row.Straight, row.Rotation, new(name, coil.CurveRadius, At(row, "radius")), At(row, "coil"), row.Note);
    }

    /// <summary>An offset.</summary>
    public static IEnumerable<Row?> Offset(TypedRow row)
    {
        var map = row.Map;
        var height = map.Length("offset", Range.PositiveLength);
        var run = map.Length("run", Range.PositiveLength);
        var bend = map.Angle("bend", Range.OffsetBend);
        if (OnlyOne(row, "bend", "run", "an offset needs its bend, or the run from corner to corner: add `bend` or `run`") is not { } word
            || height is not { } rise)
        {
            return Nothing;
        }

        var turn = run is { } along ? Slope(row, Core.Templates.Offset.BendOver(rise, along), "offset", word) : bend;
        var at = At(row, "offset");
        var heightFrom = row.Observed(ObservationKind.Offset, rise.Millimetres, "offset");
        var turnFrom = run is { } over && heightFrom is not null
            ? Core.Templates.Offset.BendOverFrom(heightFrom, row.Observed(ObservationKind.Run, over.Millimetres, word)!)
            : null;
        return turn is { } angle
            ? [
                .. Core.Templates.Offset.Rows(
                    rise, FirstBend(row, angle, word, turnFrom), row.Straight, at, fromRun: run is not null, heightFrom),
            ]
            : Nothing;
    }

    /// <summary>A saddle.</summary>
    public static IEnumerable<Row?> Saddle(TypedRow row)
    {
        var map = row.Map;
        var height = map.Length("saddle", Range.PositiveLength);
        var width = map.Length("width", Range.PositiveLength);
        var bend = map.Angle("bend", Range.OffsetBend);
        var bends = map.Choice("bends", SaddleBends);
        if (!map.Has("bends"))
        {
            map.ReportMissing("a saddle has three bends or four: add `bends: 3` or `bends: 4`");
        }

        return height is not { } rise || bends is not { } count ? Nothing
            : count == 4 ? FourBends(row, rise, bend)
            : ThreeBends(row, rise, width, bend);
    }

    private static Row?[] ThreeBends(TypedRow row, Length height, Length? width, Angle? bend)
    {
        const string Missing =
            "a saddle of three bends needs its outer bend, or its width from outer corner to outer corner: add `bend` or `width`";
        if (OnlyOne(row, "bend", "width", Missing) is not { } word)
        {
            return Nothing;
        }

        var turn = width is { } across ? Slope(row, Core.Templates.Offset.BendOver(height, 0.5 * across), "saddle", word) : bend;
        var at = At(row, "saddle");
        var heightFrom = row.Observed(ObservationKind.Saddle, height.Millimetres, "saddle");
        var turnFrom = width is { } wide && heightFrom is not null
            ? HalfWidth(heightFrom, row.Observed(ObservationKind.Width, wide.Millimetres, word)!)
            : null;
        return turn is { } angle
            ? [
                .. Core.Templates.Saddle.ThreeBends(
                    height, FirstBend(row, angle, word, turnFrom), row.Straight, at, fromWidth: width is not null, heightFrom),
            ]
            : Nothing;
    }

    /// <summary>The bend of a slope that was measured by its sides; null after a finding where no bend is as small.</summary>
    private static Angle? Slope(TypedRow row, Angle turn, string height, string length)
    {
        if (turn >= Range.LeastBend)
        {
            return turn;
        }

        row.Context.Report(FileRules.OutOfRange.Error(
            At(row, height),
            $"`{height}` and `{length}` come to a bend of less than 0.1°, which is no bend: look at both, and at their units"));
        return null;
    }

    private static Row?[] FourBends(TypedRow row, Length height, Angle? bend)
    {
        var top = Required(row.Map, "width", "a saddle of four bends needs the length of its flat top, corner to corner: add `width`");
        if (!row.Map.Has("bend"))
        {
            row.Map.ReportMissing("a saddle of four bends needs the bend of its slopes: add `bend`");
        }

        return top is { } flat && bend is { } slope
            ? [
                .. Core.Templates.Saddle.FourBends(
                    height,
                    flat,
                    FirstBend(row, slope, "bend"),
                    row.Straight,
                    At(row, "saddle"),
                    row.Observed(ObservationKind.Saddle, height.Millimetres, "saddle"),
                    row.Observed(ObservationKind.Width, flat.Millimetres, "width")),
            ]
            : Nothing;
    }

    private static Row?[] OneBend(TypedRow row, Angle? turn, string word) =>
        turn is { } angle ? [row.Straight with { Bend = FirstBend(row, angle, word) }] : Nothing;

    private static Bend FirstBend(TypedRow row, Angle turn, string word, Term? turnFrom = null) =>
        new(turn, row.Rotation, row.Tool, row.Note, At(row, word))
        {
            TurnFrom = turnFrom ?? row.Observed(ObservationKind.Bend, turn.Radians, word),
            RotationFrom = row.RotationFrom,
        };

    private static Term HalfWidth(Term height, Term width) =>
        Core.Templates.Offset.BendOverFrom(height, Term.From([width], parts => parts[0] / 2, _ => [0.5]));

    private static SourcePosition At(TypedRow row, string word) => row.Map.PositionOfValue(word);

    /// <summary>The one of two words that is there; null after a finding where it is none or both, or has no value.</summary>
    private static string? OnlyOne(TypedRow row, string first, string second, string missing)
    {
        var map = row.Map;
        if (map.Has(first) && map.Has(second))
        {
            row.Context.Report(FileRules.SaidTwice.Error(
                map.PositionOf(second), $"`{first}` and `{second}` say the same slope twice: keep one of them"));
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
