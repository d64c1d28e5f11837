using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Bench.Rules;

/// <summary>A clip needs straight tube; over bends and coils the line hangs free for longer than was asked for.</summary>
public static class NoPlaceForClip
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "no-place-for-clip",
        RuleSubject.Making,
        "A clip needs straight tube; where there is none, the clips beside it end up too far apart.");

    /// <summary>A finding at the spacing asked for, for each stretch in which it cannot be had.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, ClipPlan? plan)
    {
        if (template.Clips is not { } wish || plan is null)
        {
            return [];
        }

        var straight = FindingFigures.UpMm(2 * wish.Beside(template.Tube));
        return plan switch
        {
            { TooMany: true } =>
            [
                Rule.Warning(
                    wish.EveryAt,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"line {template.Name} would need more than {ClipPlan.Most} clips, and none is placed: "
                            + $"check `every` and its unit")),
            ],
            { Clips.IsEmpty: true } =>
            [
                Rule.Warning(
                    wish.EveryAt,
                    $"line {template.Name} has no place for a clip: leave a straight of at least {straight} between bends, ends and "
                        + "hardware, or say `clips: none` in this line"),
            ],
            _ => plan.TooLong.Select(gap => Rule.Warning(
                wish.EveryAt,
                $"line {template.Name} goes {FindingFigures.UpMm(gap.Length)} without a clip, from {FindingFigures.Mm(gap.From)} to "
                    + $"{FindingFigures.Mm(gap.To)} along the tube from A, where `every` allows {FindingFigures.Mm(wish.Every)}: leave a "
                    + $"straight of at least {straight} there, or hold it in another way")),
        };
    }
}
