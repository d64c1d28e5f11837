using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>How sure a line is, what was adjusted, and what to measure before cutting, in words.</summary>
internal static class SurveyWords
{
    /// <summary>How sure B is.</summary>
    public static string HowSure(LineSurvey survey, LengthNotation notation) =>
        $"End B may miss its port by {(survey.IsAtLeast ? "at least " : string.Empty)}{notation.WithUnit(survey.Miss)}, "
            + $"{AngleNotation.Figure(survey.Askew)} askew "
            + $"({(survey.IsCommonPractice ? "no tolerance typed" : "2 times in 3 within that")}).";

    /// <summary>What to measure on wire or car before cutting, what it should be, and room to write; null where there is nothing.</summary>
    public static string? BeforeCutting(LineSurvey survey, LengthNotation notation) => survey.Next.IsEmpty
        ? null
        : $"Before cutting, measure on {Where(survey.Line)}: "
            + string.Join("; ", survey.Next.Select(
                next => $"{next.Quantity.InWords(survey.Line.Route.Bends.Length)} "
                    + $"(about {notation.WithUnit(next.Expected)}{next.WhereBelowZero}) ______")) + ".";

    /// <summary>What the line was measured on.</summary>
    private static string Where(LineTemplate line) => line.HasWire ? "the wire" : "the car";

    /// <summary>The figures that were typed and those that are used, where they print differently.</summary>
    public static IEnumerable<AdjustedFigure> Adjusted(LineSurvey survey, LengthNotation notation) => survey.Measurements
        .Where(one => one.Adjusted != one.Measured)
        .Select(one => new AdjustedFigure(one.Name, Figure(one, one.Measured, notation), Figure(one, one.Adjusted, notation)))
        .Where(one => !string.Equals(one.Typed, one.Used, StringComparison.Ordinal));

    /// <summary>What the adjustment changed most; null where nothing prints otherwise.</summary>
    public static string? LargestChange(LineSurvey survey, LengthNotation notation)
    {
        if (survey.Measurements.All(one => one.Adjusted == one.Measured))
        {
            return null;
        }

        var most = survey.Measurements.MaxBy(one => Math.Abs(one.Measured - one.Adjusted) / one.Within)!;
        var (typed, used) = (Figure(most, most.Measured, notation), Figure(most, most.Adjusted, notation));
        return string.Equals(typed, used, StringComparison.Ordinal)
            ? null
            : $"Adjusted so that all that was measured agrees best; the largest change: {most.Name} typed {typed}, used {used}.";
    }

    private static string Figure(SurveyedMeasurement one, double value, LengthNotation notation) => one switch
    {
        { IsRotation: true } => AngleNotation.Rotation(Angle.FromRadians(value)),
        { IsAngle: true } => AngleNotation.Figure(Angle.FromRadians(value)),
        _ => notation.WithUnit(Length.FromMillimetres(value)),
    };
}
