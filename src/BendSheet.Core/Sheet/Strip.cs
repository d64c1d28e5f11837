using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Fittings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>The still straight tube with everything on it. Places are from the cut end of A.</summary>
/// <param name="Length">The cut length.</param>
/// <param name="Bends">From end A.</param>
/// <param name="HardwareA">What is slid on at end A, from the end inwards.</param>
/// <param name="HardwareB">What is slid on at end B, from the end inwards.</param>
/// <param name="FlaredA">End A gets a flare.</param>
/// <param name="FlaredB">End B gets a flare.</param>
/// <param name="Trim">To be cut off end B on the car.</param>
public sealed record Strip(
    Length Length,
    ImmutableArray<StripBend> Bends,
    ImmutableArray<EndHardware> HardwareA,
    ImmutableArray<EndHardware> HardwareB,
    bool FlaredA,
    bool FlaredB,
    Length Trim)
{
    /// <summary>Middles of the clips.</summary>
    public ImmutableArray<Length> Clips { get; init; } = [];

    /// <summary>What the marks count from: zero where that is the cut end of A.</summary>
    public Length Datum { get; init; }

    /// <summary>The strip of a planned line.</summary>
    public static Strip Of(LineTemplate template, BenchPlan plan, LengthNotation notation) => new(
        plan.CutLength,
        [.. plan.Bends.Select(bend => StripBend.Of(bend, plan, notation))],
        FromTheEnd(template.From),
        FromTheEnd(template.To),
        template.From.IsFlared,
        template.To.IsFlared,
        template.To.Trim)
    {
        Datum = plan.Datum,
    };

    /// <summary>What goes on first ends up furthest from the end.</summary>
    private static ImmutableArray<EndHardware> FromTheEnd(LineEnd end) =>
        end.Fitting is { } fitting ? [.. fitting.Hardware.Reverse()] : [];
}

/// <summary>A bend on the still straight tube.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Start">Start of the bend.</param>
/// <param name="End">End of the bend.</param>
/// <param name="Mark">Where the pen goes.</param>
/// <param name="Label">The same from the datum, as it is printed.</param>
public sealed record StripBend(int Number, Length Start, Length End, Length Mark, string Label)
{
    /// <summary>Where the pen line stands when it is made, as in the table.</summary>
    public Angle LineAt { get; init; }

    /// <summary>The same as on a clock.</summary>
    public string LineClock => AngleNotation.Clock(LineAt);

    /// <summary>The same in degrees.</summary>
    public string LineFigure => AngleNotation.Dial(LineAt);

    /// <summary>The letter of the end whose side is held.</summary>
    public string Held { get; init; } = string.Empty;

    /// <summary>
    /// How the plane of the bend is rolled from the bend before it on the tube, whatever the order of work; empty where it is not.
    /// </summary>
    public string Rolled { get; init; } = string.Empty;

    internal static StripBend Of(BenchBend bend, BenchPlan plan, LengthNotation notation) => new(
        bend.Number,
        bend.Start,
        bend.End,
        bend.Mark,
        notation.Figure(bend.Mark - plan.Datum))
    {
        LineAt = bend.LineAt,
        Held = bend.Held.ToString(),
        Rolled = bend.Number > 1 && bend.Bend.Rotation != Angle.Zero ? AngleNotation.Rotation(bend.Bend.Rotation) : string.Empty,
    };
}
