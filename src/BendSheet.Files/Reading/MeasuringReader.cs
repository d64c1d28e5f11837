using BendSheet.Core.Templates;

namespace BendSheet.Files.Reading;

/// <summary>Reads what the templates were made of and how well they were measured. Null after findings that leave it incomplete.</summary>
internal static class MeasuringReader
{
    /// <summary>The template's wire.</summary>
    public static Wire? Wire(FieldReader file, FileContext context)
    {
        if (!file.Has("wire"))
        {
            return Core.Templates.Wire.Unknown;
        }

        if (file.Value("wire") is not { } value || FieldReader.Of(value, Vocabulary.Wire, context) is not { } map)
        {
            return null;
        }

        var diameter = map.Length("diameter", Range.PositiveLength);
        var radius = map.Length("radius", Range.LengthOrZero);
        if (radius is { } bent && diameter is { } thick && bent < 0.5 * thick)
        {
            context.Report(FileRules.OutOfRange.Error(
                map.PositionOf("radius"),
                "the wire's bend radius is less than half its diameter: give the radius to the wire's centreline"));
            return null;
        }

        var isRead = !map.HasUnknownWord && map.Has("diameter") == diameter.HasValue && map.Has("radius") == radius.HasValue;
        return isRead ? new(diameter, radius) : null;
    }

    /// <summary>One standard deviation of each figure; null also where the file does not say.</summary>
    public static MeasuringTolerance? Tolerance(FieldReader file, FileContext context)
    {
        if (file.Value("tolerance") is not { } value || FieldReader.Of(value, Vocabulary.Tolerance, context) is not { } map)
        {
            return null;
        }

        var usual = MeasuringTolerance.CommonPractice;
        var straight = map.Length("straight", Range.LengthOrZero);
        var bend = map.Angle("bend", Range.AngleOrZero);
        var rotate = map.Angle("rotate", Range.AngleOrZero);
        var tape = map.Length("tape", Range.PositiveLength);
        var square = map.Angle("square", Range.AngleOrZero);
        string[] ofRows = ["straight", "bend", "rotate"];
        var missing = map.HasUnknownWord || !ofRows.Any(map.Has) ? [] : ofRows.Where(word => !map.Has(word)).ToList();
        if (missing.Count > 0)
        {
            context.Report(FileRules.MissingWord.Error(
                map.Position,
                $"the tolerance leaves out `{string.Join("` and `", missing)}`: say all three, such as `tolerance: "
                    + $"{Vocabulary.Tolerance.Example}`"));
        }

        return new(straight ?? usual.Straight, bend ?? usual.Bend, rotate ?? usual.Rotate)
        {
            Tape = tape ?? usual.Tape,
            Square = square ?? usual.Square,
        };
    }

    /// <summary>How well lines have to fit; the usual where the file does not say.</summary>
    public static WantedFit Wanted(FieldReader file, FileContext context)
    {
        var usual = WantedFit.CommonPractice;
        return file.Value("wanted") is { } value && FieldReader.Of(value, Vocabulary.Wanted, context) is { } map
            ? new(map.Length("miss", Range.PositiveLength) ?? usual.Miss, map.Angle("askew", Range.PositiveAngle) ?? usual.Askew)
            : usual;
    }
}
