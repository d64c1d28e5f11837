using BendSheet.Core.Centreline;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Limits;

/// <summary>
/// The straight at an end must take the flaring bar with the nut and sleeve slid back behind it; otherwise the hardware sits on the bend
/// and cannot be brought back to the flare, or the bar does not close. Common practice, no source.
/// </summary>
public static class EndTooShort
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "end-too-short", RuleSubject.Making, "Flaring bar, nut and sleeve need straight tube at the end; hardware must never sit on a bend.");

    /// <summary>A finding at each end straight that is shorter than its fitting needs.</summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        if (layout.Bends.IsEmpty)
        {
            var both = (template.From.Fitting?.StraightNeeded ?? Length.Zero) + (template.To.Fitting?.StraightNeeded ?? Length.Zero);
            var only = layout.Legs[0];
            if (only.StraightLeft.FallsShortOf(both))
            {
                yield return Rule.Error(
                    only.At,
                    $"the line is {FindingFigures.UpMm(both - only.StraightLeft)} too short for its two ends: their fittings need {FindingFigures.UpMm(both)} of straight tube together");
            }

            yield break;
        }

        if (Short("A", "before", template.From, layout.Legs[0], layout.Bends[0]) is { } atA)
        {
            yield return atA;
        }

        if (Short("B", "after", template.To, layout.Legs[^1], layout.Bends[^1]) is { } atB)
        {
            yield return atB;
        }
    }

    /// <summary>A leg too short even for its bends is the other rule's subject: one cause, one finding.</summary>
    private static Finding? Short(string end, string side, LineEnd lineEnd, LegLayout leg, BendLayout bend)
    {
        if (lineEnd.Fitting is not { } fitting || leg.StraightLeft < Length.Zero || !leg.StraightLeft.FallsShortOf(fitting.StraightNeeded))
        {
            return null;
        }

        var need = fitting.StraightNeeded;
        var reason = fitting.Straight >= fitting.SlideOnLength ? "to be flared" : "for what is slid on";
        return Rule.Error(
            leg.At,
            $"the straight at end {end} is {FindingFigures.UpMm(need - leg.StraightLeft)} too short: fitting {fitting.Name} needs {FindingFigures.UpMm(need)} {reason} and {FindingFigures.Mm(leg.StraightLeft)} is left {side} the bend; {Cure(leg, bend, need)}");
    }

    private static string Cure(LegLayout leg, BendLayout bend, Length need)
    {
        var radius = leg.CornerToCorner is { } corner
            ? (corner - need).Millimetres / Math.Tan(bend.Bend.Turn.Radians / 2)
            : 0;
        return radius > 0
            ? $"move the bend further from the end, or use a radius of at most {FindingFigures.DownMm(Length.FromMillimetres(radius))}"
            : "move the bend further from the end";
    }
}
