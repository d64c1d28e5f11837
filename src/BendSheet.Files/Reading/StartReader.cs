using BendSheet.Core.Geometry;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads how a line of rows lies on the car: the way it leaves end A and the way its first bend turns.</summary>
internal static class StartReader
{
    private static readonly string[] Needed = ["heading", "towards"];

    /// <summary>The frame of end A; null after findings.</summary>
    public static Frame? Read(YamlValue value, FileContext context)
    {
        if (FieldReader.Of(value, Vocabulary.Start, context) is not { } map)
        {
            return null;
        }

        var heading = map.Choice("heading", SpotReader.Ways);
        var towards = map.Choice("towards", SpotReader.Ways);
        foreach (var word in Needed.Where(word => !map.Has(word)))
        {
            context.Report(FileRules.MissingWord.Error(
                map.Position,
                $"`start` does not say `{word}`: write the way the line leaves end A and the way its first bend turns, such as `start: "
                    + $"{Vocabulary.Start.Example}`"));
        }

        var place = map.Value("at") is { } at ? SpotReader.Place(at, context) : null;
        if (heading is not { } ahead || towards is not { } side || map.Has("at") != place.HasValue)
        {
            return null;
        }

        if (Math.Abs(ahead.Dot(side)) > 0.5)
        {
            context.Report(FileRules.OutOfRange.Error(
                map.PositionOf("towards"),
                "a bend cannot turn the way the tube goes already, or straight back: `towards` must be square to `heading`"));
            return null;
        }

        return new(place ?? default, ahead, side);
    }
}
