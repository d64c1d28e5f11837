using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// The straight at an end must take the hardware, which otherwise sits on the bend and cannot be brought back to the flare; and where the
/// end can only be flared after the bends, because it is trimmed then, also the flaring bar. Common practice, no source.
/// </summary>
public static class EndTooShort
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "end-too-short",
        RuleSubject.Making,
        "Nut and sleeve need straight tube at the end, and so does the flaring bar; hardware must never sit on a bend.");

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
                    $"the line is {FindingFigures.UpMm(both - only.StraightLeft)} too short for its two ends: their fittings need "
                        + $"{FindingFigures.UpMm(both)} of straight tube together; make the line longer, or use fittings that need less");
            }

            yield break;
        }

        if (Short(TubeEnd.A, "before", template.From, layout.Legs[0], layout.Bends[0]) is { } atA)
        {
            yield return atA;
        }

        if (Short(TubeEnd.B, "after", template.To, layout.Legs[^1], layout.Bends[^1]) is { } atB)
        {
            yield return atB;
        }
    }

    /// <summary>Whether the straight is too short for an end's hardware, or for a flare that can only be made after the bends.</summary>
    internal static bool IsShort(LineEnd end, Length straight) =>
        end.Fitting is { } fitting
            && straight.FallsShortOf(end.IsFlared && end.Trim > Length.Zero ? fitting.StraightNeeded : fitting.HardwareLength);

    /// <summary>A leg too short even for its bends is the other rule's subject: one cause, one finding.</summary>
    private static Finding? Short(TubeEnd which, string side, LineEnd end, LegLayout leg, BendLayout bend)
    {
        if (leg.StraightLeft < Length.Zero || !IsShort(end, leg.StraightLeft))
        {
            return null;
        }

        var fitting = end.Fitting!;
        var forFlare = leg.StraightLeft >= fitting.HardwareLength;
        var need = forFlare ? fitting.StraightNeeded : fitting.HardwareLength;
        var reason = forFlare ? "to be flared once it is trimmed" : "for the hardware";
        return Rule.Error(
            leg.At,
            $"the straight at end {which} is {FindingFigures.UpMm(need - leg.StraightLeft)} too short: fitting {fitting.Name} needs "
                + $"{FindingFigures.UpMm(need)} {reason} and {FindingFigures.Mm(leg.StraightLeft)} is left {side} the bend; "
                + $"{Cure(leg, bend, need)}{(forFlare ? ", or leave `trim` out and flare before bending" : string.Empty)}");
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
