using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// A bend some degrees short of 180° has its corner far out. The corner stays where the wire has it, so on a larger radius the bend comes
/// to lie far back along its legs, where the wire had nothing; who bends a U wants it where the wire has it.
/// </summary>
/// <remarks>
/// From corner to tangent point is R·tan(bend/2): at 178° 57 times the difference of the radii. A protractor cannot tell 178° from 180°.
/// </remarks>
public static class NearlyU
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "nearly-u-bend",
        RuleSubject.Making,
        "Just short of 180° the corner lies far out, and a bend on a radius other than the wire's moves a long way along its legs.");

    /// <summary>Common practice, no source: what people call a U-bend and a protractor can hardly tell from one.</summary>
    private static Angle From => Angle.FromDegrees(175);

    /// <summary>
    /// From here on a bend moves by nearly four times the difference of the radii and more; judged by what fits under a car, no source.
    /// </summary>
    private static Angle FarOutFrom => Angle.FromDegrees(150);

    /// <summary>Whether a person may have meant a U-bend, and the bend has a corner all the same.</summary>
    public static bool Is(Bend bend) => HasCornerFrom(From, bend);

    /// <summary>
    /// A finding at each such bend whose tube radius is not the wire's, unless its legs are too short for it, which says the same.
    /// </summary>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        for (var i = 0; i < layout.Bends.Length; i++)
        {
            var bend = layout.Bends[i];
            var fits = layout.Legs[i].StraightLeft >= Length.Zero && layout.Legs[i + 1].StraightLeft >= Length.Zero;
            if (!HasCornerFrom(FarOutFrom, bend.Bend) || !fits || template.Wire.Radius is not { } wire)
            {
                continue;
            }

            var larger = wire.FallsShortOf(bend.Radius);
            var difference = larger ? bend.Radius - wire : wire - bend.Radius;
            var moved = Math.Tan(bend.Bend.Turn.Radians / 2) * difference;
            if (moved > Tolerances.TapeSlip)
            {
                yield return Rule.Warning(
                    bend.Bend.TurnAt,
                    $"bend {i + 1} ({AngleNotation.Figure(bend.Bend.Turn)}) begins {FindingFigures.Mm(moved)} "
                    + $"{(larger ? "further from" : "nearer to")} its corner in tube than in the wire, because a bend so near to 180° "
                    + "has its corner far out; "
                    + (Is(bend.Bend)
                        ? $"if it is a U-bend that stays where the wire has it, {InWords(template)}: its legs then come out "
                            + $"{FindingFigures.Mm(2 * difference)} {(larger ? "further apart" : "closer together")}"
                        : $"if that does not fit, bend the wire round something of the tool's radius, {FindingFigures.Mm(bend.Radius)}, "
                            + "and measure it again"));
            }
        }
    }

    private static bool HasCornerFrom(Angle turn, Bend bend) => bend is { HasCorner: true, FromTangent: false } && bend.Turn >= turn;

    /// <summary>How to say that the bend is a U, in the imperative.</summary>
    internal static string InWords(LineTemplate template) => template.Habit == MeasuredTo.Straight
        ? "type `bend: 180`"
        : "type `bend: 180`, and measure the flat parts (`measured: straight`)";
}
