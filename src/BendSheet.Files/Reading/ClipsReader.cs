using BendSheet.Core.Workshop;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>Reads how lines are held: at the top of a file for all of them, or in a line for that one.</summary>
internal static class ClipsReader
{
    /// <summary>For one line without the clips that the top of the file asks for.</summary>
    private const string None = "none";

    /// <summary>What <c>clips</c> says in a map; null where it says none, and after findings that leave it incomplete.</summary>
    public static Clipping? Read(FieldReader map, FileContext context)
    {
        if (map.Value("clips") is not { } value
            || value is YamlText { Text: None }
            || FieldReader.Of(value, Vocabulary.Clips, context) is not { } clips)
        {
            return null;
        }

        var every = clips.Length("every", Range.ClipSpacing);
        var fromEnds = clips.Length("from-ends", Range.LengthOrZero);
        var hole = clips.Length("hole", Range.PositiveLength);
        var width = clips.Length("width", Range.ClipWidth) ?? Clipping.UsualWidth;
        if (!clips.Has("every"))
        {
            clips.ReportMissing(
                $"clips need the longest way between two of them: add `every`, such as `clips: {Vocabulary.Clips.Example}`");
        }

        if (every is not { } spacing)
        {
            return null;
        }

        if (fromEnds > spacing)
        {
            context.Report(FileRules.OutOfRange.Error(
                clips.PositionOf("from-ends"),
                "`from-ends` is more than `every`, so that the ends would hang free for longer than the rest: make it smaller, or leave "
                    + "it out for half of `every`"));
        }

        if (width > spacing)
        {
            context.Report(FileRules.OutOfRange.Error(
                clips.PositionOf(clips.Has("width") ? "width" : "every"),
                "a clip is wider than the way from one to the next, so that they would lie on one another: make `every` larger, or `width` "
                    + "smaller"));
        }

        return new(spacing, clips.Value("every")!.Position, fromEnds ?? (0.5 * spacing), hole)
        {
            Width = width,
            Rail = clips.FreeText("rail"),
        };
    }
}
