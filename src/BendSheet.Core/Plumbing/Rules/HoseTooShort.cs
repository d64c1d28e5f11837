using BendSheet.Core.Findings;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>
/// FAA-H-8083-30, p. 7-19: hose is cut 5 to 8 % longer than its way, because pressure shortens it. Shorter than the way itself, the wheel
/// tears it off.
/// </summary>
public static class HoseTooShort
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "hose-too-short",
        RuleSubject.Making,
        "A hose without slack is torn off by wheel or steering, or by the pressure that shortens it.");

    /// <summary>An error where the hose does not reach, a warning where it has too little slack.</summary>
    public static IEnumerable<Finding> Check(PipeNetwork network)
    {
        foreach (var hose in network.Car.Hoses)
        {
            if (hose is not { Spans: { } spans, Length: { } length } || !length.FallsShortOf(spans.Least))
            {
                continue;
            }

            var (word, span) = spans.Longest;
            var needed = $"it needs {FindingFigures.UpMm(spans.Least)} to {FindingFigures.Mm(spans.Most)}, 5 to 8 % more "
                + "(FAA-H-8083-30, p. 7-19)";
            yield return length.FallsShortOf(span)
                ? Rule.Error(
                    spans.At,
                    $"hose {hose.Name} is {FindingFigures.Mm(length)} long and does not reach over its {FindingFigures.Mm(span)} at "
                        + $"{word}: {needed}")
                : Rule.Warning(
                    spans.At,
                    $"hose {hose.Name} is {FindingFigures.Mm(length)} long, with too little slack over its {FindingFigures.Mm(span)} at "
                        + $"{word}: {needed}, or what its maker gives");
        }
    }
}
