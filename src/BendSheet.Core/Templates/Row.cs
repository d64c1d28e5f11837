using BendSheet.Core.Findings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Templates;

/// <summary>One row of a template: go straight, roll the bending plane, bend.</summary>
/// <param name="Straight">As measured, zero or more; which points it lies between is the line's <see cref="MeasuredTo"/>.</param>
/// <param name="StraightAt">Where that figure was typed.</param>
/// <param name="Bend">The bend at the row's end; null where the row only goes straight.</param>
public sealed record Row(Length Straight, SourcePosition StraightAt, Bend? Bend)
{
    /// <summary>Between which points the straight lies, where it is not as the rest of the line was measured: inside an offset.</summary>
    public MeasuredTo? Habit { get; init; }

    /// <summary>Of a leg inside an offset or a saddle, where its length comes from.</summary>
    public InnerLeg? Inner { get; init; }

    /// <summary>What the straight follows from; null where it is not measured but known.</summary>
    public Term? StraightFrom { get; init; }
}

/// <summary>A bend as it was measured on the template.</summary>
/// <param name="Turn">What the tube turns: above 0°, at most 360°.</param>
/// <param name="Rotation">Of the bending plane since the bend before, clockwise positive seen looking from end A along the tube. At the
/// first bend it only sets the starting plane.</param>
/// <param name="Bender">The tool it is made on.</param>
/// <param name="Note">Printed beside the mark.</param>
/// <param name="TurnAt">Where the turn was typed.</param>
public sealed record Bend(Angle Turn, Angle Rotation, Bender Bender, string? Note, SourcePosition TurnAt)
{
    /// <summary>
    /// The straights beside it end at its tangent points and not at its corner, however they were measured: inside a coil.
    /// </summary>
    public bool FromTangent { get; init; }

    /// <summary>What the turn follows from; null where it is not measured but known.</summary>
    public Term? TurnFrom { get; init; }

    /// <summary>What the rotation follows from; null where it is not measured but known.</summary>
    public Term? RotationFrom { get; init; }

    /// <summary>Measured as a U-bend, whose flat parts end where it begins, even if it should turn a little less than 180°.</summary>
    public bool IsUBend { get; init; }

    /// <summary>Whether the straights before and after it meet in a corner: false from 180° on.</summary>
    public bool HasCorner => Turn < Tolerances.NoCorner && !IsUBend;
}

/// <summary>A measured length between two neighbouring bends, or between a bend and an end.</summary>
/// <param name="Measured">Zero or more.</param>
/// <param name="At">Where it was typed; the first place where several rows add up to it.</param>
/// <param name="Habit">Between which points it lies, where it is not as the rest of the line was measured.</param>
public sealed record Leg(Length Measured, SourcePosition At, MeasuredTo? Habit = null)
{
    /// <summary>Of a leg inside an offset or a saddle, where its length comes from.</summary>
    public InnerLeg? Inner { get; init; }

    /// <summary>What its length follows from; null where it is not measured but known.</summary>
    public Term? From { get; init; }
}
