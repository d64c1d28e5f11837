using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Bench.Rules;

/// <summary>
/// Two bends on the tool's radius need more tube than lies between their corners. The wire could do it because its own corners are
/// tighter: the most common way for a template to be impossible in tube.
/// </summary>
public static class LegTooShort
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "leg-too-short",
        RuleSubject.Making,
        "A bend on the tool's radius starts before its corner; two near bends can need more tube than lies between them.");

    /// <summary>A finding at each leg that is too short for its bends.</summary>
    /// <remarks>The two slopes of a saddle are alike, and are one finding.</remarks>
    public static IEnumerable<Finding> Check(LineTemplate template, RouteLayout layout)
    {
        var said = new HashSet<(InnerLeg Inner, SourcePosition At)>();
        for (var i = 0; i < layout.Legs.Length; i++)
        {
            var leg = layout.Legs[i];
            if (leg.StraightLeft >= Length.Zero)
            {
                continue;
            }

            var before = i == 0 ? null : layout.Bends[i - 1];
            var after = i == layout.Bends.Length ? null : layout.Bends[i];
            var inner = template.Route.Legs[i].Inner;
            if (inner is null || said.Add((inner, leg.At)))
            {
                yield return Rule.Error(leg.At, Message(template, i + 1, inner, leg, Length.Zero - leg.StraightLeft, before, after));
            }
        }
    }

    private static string Message(
        LineTemplate template, int number, InnerLeg? inner, LegLayout layout, Length shortfall, BendLayout? before, BendLayout? after)
    {
        var whole = layout.Whole;
        var bends = (before, after) switch
        {
            ({ } first, { } second) =>
                $"its two bends ({AngleNotation.Figure(first.Bend.Turn)} and {AngleNotation.Figure(second.Bend.Turn)})",
            _ => $"its bend ({AngleNotation.Figure((before ?? after)!.Bend.Turn)})",
        };
        var needs = before is null || after is null ? "it needs" : "they need";
        var need = (before?.Setback ?? Length.Zero) + (after?.Setback ?? Length.Zero);
        var halfTangents = HalfTangent(before) + HalfTangent(after);
        var radius = whole.Millimetres / halfTangents;
        var nearlyU = new[] { before, after }.Any(bend => bend is not null && NearlyU.Is(bend.Bend));
        var cure = inner is not null
            ? "type " + InnerLegCure.InWords(inner, whole, before!, after!)
            + (radius > 0 ? $", or use a bender of at most {FindingFigures.DownMm(Length.FromMillimetres(radius))} radius" : string.Empty)
            : nearlyU
            ? $"a bend so near to 180° has its corner far out: if it is a U-bend, {NearlyU.InWords(template)}"
            : BetweenLegs(template, number - 1, before, after) + (radius > 0
            ? $"the largest radius that would fit is {FindingFigures.DownMm(Length.FromMillimetres(radius))}; measure again, use a "
                + "smaller bend or move the corners apart"
            : "no radius would fit; measure again");
        var leg = inner is null
            ? FormattableString.Invariant($"leg {number}")
            : FormattableString.Invariant($"{inner.Name} (leg {number})");
        return $"{leg} is {FindingFigures.UpMm(shortfall)} too short for {bends}: {needs} {FindingFigures.UpMm(need)} and the leg is "
            + $"{FindingFigures.Mm(whole)} {(layout.HasCorners ? "corner to corner" : "from the U-bend to the other corner")}; {cure}";
    }

    /// <summary>
    /// Bends of more than 90° with which the leg would fit if their figures were the angles between the legs, which is what a square held
    /// against a wire shows; null where it would not, or where no bend was typed.
    /// </summary>
    private static string? BetweenLegs(LineTemplate template, int leg, BendLayout? before, BendLayout? after)
    {
        if (!template.Corners.IsEmpty || template.Taped is not null)
        {
            return null;
        }

        var sharp = new[] { before, after }.OfType<BendLayout>().Where(bend => bend.Bend.Turn.Degrees is > 90 and < 180).ToList();
        return sharp.Select(bend => new List<BendLayout> { bend }).Append(sharp)
            .Where(doubted => doubted.Count > 0 && Fits(template, template.Route.Legs[leg], before, after, doubted))
            .Select(Doubt).FirstOrDefault();
    }

    private static bool Fits(LineTemplate template, Leg leg, BendLayout? before, BendLayout? after, List<BendLayout> doubted)
    {
        return !RouteLayout.StraightLeft(template, leg, leg.Measured, Shape(before), Shape(after)).FallsShortOf(Length.Zero);

        BendShape? Shape(BendLayout? bend) => bend is null ? null
            : BendShape.Of(bend.Bend, doubted.Contains(bend) ? OtherAngle(bend.Bend.Turn) : bend.Bend.Turn);
    }

    private static string Doubt(List<BendLayout> doubted)
    {
        var turns = doubted.ConvertAll(bend => AngleNotation.Figure(bend.Bend.Turn));
        var others = string.Join(" and ", doubted.Select(bend => AngleNotation.Figure(OtherAngle(bend.Bend.Turn))));
        var type = string.Join(" and ", doubted.Select(bend => $"`included: {AngleNotation.Typed(bend.Bend.Turn)}`"));
        return (doubted.Count == 1
            ? $"a bend of {others} would fit: if {turns[0]} is the angle between the legs, type {type}"
            : $"bends of {others} would fit: if {string.Join(" and ", turns)} are the angles between the legs, type {type}")
            + "; otherwise ";
    }

    private static Angle OtherAngle(Angle turn) => Angle.FromDegrees(180 - turn.Degrees);

    private static double HalfTangent(BendLayout? bend) => bend is { Bend.HasCorner: true } ? Math.Tan(bend.Bend.Turn.Radians / 2) : 0;
}
