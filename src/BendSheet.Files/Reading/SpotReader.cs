using System.Globalization;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads places on the car and ways on it. Null after findings.</summary>
internal static class SpotReader
{
    /// <summary>Opposite ways, and the axis each pair lies on.</summary>
    public static IReadOnlyList<(string Plus, string Minus, Vector3D Axis)> Axes { get; } =
    [
        ("forward", "back", new(1, 0, 0)),
        ("left", "right", new(0, 1, 0)),
        ("up", "down", new(0, 0, 1)),
    ];

    /// <summary>The six ways with their words.</summary>
    public static IReadOnlyList<(Vector3D Way, string Word)> Ways { get; } =
        [.. Axes.SelectMany(axis => new[] { (axis.Axis, axis.Plus), (-1 * axis.Axis, axis.Minus) })];

    private static readonly Range Component = new(-1000, 1000, false, "must be from -1000 to 1000");

    /// <summary>Words and lengths of a map together; null after findings.</summary>
    /// <param name="map">With the words of ways.</param>
    /// <param name="range">Of each length.</param>
    /// <param name="place">In a sentence: <c>one move</c>.</param>
    /// <param name="context">For findings.</param>
    public static Vector3D? Sum(FieldReader map, Range range, string place, FileContext context)
    {
        var sum = default(Vector3D);
        var complete = !map.HasUnknownWord;
        foreach (var (plus, minus, axis) in Axes)
        {
            if (map.Has(plus) && map.Has(minus))
            {
                context.Report(
                    FileRules.SaidTwice.Error(map.PositionOf(minus), $"`{plus}` and `{minus}` in {place}: give the difference, one way"));
                complete = false;
            }

            foreach (var (word, sign) in new[] { (plus, 1), (minus, -1) })
            {
                if (!map.Has(word))
                {
                    continue;
                }

                if (map.Length(word, range) is { } length)
                {
                    sum += sign * length.Millimetres * axis;
                }
                else
                {
                    complete = false;
                }
            }
        }

        return complete ? sum : null;
    }

    /// <summary>A place from the corner that the owner chose.</summary>
    public static Vector3D? Place(YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Spot, context) is not { } map)
        {
            return null;
        }

        if (map.Words.Count > 0)
        {
            return Sum(map, Range.SignedLength, "one place", context);
        }

        map.ReportMissing($"this place is empty: write it like `{Vocabulary.Spot.Example}`");
        return null;
    }

    /// <summary>How a port, or every port of a part, lies; null where nothing is said, and after findings.</summary>
    /// <param name="map">With <c>at</c> and <c>faces</c>.</param>
    /// <param name="otherwise">What the part says for all its ports.</param>
    /// <param name="context">For findings.</param>
    public static PortLie? Lie(FieldReader map, PortLie? otherwise, FileContext context)
    {
        var (position, within) = (otherwise?.Position, otherwise?.Within ?? PortLie.UsualWithin);
        if (map.Value("at") is { } at && FieldReader.Of(at, Vocabulary.PortPlace, context) is { } place)
        {
            position = Sum(place, Range.SignedLength, "one place", context);
            within = place.Length("within", Range.LengthOrZero) ?? PortLie.UsualWithin;
            if (!Axes.Any(axis => place.Has(axis.Plus) || place.Has(axis.Minus)))
            {
                place.ReportMissing($"`at` has no place in it: write it like `at: {Vocabulary.PortPlace.Example}`");
                position = null;
            }
        }

        var facing = map.Value("faces") is { } faces ? Facing(faces, map, context) : otherwise?.Facing;
        var word = map.Has("at") ? "at" : "faces";
        return position is null && facing is null ? null
            : new(position, facing, map.Has(word) ? map.PositionOf(word) : otherwise!.At) { Within = within };
    }

    /// <summary>One of the six ways, or three figures: forward, left and up.</summary>
    private static Vector3D? Facing(YamlValue faces, FieldReader map, FileContext context)
    {
        if (faces is YamlText)
        {
            return map.Choice("faces", Ways);
        }

        if (faces is not YamlList { Items: { Count: 3 } items } || !items.All(item => item is YamlText))
        {
            context.Report(FileRules.WrongKind.Error(
                faces.Position,
                "`faces` is the way a line leaves the port: `forward`, `back`, `left`, `right`, `up` or `down`, or three figures for a way "
                    + "between them, forward, left and up, such as `[1, 0, 0.5]`"));
            return null;
        }

        var figures = items.Cast<YamlText>().Select(item => Figure(item, context)).ToList();
        if (figures is not [{ } x, { } y, { } z])
        {
            return null;
        }

        var way = new Vector3D(x, y, z);
        if (way.Norm < 1e-6)
        {
            context.Report(FileRules.OutOfRange.Error(
                faces.Position, "`faces` with nothing but 0 is no way: say how far forward, left and up"));
            return null;
        }

        return 1 / way.Norm * way;
    }

    private static double? Figure(YamlText text, FileContext context)
    {
        var read = double.TryParse(
            text.Text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number);
        return FigureReader.Checked(
            "faces",
            text,
            read ? null : "is not a number: write one, such as `0.5`",
            FileRules.UnreadableNumber,
            number,
            Component,
            context);
    }
}
