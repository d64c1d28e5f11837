using System.Collections.Immutable;
using BendSheet.Core.Geometry;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Units;

namespace BendSheet.Core.Picture;

/// <summary>
/// The car in one picture: what is drawn and where, in the axes of the car, rounded and worded before anybody draws it. Where no place is
/// known, the same is a diagram of what leads where.
/// </summary>
/// <param name="Project">Empty where the file does not say.</param>
/// <param name="Notation">How lengths are written.</param>
/// <param name="Runs">Lines, hoses and parts that sit in others, in the order of the file.</param>
/// <param name="Parts">In the order of the file.</param>
/// <param name="Zones">To keep clear, in the order of the file.</param>
/// <param name="Circuits">Each by its name, in the order in which the runs come to them.</param>
/// <param name="NotDrawn">What has no place and is not in the views, in whole sentences; empty for a diagram.</param>
public sealed record CarPicture(
    string Project,
    LengthNotation Notation,
    ImmutableArray<PicturedRun> Runs,
    ImmutableArray<PicturedPart> Parts,
    ImmutableArray<PicturedZone> Zones,
    ImmutableArray<string> Circuits,
    ImmutableArray<string> NotDrawn)
{
    /// <summary>Some line or hose lies where it can be drawn: there are views. Otherwise there is only a diagram.</summary>
    public bool HasPlaces => Runs.Any(run => run.IsPlaced);

    /// <summary>The whole plumbing without places, where the views do not show all of it; null elsewhere.</summary>
    public CarPicture? Diagram { get; init; }

    /// <summary>The lines and hoses that the picture shows, in the order of their numbers.</summary>
    public IEnumerable<PicturedRun> Shown => Runs.Where(run => run.Number > 0);
}

/// <summary>What leads from place to place.</summary>
/// <param name="Kind">Line, hose, or nothing between two parts.</param>
/// <param name="Name">Of it.</param>
/// <param name="Length">As the cover says it, with its unit; empty where nobody knows.</param>
/// <param name="A">One end.</param>
/// <param name="B">The other.</param>
/// <param name="IsMade">The line is made, or the hose is on hand.</param>
public sealed record PicturedRun(ConnectionKind Kind, string Name, string Length, PicturedEnd A, PicturedEnd B, bool IsMade)
{
    /// <summary>In the picture and its key, from 1; 0 for what the picture does not show by itself.</summary>
    public int Number { get; init; }

    /// <summary>Its place in <see cref="CarPicture.Circuits"/>; null where no circuit is known.</summary>
    public int? Circuit { get; init; }

    /// <summary>Of a line whose place is known, in millimetres, in the axes of the car.</summary>
    public TubeCentreline? Tube { get; init; }

    /// <summary>Of a hose the places of its two ports, in millimetres; null where one is not known.</summary>
    public (Vector3D A, Vector3D B)? Hose { get; init; }

    /// <summary>It can be drawn where it lies.</summary>
    public bool IsPlaced => Tube is not null || Hose is not null;
}

/// <summary>Where an end goes.</summary>
/// <param name="InWords">As the cover says it.</param>
/// <param name="Part">The part it goes to; null where the words lead to none.</param>
/// <param name="IsNamed">Its words are typed; otherwise it is only called by its letter.</param>
public sealed record PicturedEnd(string InWords, string? Part, bool IsNamed);

/// <summary>A part of the car.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Kind">In the trade's word.</param>
/// <param name="IsSource">Pressure comes from it.</param>
/// <param name="Places">Of its ports, typed or where a drawn line ends in them, in millimetres; empty where none is known.</param>
public sealed record PicturedPart(string Name, string Kind, bool IsSource, ImmutableArray<Vector3D> Places)
{
    /// <summary>In the picture, after the lines and hoses; 0 for a part that is not shown.</summary>
    public int Number { get; init; }
}

/// <summary>What lines keep clear of.</summary>
/// <param name="Name">What the file calls it.</param>
/// <param name="Clearance">The air about it, with its unit.</param>
/// <param name="Shape">In the axes of the car.</param>
/// <param name="Number">In the picture, after the parts.</param>
public sealed record PicturedZone(string Name, string Clearance, Solid Shape, int Number);
