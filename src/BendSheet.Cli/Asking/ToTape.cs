using BendSheet.Core.Survey;

namespace BendSheet.Cli.Asking;

/// <summary>What is to be measured across the wire of a line whose last leg was said.</summary>
/// <param name="Words">What <c>check</c> says of the far end, as a sentence; empty where there is nothing to say.</param>
/// <param name="First">What helps most, as it is typed; null where nothing more does.</param>
internal sealed record ToTape(string Words, string? First)
{
    private static readonly ToTape Nothing = new(string.Empty, null);

    /// <summary>Of the last line.</summary>
    /// <param name="said">So far.</param>
    public static ToTape Of(Said said)
    {
        var plan = Trial.OfAllThere(string.Empty, said).Plan;
        if (plan.Lines is not [.., { Survey: { IsSuspect: false } survey } line]
            || !string.Equals(line.Template.Name, plan.Measured.LineNames[^1], StringComparison.Ordinal))
        {
            return Nothing;
        }

        if (survey.FitsAs(line.Template.Wanted))
        {
            var miss = plan.Measured.Notation.InBoth(survey.Miss);
            return new($"End B may miss its port by {miss} (2 times in 3 within that), which is near enough.", null);
        }

        return line.Findings.FirstOrDefault(finding => finding.Rule == SurveyRules.FarEndUnsure) is { Message: var unsure }
            ? new($"{char.ToUpperInvariant(unsure[0])}{unsure[1..]}.", survey.Next.IsEmpty ? null : survey.Next[0].Name)
            : Nothing;
    }
}
