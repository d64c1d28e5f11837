using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>How sure a line is, what was adjusted, and what to measure before cutting, in words.</summary>
internal static class SurveyWords
{
    /// <summary>What a person must know of it before the first mark.</summary>
    public static IEnumerable<string> ReadFirst(LineSurvey survey, LengthNotation notation)
    {
        if (LargestChange(survey, notation) is { } change)
        {
            yield return change;
        }

        yield return $"End B may miss its port by {(survey.IsAtLeast ? "at least " : string.Empty)}{notation.WithUnit(survey.Miss)}, "
            + $"{AngleNotation.Figure(survey.Askew)} askew (one standard deviation"
            + $"{(survey.IsCommonPractice ? "; no tolerance is typed" : string.Empty)}).";
    }

    /// <summary>What to measure on the wire before cutting, what it should be, and room to write; null where nothing is to be.</summary>
    public static string? BeforeCutting(LineSurvey survey, LengthNotation notation) => survey.Next.IsEmpty
        ? null
        : "Before cutting, measure on the wire: "
            + string.Join("; ", survey.Next.Select(
                next => $"{InWords(next.Quantity, next.Name)} (about {notation.WithUnit(next.Expected)}) ______")) + ".";

    /// <summary>The figures that were typed and those that are used, where they print differently.</summary>
    public static IEnumerable<AdjustedFigure> Adjusted(LineSurvey survey, LengthNotation notation) => survey.Measurements
        .Select(one => new AdjustedFigure(one.Name, Figure(one, one.Measured, notation), Figure(one, one.Adjusted, notation)))
        .Where(one => !string.Equals(one.Typed, one.Used, StringComparison.Ordinal));

    private static string? LargestChange(LineSurvey survey, LengthNotation notation)
    {
        if (survey.Measurements.All(one => one.Adjusted == one.Measured))
        {
            return null;
        }

        var most = survey.Measurements.MaxBy(one => Math.Abs(one.Measured - one.Adjusted) / one.Within)!;
        var (typed, used) = (Figure(most, most.Measured, notation), Figure(most, most.Adjusted, notation));
        return string.Equals(typed, used, StringComparison.Ordinal)
            ? "All that was measured agrees."
            : $"Adjusted so that all that was measured agrees best; the largest change: {most.Name} typed {typed}, used {used}.";
    }

    private static string InWords(TapedQuantity quantity, string name) =>
        quantity.Kind == TapedKind.Distance ? name.Replace("-", " to ", StringComparison.Ordinal) : name;

    private static string Figure(SurveyedMeasurement one, double value, LengthNotation notation) => one switch
    {
        { IsRotation: true } => AngleNotation.Rotation(Angle.FromRadians(value)),
        { IsAngle: true } => AngleNotation.Figure(Angle.FromRadians(value)),
        _ => notation.WithUnit(Length.FromMillimetres(value)),
    };
}
