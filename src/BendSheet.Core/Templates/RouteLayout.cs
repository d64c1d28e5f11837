using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>
/// A leg of the tube between two neighbouring corners or ends. A bend of 180° or more has no corner: the leg ends where the bend begins.
/// </summary>
/// <param name="Whole">Along the centreline's straights, prolonged to the corners.</param>
/// <param name="HasCorners">False beside a bend of 180° or more.</param>
/// <param name="StraightLeft">What stays straight between the bends; negative where the leg is too short for them.</param>
/// <param name="At">Where it was typed.</param>
public sealed record LegLayout(Length Whole, bool HasCorners, Length StraightLeft, SourcePosition At)
{
    /// <summary>The whole leg; null beside a bend of 180° or more.</summary>
    public Length? CornerToCorner => HasCorners ? Whole : null;
}

/// <summary>A bend on the tool's radius.</summary>
/// <param name="Bend">As measured.</param>
public sealed record BendLayout(Bend Bend)
{
    /// <summary>The tool's radius to the centreline.</summary>
    public Length Radius => Bend.Bender.Radius;

    /// <summary>From the corner to the tangent point, R·tan(bend/2); null from 180° on.</summary>
    public Length? Setback => Bend.HasCorner ? Math.Tan(Bend.Turn.Radians / 2) * Radius : null;

    /// <summary>Centreline length of the arc, R·bend.</summary>
    public Length Arc => Bend.Turn.Radians * Radius;

    /// <summary>What the way round saves against the way over the corner, 2·setback − arc; null from 180° on.</summary>
    public Length? Gain => Setback is { } setback ? (2 * setback) - Arc : null;
}

/// <summary>
/// The template carried over to the tool's radius: legs, setbacks and the straights left between the bends. It exists also for a line
/// that cannot be made, so that a finding can say by how much.
/// </summary>
/// <param name="Legs">From end A, one more than bends.</param>
/// <param name="Bends">From end A.</param>
public sealed record RouteLayout(ImmutableArray<LegLayout> Legs, ImmutableArray<BendLayout> Bends)
{
    /// <summary>A leg beside a bend without a corner was not measured as a flat part.</summary>
    public static Rule NoCorner { get; } = new(
        "no-corner", RuleSubject.File, "A bend of 180° or more has no corner to measure to: only its flat parts can be measured.");

    /// <summary>Carries a template over to the tube.</summary>
    /// <returns>No layout, but findings, where a leg beside a bend of 180° or more was measured to a corner.</returns>
    public static (RouteLayout? Layout, ImmutableArray<Finding> Findings) Of(LineTemplate template)
    {
        var route = template.Route;
        if (template.Habit != MeasuredTo.Straight && route.Bends.Any(bend => !bend.HasCorner))
        {
            var findings = route.Bends.Where(bend => !bend.HasCorner).Select(bend => NoCorner.Error(
                bend.TurnAt,
                $"a bend of {AngleNotation.Figure(bend.Turn)} has no corner to measure to: measure the flat parts beside it and say "
                    + "`measured: straight` for this line"));
            return (null, [.. findings]);
        }

        var bends = route.Bends.Select(bend => new BendLayout(bend)).ToImmutableArray();
        var legs = route.Legs.Select((leg, i) => LegOf(
            template, leg, i == 0 ? null : bends[i - 1], i == bends.Length ? null : bends[i]));
        return (new([.. legs], bends), []);
    }

    /// <summary>The tube in space.</summary>
    /// <param name="start">How the line lies; <see cref="Frame.Default"/> where the template does not say.</param>
    /// <exception cref="ArgumentException">A leg is too short for its bends.</exception>
    public TubeCentreline Centreline(Frame start)
    {
        var straights = new Length[Legs.Length];
        var arcs = new ArcAhead[Bends.Length];
        for (var i = 0; i < straights.Length; i++)
        {
            straights[i] = Legs[i].StraightLeft;
        }

        for (var i = 0; i < arcs.Length; i++)
        {
            arcs[i] = new(Bends[i].Bend.Rotation, Bends[i].Radius, Bends[i].Bend.Turn);
        }

        return TubeCentreline.Walk(start, straights, arcs);
    }

    /// <summary>What stays straight of a leg between its bends; below zero where it is too short for them.</summary>
    /// <param name="template">With the wire, and how its legs were measured.</param>
    /// <param name="leg">Which.</param>
    /// <param name="measured">Its length as it was, or as it may have been, measured.</param>
    /// <param name="before">The bend at its start; null at end A.</param>
    /// <param name="after">The bend at its end; null at end B.</param>
    internal static Length StraightLeft(LineTemplate template, Leg leg, Length measured, BendShape? before, BendShape? after) =>
        Whole(template, leg, measured, before, after) - SetbackOf(before) - SetbackOf(after);

    /// <summary>How much the straight part of a leg changes with the bend at one of its ends, in millimetres for each radian.</summary>
    /// <param name="template">With the wire, and how its legs were measured.</param>
    /// <param name="leg">Which.</param>
    /// <param name="bend">At one of its ends.</param>
    internal static double StraightSlope(LineTemplate template, Leg leg, BendShape bend)
    {
        var touched = CornerTouched(bend) is { } turn ? LegConversion.SlopeWith(leg.Habit ?? template.Habit, template.Wire, turn) : 0;
        return bend.HasCorner && !bend.FromTangent ? touched - bend.SetbackSlope : touched;
    }

    /// <summary>From corner to corner; at a bend without one, from where it begins.</summary>
    private static Length Whole(LineTemplate template, Leg leg, Length measured, BendShape? before, BendShape? after)
    {
        // Where a bend of 180° or more begins is where the wire has it, and a corner at the other end stays where it is as well.
        var (first, second) = (CornerTouched(before), CornerTouched(after));
        var between = first is null && second is null
            ? measured
            : LegConversion.CornerToCorner(measured, leg.Habit ?? template.Habit, template.Wire, first, second);
        return between + BeyondTangent(before) + BeyondTangent(after);
    }

    private static LegLayout LegOf(LineTemplate template, Leg leg, BendLayout? before, BendLayout? after)
    {
        var (first, second) = (BendShape.Of(before), BendShape.Of(after));
        var whole = Whole(template, leg, leg.Measured, first, second);
        var left = whole - SetbackOf(first) - SetbackOf(second);

        // Bends that just meet leave nothing, not the last digit of a subtraction.
        return new(
            whole, before?.Bend.HasCorner != false && after?.Bend.HasCorner != false, left < Length.Zero && !left.FallsShortOf(Length.Zero)
                ? Length.Zero : left, leg.At);
    }

    /// <summary>
    /// The bend whose corner the ruler touched; null at a free end, and at a bend that was measured to its tangent point or has no corner.
    /// </summary>
    private static Angle? CornerTouched(BendShape? bend) => bend is { FromTangent: false, HasCorner: true } ? bend.Value.Turn : null;

    private static Length BeyondTangent(BendShape? bend) => bend is { FromTangent: true } ? SetbackOf(bend) : Length.Zero;

    private static Length SetbackOf(BendShape? bend) => bend is { HasCorner: true } ? bend.Value.Setback : Length.Zero;
}

/// <summary>What a leg beside a bend depends on.</summary>
/// <param name="Turn">What the tube turns.</param>
/// <param name="Radius">To the centreline.</param>
/// <param name="HasCorner">False from 180° on.</param>
/// <param name="FromTangent">The straights beside it were measured to its tangent points.</param>
internal readonly record struct BendShape(Angle Turn, Length Radius, bool HasCorner, bool FromTangent)
{
    /// <summary>From the corner to the tangent point, R·tan(bend/2); of a bend with a corner.</summary>
    public Length Setback => Math.Tan(Turn.Radians / 2) * Radius;

    /// <summary>How much the setback changes with the turn, in millimetres for each radian.</summary>
    public double SetbackSlope => LegConversion.HalfTangentSlope(Turn) * Radius.Millimetres;

    /// <summary>Of a bend, if it turned so much.</summary>
    public static BendShape Of(Bend bend, Angle turn) => new(turn, bend.Bender.Radius, bend.HasCorner, bend.FromTangent);

    /// <summary>Of a bend on the tool's radius; null for none.</summary>
    public static BendShape? Of(BendLayout? bend) => bend is null ? null : Of(bend.Bend, bend.Bend.Turn);
}
