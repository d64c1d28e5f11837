using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Survey;

/// <summary>What is to be said of how a line was measured.</summary>
public static class SurveyRules
{
    /// <summary>The far end is less sure than wanted.</summary>
    public static Rule FarEndUnsure { get; } = new(
        "far-end-unsure",
        RuleSubject.Making,
        "Small errors in the rows add up along the line; a few well-chosen measurements across it take most of them out.");

    /// <summary>Measurements that contradict each other.</summary>
    public static Rule MeasuredApart { get; } = new(
        "measured-apart",
        RuleSubject.Making,
        "If measurements of one shape contradict each other, one was misread, and a tube made from them all fits nowhere.");

    /// <summary>All that is to be said.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, LineSurvey survey)
    {
        if (survey.IsSuspect)
        {
            yield return MeasuredApart.Error(survey.Slips.IsEmpty ? template.At : survey.Slips[0].At, ApartInWords(survey));
        }
        else if (!template.IsCut && !survey.FitsAs(template.Wanted))
        {
            // Without a typed tolerance nobody knows how well it was measured: then it is a note, not a warning.
            yield return survey.IsCommonPractice
                ? FarEndUnsure.Note(template.At, UnsureInWords(template, survey))
                : FarEndUnsure.Warning(template.At, UnsureInWords(template, survey));
        }
    }

    /// <summary>What is to be said of a line that was not adjusted: what was taped beside it would otherwise do nothing.</summary>
    public static IEnumerable<Finding> CheckWithoutSurvey(LineTemplate template) =>
        template.Beside is [var first, ..] && template.Route.Bends.Length > LineSurvey.MostFigures / 3
            ? [
                MeasuredApart.Error(
                    first.At,
                    FormattableString.Invariant($"a line of more than {LineSurvey.MostFigures / 3} bends is not adjusted, and this would ")
                        + "do nothing: take `taped` out, or divide the line"),
            ]
            : [];

    private static string UnsureInWords(LineTemplate template, LineSurvey survey)
    {
        // Twice the deviation is enough on nineteen lines of twenty.
        var needed = Length.FromMillimetres(Math.Ceiling(2 * survey.Along.Millimetres));
        var trim = survey.Along > template.To.Trim && survey.Along > template.Wanted.Miss
            ? $"; or leave {FindingFigures.Mm(needed)} to trim at B and flare it on the car"
            : string.Empty;
        var atLeast = survey.IsAtLeast ? "at least " : string.Empty;
        var unsure = $"end B may miss its port by {atLeast}{FindingFigures.Mm(survey.Miss)} and enter it "
            + $"{AngleNotation.Figure(survey.Askew)} askew (2 times in 3 within that)";
        return survey.Next.IsEmpty
            ? $"{unsure}: all that could be taped across it is taken, so measure its rows again, more surely{trim}"
            : $"{unsure}: before cutting, measure on {(template.HasWire ? "the wire" : "the car")} "
                + string.Join(
                    ", ", survey.Next.Select(next => $"{next.Name} (about {FindingFigures.Mm(next.Expected)}{next.WhereBelowZero})"))
                + $" and type them as `taped`{trim}";
    }

    private static string ApartInWords(LineSurvey survey)
    {
        const string Apart = "the measurements of this line contradict each other";
        if (survey.Slips.IsEmpty)
        {
            var worst = survey.Measurements.MaxBy(one => Math.Abs(one.Standardised ?? 0))!;
            var why = survey.AllSlipsTried ? ", and no single slip explains it" : string.Empty;
            return $"{Apart}{why}: measure again, {worst.Name} first, which is "
                + $"{Figure(worst.Measured, worst.IsAngle)} and {Figure(worst.Adjusted, worst.IsAngle)} by the others";
        }

        var slips = survey.Slips.Select(slip =>
            $"with {slip.Name}{Where(slip, survey.Slips[0])} {Figure(slip, slip.Instead)} instead of {Figure(slip, slip.Measured)} "
                + $"everything agrees to {FindingFigures.Mm(Length.FromMillimetres(slip.AgreesTo))}");
        var which = survey.Slips.Length == 2 ? "them" : "the first two";
        var tell = survey.TellsSlipsApart is { } name ? $"; measure {name} as well, which tells {which} apart" : string.Empty;
        return $"{Apart}: {string.Join(", or ", slips)}{tell}; look at the wire again and retype what is wrong";
    }

    /// <summary>The finding points at the first slip; a slip in another row names its line.</summary>
    private static string Where(Slip slip, Slip first) =>
        slip.At.Line == first.At.Line ? string.Empty : FormattableString.Invariant($" (line {slip.At.Line})");

    private static string Figure(Slip slip, double value) => slip.IsRotation
        ? AngleNotation.Rotation(Angle.FromRadians(value))
        : Figure(value, slip.IsAngle);

    private static string Figure(double value, bool isAngle) => isAngle
        ? AngleNotation.Figure(Angle.FromRadians(value))
        : FindingFigures.Mm(Length.FromMillimetres(value));
}
