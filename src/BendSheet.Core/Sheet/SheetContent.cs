using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>
/// What the sheet of one line says, rounded and worded, before anybody thinks of how it looks. Page and terminal show the same content,
/// so they cannot disagree.
/// </summary>
/// <param name="Line">The line's name.</param>
/// <param name="Project">What it belongs to; empty where the file does not say.</param>
/// <param name="Ends">Where it runs from and to.</param>
/// <param name="Tube">Size and material.</param>
/// <param name="Bender">Tool and radius, one for each tool used.</param>
/// <param name="CutLength">What to cut off the roll.</param>
/// <param name="DevelopedLength">What the finished line is made of.</param>
/// <param name="Fingerprint">Six characters that change with the line's input.</param>
/// <param name="Made">The file says that this line exists already.</param>
/// <param name="Datum">What the marks are measured from, in words.</param>
/// <param name="DatumName">The same as the end of a sentence: <c>the cut end of A</c>.</param>
/// <param name="Rows">One for each bend, in working order.</param>
/// <param name="ReadFirst">What a person must know before the first mark: warnings, and what the figures leave out.</param>
/// <param name="Order">The order of work.</param>
/// <param name="Checks">Distances to measure on the finished piece.</param>
/// <param name="Levers">What one degree more at each bend does to end B, in a sentence; null on a straight tube.</param>
/// <param name="Envelope">The box the finished piece fits into.</param>
/// <param name="Axes">How the shape and its box lie.</param>
/// <param name="Strip">The tube drawn straight.</param>
/// <param name="Shape">The finished shape.</param>
/// <param name="TubeDiameter">For drawing the shape.</param>
/// <param name="Notation">How lengths are written.</param>
public sealed record SheetContent(
    string Line,
    string Project,
    string Ends,
    string Tube,
    string Bender,
    Figure CutLength,
    Figure DevelopedLength,
    string Fingerprint,
    bool Made,
    string Datum,
    string DatumName,
    ImmutableArray<BendRow> Rows,
    ImmutableArray<string> ReadFirst,
    ImmutableArray<string> Order,
    ImmutableArray<CheckDistance> Checks,
    string? Levers,
    string Envelope,
    string Axes,
    Strip Strip,
    TubeCentreline Shape,
    Length TubeDiameter,
    LengthNotation Notation)
{
    /// <summary>The shape's axes are the car's: its Z is up.</summary>
    public bool LiesOnCar { get; init; }

    /// <summary>How many clips hold it, and where.</summary>
    public ImmutableArray<string> Clips { get; init; } = [];

    /// <summary>Every different bend, to be drawn at full size.</summary>
    public ImmutableArray<BendGauge> Gauges { get; init; } = [];

    /// <summary>Where the dial stops, from 0° on.</summary>
    public ImmutableArray<DialStop> DialStops { get; init; } = [];
}

/// <summary>A length as it is printed.</summary>
/// <param name="Main">In the file's unit, with the unit.</param>
/// <param name="Other">In the other unit, with the unit.</param>
public sealed record Figure(string Main, string Other)
{
    /// <summary>Writes a length in both units.</summary>
    public static Figure Of(Length length, LengthNotation notation) => new(notation.WithUnit(length), notation.Other.WithUnit(length));
}

/// <summary>A row of the bend table. Lengths are figures without their unit, which stands in the column's heading.</summary>
/// <param name="Number">Of the bend, from end A.</param>
/// <param name="TurnRound">What to do before it where the tube has to be turned round end for end; null elsewhere.</param>
/// <param name="Mark">Where the pen goes, from the datum, in the file's unit.</param>
/// <param name="MarkOther">The same in the other unit, with the unit.</param>
/// <param name="MarkFromCut">The same from the cut end of A; null where that is the datum.</param>
/// <param name="Held">The letter of the end whose side is held.</param>
/// <param name="Rotate">From the bend made before, at the first one from the line along the tube; a dash where it is none there.</param>
/// <param name="Dial">Dial reading.</param>
/// <param name="Pull">What to pull the tool to.</param>
/// <param name="Bend">The finished angle.</param>
/// <param name="StraightAfter">Straight tube towards B, to the next bend or the end.</param>
/// <param name="Swing">How far the swept side reaches from the middle of the tool's former, over the outside of the tube, rounded up; with the unit.</param>
/// <param name="Lever">How far end B moves for one degree, with the unit.</param>
/// <param name="Tool">The tool's name where it is not the line's own.</param>
/// <param name="Note">The person's own note.</param>
public sealed record BendRow(
    string Number,
    string? TurnRound,
    string Mark,
    string MarkOther,
    string? MarkFromCut,
    string Held,
    string Rotate,
    string Dial,
    string Pull,
    string Bend,
    string StraightAfter,
    string Swing,
    string Lever,
    string? Tool,
    string? Note)
{
    /// <summary>Note and tool in one cell.</summary>
    public string Remark => string.Join("; ", new[] { Tool is null ? null : $"tool: {Tool}", Note }.OfType<string>());
}

/// <summary>A straight-line distance to measure on the finished piece.</summary>
/// <param name="From">What it starts at.</param>
/// <param name="To">What it ends at.</param>
/// <param name="Distance">Along a stretched tape.</param>
public sealed record CheckDistance(string From, string To, Figure Distance);
