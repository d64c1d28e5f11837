using BendSheet.Core.Findings;
using BendSheet.Core.Geometry;
using BendSheet.Core.Units;

namespace BendSheet.Core.Templates;

/// <summary>What of a line is measured beside its rows.</summary>
public enum TapedKind
{
    /// <summary>The straight-line distance of two points.</summary>
    Distance,

    /// <summary>How far a point lies ahead of A along A's straight.</summary>
    Ahead,

    /// <summary>How far a point lies off the line through A's straight.</summary>
    Aside,

    /// <summary>A part of the way from one point to another, along an axis of the car.</summary>
    Part,
}

/// <summary>A quantity that can be measured on a wire or a tube beside its rows.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="From">A point: 0 is end A, then the corners, one more than there are bends is end B. 0 where the quantity has only one
/// point.</param>
/// <param name="To">The other point, or the only one.</param>
public readonly record struct TapedQuantity(TapedKind Kind, int From, int To)
{
    /// <summary>Of a part of the way: the axis of the car, length 1.</summary>
    public Vector3D Axis { get; init; }

    /// <summary>Of a distance to the backs of bends, which a tape across the wire touches: the wire, of which all is known. Null where it
    /// is to corners.</summary>
    public Wire? Back { get; init; }

    /// <summary>As it is typed: <c>A-3</c>, <c>B ahead</c>.</summary>
    /// <param name="bends">Of the line, to tell which point is end B.</param>
    public string Name(int bends) => Kind switch
    {
        TapedKind.Ahead => $"{PointName(To, bends)} ahead",
        TapedKind.Aside => $"{PointName(To, bends)} aside",
        TapedKind.Part => $"{PointName(From, bends)}-{PointName(To, bends)} {AxisName}",
        _ => $"{PointName(From, bends)}-{PointName(To, bends)}{(Back is null ? string.Empty : " to back")}",
    };

    /// <summary>As it is said: <c>A to 3</c>, <c>B ahead</c>.</summary>
    /// <param name="bends">Of the line.</param>
    public string InWords(int bends) =>
        Kind == TapedKind.Distance ? $"{PointName(From, bends)} to {PointName(To, bends)}" : Name(bends);

    private string AxisName => Axis.X != 0 ? "forward" : Axis.Y != 0 ? "left" : "up";

    private static string PointName(int point, int bends) =>
        point == 0 ? "A" : point == bends + 1 ? "B" : FormattableString.Invariant($"{point}");
}

/// <summary>Such a quantity, measured.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Value">As it was read; a part of the way may be below zero.</param>
/// <param name="At">Where it was typed.</param>
public sealed record TapedMeasurement(TapedQuantity Quantity, Length Value, SourcePosition At)
{
    /// <summary>One standard deviation, where it is not the tape's.</summary>
    public Length? Within { get; init; }

    /// <summary>On the mirror image: a part of the way to the left goes to the right.</summary>
    public TapedMeasurement Mirrored() =>
        Quantity.Kind == TapedKind.Part && Quantity.Axis.Y != 0 ? this with { Value = Length.Zero - Value } : this;
}
