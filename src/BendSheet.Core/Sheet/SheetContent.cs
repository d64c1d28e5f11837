using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>
/// What the sheet of one line says, rounded and worded, before anybody thinks of how it looks. Page and terminal show the same content,
/// so they cannot disagree.
/// </summary>
public sealed record SheetContent
{
    /// <summary>The line's name.</summary>
    public required string Line { get; init; }

    /// <summary>What it belongs to; empty where the file does not say.</summary>
    public required string Project { get; init; }

    /// <summary>Where it runs from and to.</summary>
    public required string Ends { get; init; }

    /// <summary>Size and material.</summary>
    public required string Tube { get; init; }

    /// <summary>Tool and radius, one for each tool used.</summary>
    public required string Bender { get; init; }

    /// <summary>What to cut off the roll.</summary>
    public required Figure CutLength { get; init; }

    /// <summary>What the finished line is made of.</summary>
    public required Figure DevelopedLength { get; init; }

    /// <summary>Six characters that change with the line's input.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>The file says that this line exists already.</summary>
    public required bool Made { get; init; }

    /// <summary>What the marks are measured from, in words.</summary>
    public required string Datum { get; init; }

    /// <summary>The same as the end of a sentence: <c>the cut end of A</c>.</summary>
    public required string DatumName { get; init; }

    /// <summary>One for each bend, in working order.</summary>
    public required ImmutableArray<BendRow> Rows { get; init; }

    /// <summary>What a person must know before the first mark: warnings, and what the figures leave out.</summary>
    public required ImmutableArray<string> ReadFirst { get; init; }

    /// <summary>Typed figures that the adjustment changed; none where all are used as typed.</summary>
    public ImmutableArray<AdjustedFigure> Adjusted { get; init; } = [];

    /// <summary>How sure end B is; null where that is to be read first.</summary>
    public string? HowSure { get; init; }

    /// <summary>The order of work.</summary>
    public required ImmutableArray<string> Order { get; init; }

    /// <summary>Distances to measure on the finished piece.</summary>
    public required ImmutableArray<CheckDistance> Checks { get; init; }

    /// <summary>What one degree more at each bend does to end B, in a sentence; null on a straight tube.</summary>
    public required string? Levers { get; init; }

    /// <summary>The box the finished piece fits into.</summary>
    public required string Envelope { get; init; }

    /// <summary>How the shape and its box lie.</summary>
    public required string Axes { get; init; }

    /// <summary>The tube drawn straight.</summary>
    public required Strip Strip { get; init; }

    /// <summary>The finished shape.</summary>
    public required TubeCentreline Shape { get; init; }

    /// <summary>For drawing the shape.</summary>
    public required Length TubeDiameter { get; init; }

    /// <summary>How lengths are written.</summary>
    public required LengthNotation Notation { get; init; }


    /// <summary>The shape's axes are the car's: its Z is up.</summary>
    public bool LiesOnCar { get; init; }

    /// <summary>How many clips hold it, and where.</summary>
    public ImmutableArray<string> Clips { get; init; } = [];

    /// <summary>Where to drill for them, at full size.</summary>
    public ImmutableArray<DrillingStrip> DrillingStrips { get; init; } = [];

    /// <summary>Every different bend, to be drawn at full size.</summary>
    public ImmutableArray<BendGauge> Gauges { get; init; } = [];

    /// <summary>Where the dial stops, from 0° on.</summary>
    public ImmutableArray<DialStop> DialStops { get; init; } = [];

    /// <summary>One panel for each thing done, where they were asked for.</summary>
    public ImmutableArray<StepPanel> Steps { get; init; } = [];

    /// <summary>Whether another line is the mirror image of this one: the same straights and bends, rotated the other way.</summary>
    public bool IsTwinOf(SheetContent other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return other != this && Shape.IsMirrorImageOf(other.Shape);
    }
}

/// <summary>A length as it is printed.</summary>
/// <param name="Main">In the file's unit, with the unit.</param>
/// <param name="Other">In the other unit, with the unit.</param>
public sealed record Figure(string Main, string Other)
{
    /// <summary>Stands where nobody knows the length.</summary>
    public static Figure Unknown { get; } = new(SheetWriter.Dash, string.Empty);

    /// <summary>Writes a length in both units.</summary>
    public static Figure Of(Length length, LengthNotation notation) => new(notation.WithUnit(length), notation.Other.WithUnit(length));
}

/// <summary>A row of the bend table. Lengths are figures without their unit, which stands in the column's heading.</summary>
public sealed record BendRow
{
    /// <summary>Of the bend, from end A.</summary>
    public required int Number { get; init; }

    /// <summary>What to do before it where the tube has to be turned round end for end; null elsewhere.</summary>
    public required string? TurnRound { get; init; }

    /// <summary>Where the pen goes, from the datum, in the file's unit.</summary>
    public required string Mark { get; init; }

    /// <summary>The same in the other unit, with the unit.</summary>
    public required string MarkOther { get; init; }

    /// <summary>
    /// Where the pen line stands: clockwise as one looks from the held end along the tube towards the tool, the former at 12 o'clock.
    /// </summary>
    public required Angle LineAt { get; init; }

    /// <summary>The same as on a clock.</summary>
    public string LineClock => AngleNotation.Clock(LineAt);

    /// <summary>The same in degrees.</summary>
    public string LineFigure => AngleNotation.Dial(LineAt);

    /// <summary>
    /// The letter of the end whose side is held, with an arrow the way one looks from there, A lying on the left: <c>A →</c>.
    /// </summary>
    public required string Held { get; init; }

    /// <summary>From the bend made before; a dash at the first one.</summary>
    public required string Rotate { get; init; }

    /// <summary>Rotations added up from A.</summary>
    public required string Dial { get; init; }

    /// <summary>What to pull the tool to.</summary>
    public required string Pull { get; init; }

    /// <summary>The finished angle.</summary>
    public required string Bend { get; init; }

    /// <summary>Straight tube towards B, to the next bend or the end.</summary>
    public required string StraightAfter { get; init; }

    /// <summary>
    /// How far the swept side reaches from the middle of the tool's former, over the outside of the tube, rounded up; with the unit.
    /// </summary>
    public required string Swing { get; init; }

    /// <summary>How far end B moves for one degree, with the unit.</summary>
    public required string Lever { get; init; }

    /// <summary>The tool's name where it is not the line's own.</summary>
    public required string? Tool { get; init; }

    /// <summary>The person's own note.</summary>
    public required string? Note { get; init; }

    /// <summary>The tool where it is not the line's own, in words; null elsewhere.</summary>
    public string? ToolInWords => Tool is null ? null : $"tool: {Tool}";

    /// <summary>Note and tool in one cell.</summary>
    public string Remark => string.Join("; ", new[] { ToolInWords, Note }.OfType<string>());
}

/// <summary>A typed figure beside the one that is used, both with their units.</summary>
/// <param name="Name">Which: <c>leg 2</c>.</param>
/// <param name="Typed">As it was typed.</param>
/// <param name="Used">As all measurements together have it.</param>
public sealed record AdjustedFigure(string Name, string Typed, string Used);

/// <summary>What to measure on the finished piece.</summary>
/// <param name="Name">As it is typed: <c>A-3</c>, <c>roll 2</c>.</param>
/// <param name="Figure">A distance without its unit, or a roll.</param>
public sealed record CheckDistance(string Name, string Figure);
