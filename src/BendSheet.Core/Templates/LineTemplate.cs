using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>One line as it was measured, with everything the file says about it: what the rest of the program starts from.</summary>
/// <param name="Name">Of the line; may be part of a file's name.</param>
/// <param name="At">Where the name was typed.</param>
/// <param name="Tube">The tube it is made of.</param>
/// <param name="Bender">The tool for every bend that does not name its own.</param>
/// <param name="Wire">The template's wire.</param>
/// <param name="From">End A.</param>
/// <param name="To">End B.</param>
/// <param name="Route">Legs and bends.</param>
public sealed record LineTemplate(
    string Name,
    SourcePosition At,
    Tube Tube,
    Bender Bender,
    Wire Wire,
    LineEnd From,
    LineEnd To,
    Route Route)
{
    /// <summary>How the legs were measured.</summary>
    public MeasuredTo Habit { get; init; } = MeasuredTo.Corner;

    /// <summary>Where end A lies on the car and how the line leaves it; <see cref="Frame.Default"/> where nobody said.</summary>
    public Frame Start { get; init; } = Frame.Default;

    /// <summary>Somebody said how the line lies on the car, so that its Z axis is up.</summary>
    public bool LiesOnCar { get; init; }

    /// <summary>It was measured on a wire that the piece can be held against; false where its corners were measured on the car.</summary>
    public bool HasWire { get; init; } = true;

    /// <summary>The line whose wire it was measured on; null where it has a wire of its own, or none.</summary>
    public string? WireOf { get; init; }

    /// <summary>It is the mirror image of that wire.</summary>
    public bool MirrorsWire { get; init; }

    /// <summary>Where end A lies on the car is known as well: the start's position counts from the corner that all places count from.
    /// </summary>
    public bool HasPlace { get; init; }

    /// <summary>End A, its corners and end B, where it was measured by them; none otherwise.</summary>
    public ImmutableArray<CornerPoint> Corners { get; init; } = [];

    /// <summary>What its taped distances came to, where it was measured with nothing but a tape.</summary>
    public TapedFit? Taped { get; init; }

    /// <summary>What was measured on wire or car beside the route, in the order of the file.</summary>
    public ImmutableArray<TapedMeasurement> Beside { get; init; } = [];

    /// <summary>What was measured on the piece in hand, in the order of the file.</summary>
    public ImmutableArray<PieceMeasurement> Checks { get; init; } = [];

    /// <summary>The numbers of the bends of the piece in hand that are made already; none means that all are.</summary>
    public ImmutableArray<int> Bent { get; init; } = [];

    /// <summary>What was seen when the piece was offered up; null where it was not.</summary>
    public TrialFit? TrialFit { get; init; }

    /// <summary>The line exists already.</summary>
    public bool Made { get; init; }

    /// <summary>Its tube is cut: the line is made, or something was measured on the piece in hand.</summary>
    public bool IsCut => Made || !Checks.IsEmpty || !Bent.IsEmpty || TrialFit is not null;

    /// <summary>How it is to be held along its way, where the file says so.</summary>
    public Clipping? Clips { get; init; }

    /// <summary>How well the template was measured, where the file says so.</summary>
    public MeasuringTolerance? Tolerance { get; init; }

    /// <summary>How well it has to fit.</summary>
    public WantedFit Wanted { get; init; } = WantedFit.CommonPractice;

    /// <summary>
    /// The left-hand piece of a right-hand one. A line that lies on the car is mirrored in the car's middle plane; otherwise the first bend
    /// still turns left, and the rest goes the other way. Its place is no longer known: nobody said where the middle plane is.
    /// </summary>
    public LineTemplate Mirrored() => this with
    {
        Route = Route.Mirrored(),
        Start = LiesOnCar ? Start.Mirrored() : Start,
        HasPlace = false,
        Corners = [.. Corners.Select(corner => corner.Mirrored())],
        Beside = [.. Beside.Select(one => one.Mirrored())],
    };
}
